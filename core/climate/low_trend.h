#pragma once

#include <optional>
#include <span>
#include <utility>

namespace lathhouse::climate {

/// How the year's mean low moved over a base period.
struct LowTrend {
    double kelvins_per_decade;
    double standard_error; ///< Of the same, as if the years were independent.
    friend constexpr bool operator==(const LowTrend&, const LowTrend&) = default;
};

/// The fewest full years for a trend.
inline constexpr int kFewestYearsOfTrend = 15;

/// Slope of a straight line by least squares, and its standard error from the residuals with n - 2 degrees of
/// freedom; nullopt under three points or where all lie at one place. Source: ordinary least squares; tested
/// against a certified data set (NIST StRD, Norris).
struct Slope {
    double slope;
    double standard_error;
};
std::optional<Slope> least_squares_slope(std::span<const std::pair<double, double>> points);

/// Trend of yearly means (year, mean low in C); nullopt under kFewestYearsOfTrend years.
std::optional<LowTrend> low_trend(std::span<const std::pair<double, double>> yearly_means);

} // namespace lathhouse::climate
