#pragma once

#include "app/models/year_data.h"

#include <vector>

namespace lathhouse::models {

/// A plant's stays on their way from one plan to another, for a bar that moves; share 0 is `from`, 1 is `to`.
///
/// Spots that both plans have, in their order, move; a stay that is gone closes up, a new one opens from where
/// its neighbours meet. Whole days; the result covers the year as both plans do. Ladders and reasons are those
/// of the plan that the stay comes from.
std::vector<YearStay> stays_between(const std::vector<YearStay>& from, const std::vector<YearStay>& to,
                                    double share);

/// Whether a bar of the one looks like a bar of the other.
bool looks_the_same(const std::vector<YearStay>& a, const std::vector<YearStay>& b);

} // namespace lathhouse::models
