#include "app/cli/all_commands.h"

#include "app/cli/map_svg.h"
#include "app/cli/place_climate_options.h"
#include "app/words/credits.h"
#include "app/words/place_words.h"
#include "core/base/csv.h"
#include "core/climate/station_map.h"
#include "core/geodesy/coast_lines.h"
#include "core/geodesy/town_table.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct MapOptions {
    PlaceOptions place;
    std::optional<double> radius_kilometres;
    std::string out;
};

Result<Answer> run_map(const Globals& globals, const MapOptions& options)
{
    const auto place = climate_of(globals, options.place);
    if (!place) {
        return place.error();
    }
    const auto coast = geodesy::CoastLines::shipped();
    if (!coast) {
        return coast.error();
    }
    const auto table = geodesy::TownTable::shipped();
    std::optional<Metres> radius;
    if (options.radius_kilometres) {
        radius = Metres::from_kilometres(*options.radius_kilometres);
    }
    const auto map = climate::station_map(*place, **coast, table ? *table : nullptr, radius);
    if (!map) {
        return map.error();
    }
    const auto title = options.place.town.empty() ? words::position(place->position) : options.place.town;
    const auto credits = words::credits(*place) + "; coast lines: Natural Earth (public domain)" +
                         (map->towns.empty() ? "" : "; towns: GeoNames (CC BY 4.0)");
    const auto written = write_file_whole(options.out, map_svg(*map, title, credits, globals.units));
    if (!written) {
        return written.error();
    }
    Json stations = Json::array();
    for (const auto& mark : map->stations) {
        stations.push_back({{"id", mark.use.station->id},
                            {"name", mark.use.station->name},
                            {"distance_km", json_number(mark.use.distance.kilometres())},
                            {"weight", json_number(mark.use.weight)},
                            {"east_km", json_number(mark.at.east.kilometres())},
                            {"north_km", json_number(mark.at.north.kilometres())}});
    }
    Json rings = Json::array();
    for (const auto ring : rings_of(*map, globals.units)) {
        rings.push_back(json_number(ring.kilometres()));
    }
    return Answer{{{"file", options.out},
                   {"radius_km", json_number(map->radius.kilometres())},
                   {"rings_km", rings},
                   {"coast_strokes", map->coast.size()},
                   {"stations", stations},
                   {"stations_beyond", map->stations_beyond}},
                  "Wrote the map of " + std::to_string(map->stations.size()) + " stations within " +
                      words::distance(map->radius, globals.units) + " to " + options.out + ".\n" + credits +
                      "\n",
                  texts(place->warnings)};
}

} // namespace

void add_map(Commands& commands)
{
    auto options = std::make_shared<MapOptions>();
    CLI::App& command = commands.add("map", "Draws the stations used round a place, with their weights",
                                     "lathhouse map --at 48.21,16.37 --elevation 170 --out map.svg");
    add_place_options(command, options->place, true);
    command
        .add_option("--radius", options->radius_kilometres,
                    "How far the map reaches, in km (default: to the farthest station)")
        ->type_name("KM");
    command.add_option("--out", options->out, "File for the picture")->required()->type_name("FILE.svg");
    commands.on_run(command, [options](const Globals& globals) { return run_map(globals, *options); });
}

} // namespace lathhouse::cli
