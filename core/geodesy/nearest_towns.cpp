#include "core/geodesy/nearest_towns.h"

#include "core/geodesy/geodesic.h"

#include <algorithm>

namespace lathhouse::geodesy {

std::vector<TownNear> nearest_towns(std::span<const Town> towns, Position position, std::size_t count)
{
    std::vector<TownNear> near;
    near.reserve(towns.size());
    for (const auto& town : towns) {
        near.push_back({&town, rough_distance(position, town.position)});
    }
    // The rough distance is within 0.6 %: a few more than wanted hold those that are truly nearest.
    const auto candidates = std::min(near.size(), count + count / 2 + 8);
    std::ranges::partial_sort(near, near.begin() + static_cast<std::ptrdiff_t>(candidates), {},
                              &TownNear::distance);
    near.erase(near.begin() + static_cast<std::ptrdiff_t>(candidates), near.end());
    for (auto& one : near) {
        one.distance = distance(position, one.town->position);
    }
    std::ranges::sort(near, {}, &TownNear::distance);
    near.erase(near.begin() + static_cast<std::ptrdiff_t>(std::min(near.size(), count)), near.end());
    return near;
}

std::optional<ZoneProposal> propose_zone(std::span<const Town> towns, Position position)
{
    constexpr std::size_t kLookedAt = 40;
    const auto near = nearest_towns(towns, position, kLookedAt);
    if (near.empty() || near.front().distance > Metres::from_kilometres(1500.0)) {
        return std::nullopt;
    }
    ZoneProposal proposal{std::string{near.front().town->zone}, near.front(), {}};
    const double limit = 2.0 * near.front().distance.metres() + 30000.0;
    for (const auto& [town, away] : near) {
        if (away.metres() <= limit && town->zone != proposal.zone &&
            std::ranges::find(proposal.others, town->zone) == proposal.others.end()) {
            proposal.others.emplace_back(town->zone);
        }
    }
    return proposal;
}

} // namespace lathhouse::geodesy
