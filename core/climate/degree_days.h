#pragma once

#include "core/climate/monthly_figures.h"

#include <optional>

namespace lathhouse::climate {

/// How a day's warmth above a base is reckoned from its low and high.
enum class DegreeDayMethod {
    SimpleAverage,   ///< The day's mean (at most the upper limit) less the base, never below 0.
    ModifiedAverage, ///< Low and high each raised to the base and lowered to the upper limit first.
    SingleSine,      ///< Area under a sine through low and high, above the base, with a horizontal cut-off.
};

/// Degree days (kelvin days) of one day.
///
/// upper: warmth above it does not count. A high below the low counts as the low. Precondition: upper > base.
/// Source: the two averages as extension services use them; the sine after Baskerville and Emin, Ecology 50
/// (1969) 514-517. Checked against closed forms and numerical integration (tests/data/climate).
double degree_days(Celsius low, Celsius high, Celsius base, std::optional<Celsius> upper,
                   DegreeDayMethod method);

/// Mean degree days of each month above the base, without an upper limit, by the single sine, from monthly
/// figures: the smooth course of low and high, both moved by the day's own departure, a normal distribution
/// whose spread is 1.1 times that of the daily means (else 0.95 times that of the lows, else 4.5 K). February
/// has 28.25 days. Accuracy: docs/methods/figures-of-a-place.md.
Monthly<double> degree_days_of_months(const MonthlyFigures& figures, Celsius base);

} // namespace lathhouse::climate
