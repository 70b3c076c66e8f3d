#include "app/cli/shipped_climate.h"

#include "app/cli/commands.h"
#include "core/climate/coast_error.h"
#include "core/climate/place_height.h"
#include "core/geodesy/coast_lines.h"
#include "core/geodesy/town_table.h"

namespace lathhouse::cli {

Result<climate::PlaceClimate> shipped_climate(Position position, std::optional<Metres> elevation)
{
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    // Without the shipped towns a height that is not given is that of the stations.
    const auto gazetteer =
        elevation ? Result<const geodesy::TownTable*>{Error{ErrorCode::NotFound, ""}} : geodesy::TownTable::shipped();
    auto place = gazetteer ? climate::climate_at_height_near(**table, (*gazetteer)->towns(), position)
                           : climate::climate_at(**table, position, elevation);
    if (!place) {
        return place;
    }
    const auto coast = geodesy::CoastLines::shipped();
    if (coast) {
        if (const auto counted = climate::count_coast_in(*place, **coast); !counted) {
            return counted.error();
        }
    }
    return place;
}

} // namespace lathhouse::cli
