#pragma once

#include "core/growth/comparison.h"
#include "core/growth/recovery.h"

#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::words {

/// How a rate is said: a week of the calendar or of the growth clock.
enum class ClockKind { Calendar, Place, Plant, Spared };
std::string_view to_string(ClockKind clock); ///< "calendar", "place", "plant", "spared".

/// "4.2 % a week"; shares in odds: "12 % a week in odds".
std::string growth_rate(growth::SeriesKind kind, double a_day);

/// The verdict in a few plain sentences: what it is, rates in weeks of the calendar (the clock's mean pace before and
/// after the event), share regained with its interval, readings, and the
/// date of the reading that could settle it.
std::string growth_verdict(growth::SeriesKind kind, const growth::Recovery& recovery, ClockKind clock);

/// The line of the verdict that says what it rests on.
std::string growth_readings(const growth::Recovery& recovery);

/// What to keep in mind of it: a plant that slowed by itself, an interval that reaches where the verdict does not.
std::vector<std::string> growth_cautions(growth::SeriesKind kind, const growth::Recovery& recovery);

/// That comparing plants at home is no experiment.
std::string_view comparison_is_no_experiment();

/// "growth changed by +0.8 % a week (between -0.1 and +1.7 at 19 in 20), 6 plants" - of a mean difference a day.
std::string mean_difference(growth::SeriesKind kind, const growth::MeanDifference& of, double level);

} // namespace lathhouse::words
