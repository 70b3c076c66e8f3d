#pragma once

#include "app/models/year_data.h"
#include "core/plan/round_parts.h"

#include <vector>

namespace lathhouse::models {

/// The next season of every lot that has seeds left (or was never counted), as far as it is sown within a year, by the
/// day of sowing. Lots of one crop have one season; it is shown once, under the name of the first. core/plan/sowing.h.
std::vector<YearSowing> year_sowings(const plan::HouseholdFacts& facts, calendar::Date today);

} // namespace lathhouse::models
