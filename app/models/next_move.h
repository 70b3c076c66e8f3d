#pragma once

#include "core/plan/round_parts.h"

#include <optional>

namespace lathhouse::models {

/// Where a plant goes next by the plan, and when.
struct NextMove {
    const plan::Stay* stay; ///< As long as the parts live.
    /// First night there. Where the plan has had it there for a while already and it was not moved: today, or when its
    /// hardening is through.
    calendar::Date on;
};

/// nullopt where it stays where it stands. The plan is made for tonight, whether or not the plant was carried since: a
/// stay where it stands already is no move, and one that has begun elsewhere is.
std::optional<NextMove> next_move(const plan::RoundParts& parts, home::PlantId plant, std::optional<home::SpotId> stands,
                                  calendar::Date today);

} // namespace lathhouse::models
