#pragma once

#include "core/climate/month_curve.h"
#include "core/climate/monthly_figures.h"
#include "core/units/position.h"

namespace lathhouse::climate {

/// What the spread of the night lows rests on, best first.
enum class SpreadBasis {
    Lows,  ///< The standard deviation of the lows was given.
    Means, ///< From the standard deviation of the daily means, by a regression.
    None,  ///< From the monthly lows and highs and the latitude alone: rough.
};

/// Standard deviation of the night lows about the smooth course of the year, kelvins by month, before any
/// lowest values are used.
///
/// Error of the two regressions (root mean square): from the spread of means 11.6 %; from nothing 40 %.
Monthly<double> spread_of_nights(const MonthlyFigures& figures, const DailyCurve& mean_low,
                                 Latitude latitude);

SpreadBasis spread_basis(const MonthlyFigures& figures);

} // namespace lathhouse::climate
