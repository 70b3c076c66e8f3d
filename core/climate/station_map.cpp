#include "core/climate/station_map.h"

#include "core/geodesy/geodesic.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {
namespace {

/// The largest towns within the radius that stand apart from each other and from the rim.
std::vector<StationMap::TownMark> marks_of(std::span<const geodesy::Town> towns,
                                           const geodesy::AzimuthalMap& map, Metres radius)
{
    constexpr std::size_t kMost = 12;
    constexpr double kApart = 0.17; // Of the radius, so that a name fits beside each.
    constexpr double kRim = 0.93;
    std::vector<const geodesy::Town*> near;
    for (const auto& town : towns) {
        if (geodesy::rough_distance(map.middle(), town.position) < radius) {
            near.push_back(&town);
        }
    }
    std::ranges::sort(near, std::ranges::greater{}, [](const auto* town) { return town->population; });
    std::vector<StationMap::TownMark> marks;
    for (const auto* town : near) {
        const auto at = map.point(town->position);
        if (marks.size() == kMost) {
            break;
        }
        if (!at || at->from_middle().metres() > kRim * radius.metres() ||
            at->from_middle().metres() < kApart * radius.metres()) {
            continue;
        }
        const bool apart = std::ranges::all_of(marks, [&](const auto& mark) {
            return std::hypot(mark.at.east.metres() - at->east.metres(),
                              mark.at.north.metres() - at->north.metres()) > kApart * radius.metres();
        });
        if (apart) {
            marks.push_back({town, *at});
        }
    }
    return marks;
}

} // namespace

Result<StationMap> station_map(const PlaceClimate& place, const geodesy::CoastLines& coast,
                               const geodesy::TownTable* towns, std::optional<Metres> radius)
{
    if (radius && !(radius->kilometres() >= 1.0 && radius->kilometres() <= 15000.0)) {
        return Error{ErrorCode::OutOfRange, said("the map's radius must lie within 1 and 15,000 km")};
    }
    const auto map = geodesy::AzimuthalMap::around(place.position);
    if (!map) {
        return map.error();
    }
    double farthest = 25000.0;
    for (const auto& use : place.stations) {
        farthest = std::max(farthest, 1.12 * use.distance.metres());
    }
    const auto shown = radius.value_or(Metres::from_metres(farthest));
    StationMap drawn{place.position, shown, map->lines_within(coast.lines(), shown), {}, 0, {}};
    for (const auto& use : place.stations) {
        const auto at = map->point(use.station->position);
        if (at && use.distance <= shown) {
            drawn.stations.push_back({use, *at});
        } else {
            ++drawn.stations_beyond;
        }
    }
    if (towns != nullptr) {
        drawn.towns = marks_of(towns->towns(), *map, shown);
    }
    return drawn;
}

} // namespace lathhouse::climate
