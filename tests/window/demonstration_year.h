#pragma once

#include "app/models/household_year.h"
#include "core/base/result.h"
#include "core/home/demonstration.h"

#include <optional>

namespace lathhouse::models {

/// The day on which the demonstration is shown in tests and benchmarks.
constexpr int kShownYear = 2026;
calendar::Date shown_today();

/// The demonstration household with the figures of its place, without a history.
///
/// elsewhere: takes the household to another place on Earth, in Universal Time, with all that its climate says.
Result<plan::HouseholdFacts> facts_of_demonstration(const home::DemonstrationOptions& options,
                                                 std::optional<Position> elsewhere = std::nullopt);
/// Its year, as the program shows it.
Result<HouseholdYear> demonstration_year(const home::DemonstrationOptions& options,
                                         std::optional<Position> elsewhere = std::nullopt,
                                         Units units = Units::Metric);

} // namespace lathhouse::models
