#include "app/models/next_move.h"

#include <algorithm>

namespace lathhouse::models {

std::optional<NextMove> next_move(const plan::RoundParts& parts, home::PlantId plant, std::optional<home::SpotId> stands,
                                  calendar::Date today)
{
    const auto year = std::ranges::find(parts.plan.plants, plant, &plan::PlantYear::plant);
    if (year == parts.plan.plants.end()) {
        return std::nullopt;
    }
    const auto stay = std::ranges::find_if(
        year->stays, [&](const plan::Stay& of) { return of.to >= today && stands != of.spot; });
    if (stay == year->stays.end()) {
        return std::nullopt;
    }
    // That of this stay: next spring's, to the same spot, is another. Its hardening may end later than the nights ask for.
    const auto ladder = std::ranges::find_if(parts.ladders, [&](const plan::Ladder& of) {
        return of.plant == plant && of.to == stay->spot && of.planned <= stay->to;
    });
    return NextMove{&*stay, std::max({today, stay->from, ladder != parts.ladders.end() ? ladder->reached : today})};
}

} // namespace lathhouse::models
