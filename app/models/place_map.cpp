#include "app/models/place_map.h"

#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/refusal.h"
#include "app/words/us_units.h"
#include "app/words/words.h"
#include "core/climate/station_map.h"
#include "core/geodesy/coast_lines.h"
#include "core/geodesy/town_table.h"

#include <algorithm>
#include <iterator>

namespace lathhouse::models {

DrawnMap place_map(const climate::PlaceClimate& climate, const YearWords& words)
{
    const auto units = unit_system_of(words);
    DrawnMap drawn;
    const auto coast = geodesy::CoastLines::shipped();
    if (!coast) {
        drawn.note = tr("The map cannot be drawn: %1.").arg(text(words::refusal(coast.error())));
        return drawn;
    }
    const auto towns = geodesy::TownTable::shipped();
    const auto map = climate::station_map(climate, **coast, towns ? *towns : nullptr, std::nullopt);
    if (!map) {
        drawn.note = tr("The map cannot be drawn: %1.").arg(text(words::refusal(map.error())));
        return drawn;
    }
    const double radius = map->radius.metres();
    const auto place = [radius](const geodesy::MapPoint& at) {
        return QPointF(at.east.metres() / radius, -at.north.metres() / radius);
    };
    for (const auto& line : map->coast) {
        std::vector<QPointF> points;
        std::ranges::transform(line, std::back_inserter(points), place);
        drawn.map.coast.push_back(std::move(points));
    }
    for (const auto& mark : map->stations) {
        drawn.map.stations.push_back({text(mark.use.station->name),
                                       text(lathhouse::words::distance(mark.use.distance, units)), place(mark.at),
                                       mark.use.weight});
    }
    for (const auto& mark : map->towns) {
        drawn.map.towns.push_back({text(std::string{mark.town->name}), place(mark.at)});
    }
    for (const auto ring : geodesy::ring_radii(map->radius, words.units() == Units::Us ? words::kMetresInAMile : 1000.0)) {
        drawn.map.rings.push_back({ring / map->radius, text(lathhouse::words::distance(ring, units))});
    }
    drawn.note = tr("Distances and directions are true from home. Larger triangle, thicker line: more weight.");
    if (map->stations_beyond > 0) {
        drawn.note += tr(" %1 more stations lie beyond the map.").arg(map->stations_beyond);
    }
    return drawn;
}

} // namespace lathhouse::models
