#pragma once

#include "core/climate/monthly_figures.h"

#include <cmath>

namespace lathhouse::climate {

/// A mean low 1 K off moves a date at the middle chances by so many days; with the model's own error below it
/// fits the errors at every second station left out (docs/methods/between-stations.md).
inline constexpr double kDaysPerKelvin = 6.2;
inline constexpr double kDaysPerKelvinCarried = 6.7;

/// Error to expect of a date of the model from such figures, days. What the model misses where the means are
/// right depends on what is known of the spread.
inline double error_days_of_model(const MonthlyFigures& figures, KelvinDelta error)
{
    const double model = figures.low_spread                     ? 3.8
                         : figures.mean_spread && figures.years ? 4.4
                         : figures.mean_spread                  ? 5.2
                                                                : 10.0;
    return std::hypot(model, kDaysPerKelvin * error.kelvins());
}

/// The same of a date that the counts of neighbours put right (place_nights.h).
inline double error_days_carried(KelvinDelta error)
{
    constexpr double kLeft = 2.8;
    return std::hypot(kLeft, kDaysPerKelvinCarried * error.kelvins());
}

} // namespace lathhouse::climate
