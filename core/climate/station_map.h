#pragma once

#include "core/climate/place_climate.h"
#include "core/geodesy/azimuthal_map.h"
#include "core/geodesy/coast_lines.h"
#include "core/geodesy/town_table.h"

#include <optional>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// What is drawn round a place: true distances and directions from it (geodesy::AzimuthalMap), in metres east
/// and north. The window and the picture file draw the same.
struct StationMap {
    struct StationMark {
        StationInUse use;
        geodesy::MapPoint at;
    };
    struct TownMark {
        const geodesy::Town* town; ///< Owned by the table of towns.
        geodesy::MapPoint at;
    };
    Position home;
    Metres radius;
    std::vector<std::vector<geodesy::MapPoint>> coast;
    std::vector<StationMark> stations; ///< Those within the radius, heaviest first.
    std::size_t stations_beyond;       ///< Those in use that lie farther away.
    std::vector<TownMark> towns;       ///< A few large ones to find one's way by, apart from each other.
};

/// radius: nullopt shows all stations in use, at least 25 km. Towns: none without a table.
/// Errors: OutOfRange for a radius outside 1 to 15,000 km; Unavailable without PROJ.
Result<StationMap> station_map(const PlaceClimate& place, const geodesy::CoastLines& coast,
                               const geodesy::TownTable* towns, std::optional<Metres> radius);

} // namespace lathhouse::climate
