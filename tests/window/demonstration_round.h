#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/plan/round_parts.h"

namespace lathhouse::models {

/// What the round of the demonstration household is made of, with mealybugs found on one plant six days
/// before `today`, so that all three classes of plants are there.
Result<plan::HouseholdFacts> demonstration_facts(calendar::Date today);

} // namespace lathhouse::models
