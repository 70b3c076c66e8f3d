#pragma once

#include "core/climate/month_curve.h"
#include "core/climate/monthly_figures.h"
#include "core/units/length.h"
#include "core/units/light.h"
#include "core/units/position.h"

#include <string>

namespace lathhouse::climate {

/// Days a year with a reading of the high above 30 C.
///
/// Highs are taken as normal about the smooth course of the mean high; their spread is told from the spread
/// of the daily means and of the lows, the daily range and the mean high, as far as they are known, by
/// regressions on half of 1,134 stations of the United States (GHCN-Daily, NOAA). Half a reading step belongs
/// to the line. Accuracy, on the other half, mean absolute error: 1.8 days where both spreads are known, 2.8
/// with that of the means, 3.3 with that of the lows, 4.0 with neither (docs/methods/figures-of-a-place.md).
double heat_days(const MonthlyFigures& figures);

/// Chance for each day of the year that its high is above 30 C: what `heat_days` sums, with its assumptions.
DailyCurve chances_of_heat(const MonthlyFigures& figures);

/// Half-zone of winter hardiness, "1a" to "13b", of the mean lowest night of the cold seasons; what lies
/// below -60 F is "1a", what lies at 70 F or above "13b". Source: limits of the USDA Plant Hardiness Zone Map
/// (2012): 5 F each, the lower limit included.
std::string hardiness_zone(Celsius mean_lowest);

/// Radiation on the level outdoors, mean of each month, from the mean lows and highs.
/// Accuracy: as sky::radiation_from_temperature_range without a setting.
Monthly<DailyRadiation> months_of_radiation(const MonthlyFigures& figures, Latitude latitude,
                                            Metres elevation);

/// A month's light and thirst.
struct MonthOfLight {
    double day_length_seconds; ///< Mean of six days of the month, rise to set as sky/sun.h has them.
    DailyLight daily_light;    ///< Outdoors on the level, mean of the month.
    Millimetres reference_evapotranspiration; ///< Sum of the month; February has 28.2425 days.
};

/// From the mean lows and highs alone: radiation from the temperature range, water by Hargreaves.
/// Accuracy: as sky/radiation.h and sky/evapotranspiration.h state.
Monthly<MonthOfLight> months_of_light(const MonthlyFigures& figures, Position position, Metres elevation);

} // namespace lathhouse::climate
