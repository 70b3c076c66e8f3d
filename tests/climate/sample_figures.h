#pragma once

#include "core/climate/monthly_figures.h"

#include <array>

namespace lathhouse::climate {

inline Monthly<Celsius> celsius_of(const Monthly<double>& v)
{
    const auto c = [&v](std::size_t m) { return Celsius::from_degrees(v[m]); };
    return {c(0), c(1), c(2), c(3), c(4), c(5), c(6), c(7), c(8), c(9), c(10), c(11)};
}

inline Monthly<KelvinDelta> kelvins_of(const Monthly<double>& v)
{
    const auto k = [&v](std::size_t m) { return KelvinDelta::from_kelvins(v[m]); };
    return {k(0), k(1), k(2), k(3), k(4), k(5), k(6), k(7), k(8), k(9), k(10), k(11)};
}

/// An invented inland place of the middle latitudes, its warmest month July.
inline MonthlyFigures inland_figures()
{
    return {.low = celsius_of({-8.1, -6.9, -2.4, 3.1, 8.8, 13.9, 16.5, 15.6, 11.2, 5.0, 0.1, -5.2}),
            .high = celsius_of({1.2, 3.1, 8.6, 15.4, 21.2, 26.3, 28.9, 28.0, 23.6, 16.7, 9.3, 3.2}),
            .low_spread = kelvins_of({6.4, 6.0, 5.2, 4.7, 4.4, 3.9, 3.2, 3.4, 4.8, 4.9, 5.0, 5.8}),
            .mean_spread = {},
            .lowest = {},
            .frost_days = {},
            .years = {}};
}

/// The same place half a year later: below the equator.
inline MonthlyFigures turned_half_a_year(const MonthlyFigures& figures)
{
    MonthlyFigures turned = figures;
    for (std::size_t m = 0; m < 12; ++m) {
        turned.low[m] = figures.low[(m + 6) % 12];
        turned.high[m] = figures.high[(m + 6) % 12];
        (*turned.low_spread)[m] = (*figures.low_spread)[(m + 6) % 12];
    }
    return turned;
}

/// An invented place with hardly a year: the lows swing by 1.5 K.
inline MonthlyFigures tropical_figures()
{
    return {.low = celsius_of({22.0, 22.1, 22.4, 22.9, 23.2, 23.5, 23.4, 23.3, 23.1, 22.9, 22.5, 22.1}),
            .high = celsius_of({30, 30.4, 31, 31.3, 31.2, 30.8, 30.5, 30.4, 30.4, 30.2, 30, 29.8}),
            .low_spread = {},
            .mean_spread = {},
            .lowest = {},
            .frost_days = {},
            .years = {}};
}

} // namespace lathhouse::climate
