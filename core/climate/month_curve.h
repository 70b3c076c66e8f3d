#pragma once

#include "core/climate/monthly_figures.h"

#include <array>

namespace lathhouse::climate {

/// One number for each place of the calendar of a leap year, 1 January first.
using DailyCurve = std::array<double, 366>;

/// A smooth yearly course through twelve monthly means, whose own monthly means are those given.
///
/// Periodic cubic spline through the middles of the months (366 days, day d stands at d + 0.5); its knots
/// are moved ten times by what the month's mean lacks. Accuracy: the monthly means agree within 0.001 of the
/// largest step between months.
DailyCurve curve_through_months(const Monthly<double>& monthly_means);

/// Population variance of the curve within each month: the season's own slope.
Monthly<double> variance_within_months(const DailyCurve& curve);

/// Mean of the curve over each month.
Monthly<double> means_of_months(const DailyCurve& curve);

/// Straight lines between the middles of the months.
DailyCurve lines_between_months(const Monthly<double>& at_middles);

/// Month (0..11) of each place of the year.
const std::array<int, 366>& month_of_places();

} // namespace lathhouse::climate
