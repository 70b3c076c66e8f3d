#include "core/climate/low_trend.h"

#include <cmath>

namespace lathhouse::climate {

std::optional<Slope> least_squares_slope(std::span<const std::pair<double, double>> points)
{
    if (points.size() < 3) {
        return std::nullopt;
    }
    const auto n = static_cast<double>(points.size());
    double mean_x = 0.0;
    double mean_y = 0.0;
    for (const auto& [x, y] : points) {
        mean_x += x / n;
        mean_y += y / n;
    }
    double squares = 0.0;
    double products = 0.0;
    for (const auto& [x, y] : points) {
        squares += (x - mean_x) * (x - mean_x);
        products += (x - mean_x) * (y - mean_y);
    }
    if (squares <= 0.0) {
        return std::nullopt;
    }
    const double slope = products / squares;
    double residuals = 0.0;
    for (const auto& [x, y] : points) {
        const double off = y - mean_y - slope * (x - mean_x);
        residuals += off * off;
    }
    return Slope{slope, std::sqrt(residuals / (n - 2.0) / squares)};
}

std::optional<LowTrend> low_trend(std::span<const std::pair<double, double>> yearly_means)
{
    if (yearly_means.size() < static_cast<std::size_t>(kFewestYearsOfTrend)) {
        return std::nullopt;
    }
    const auto slope = least_squares_slope(yearly_means);
    return slope ? std::optional{LowTrend{10.0 * slope->slope, 10.0 * slope->standard_error}} : std::nullopt;
}

} // namespace lathhouse::climate
