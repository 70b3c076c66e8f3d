#include "core/growth/trend.h"

#include "core/base/in_doubles.h"
#include "core/growth/median.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <string>

#include <boost/math/distributions/normal.hpp>

namespace lathhouse::growth {
namespace {

template <class Of>
double median_of(std::span<const Point> points, Of of)
{
    std::vector<double> values;
    std::ranges::transform(points, std::back_inserter(values), of);
    return median(std::move(values));
}

/// Sum of k (k - 1) (2 k + 5) over groups of k equal values.
double tie_term(const std::map<double, int>& counts)
{
    double sum = 0.0;
    for (const auto& [value, count] : counts) {
        sum += static_cast<double>(count) * (count - 1) * (2 * count + 5);
    }
    return sum;
}

} // namespace

Result<TheilSen> theil_sen(std::span<const Point> points, double level)
{
    std::vector<double> slopes;
    std::map<double, int> equal_x;
    std::map<double, int> equal_y;
    for (std::size_t i = 0; i < points.size(); ++i) {
        ++equal_x[points[i].x];
        ++equal_y[points[i].y];
        for (std::size_t j = i + 1; j < points.size(); ++j) {
            if (points[i].x != points[j].x) {
                slopes.push_back((points[j].y - points[i].y) / (points[j].x - points[i].x));
            }
        }
    }
    if (slopes.empty()) {
        return Error{ErrorCode::WrongUsage, said("a line needs two points of different x")};
    }
    std::ranges::sort(slopes);
    const double slope = median(slopes);
    const auto count = static_cast<double>(points.size());
    const double variance =
        (count * (count - 1.0) * (2.0 * count + 5.0) - tie_term(equal_x) - tie_term(equal_y)) / 18.0;
    const double z = boost::math::quantile(boost::math::normal_distribution<double, InDoubles>{}, (1.0 + level) / 2.0);
    const auto pairs = static_cast<double>(slopes.size());
    const double reach = z * std::sqrt(std::max(variance, 0.0));
    const auto last = static_cast<std::ptrdiff_t>(slopes.size()) - 1;
    const auto low = std::clamp<std::ptrdiff_t>(std::lround((pairs - reach) / 2.0) - 1, 0, last);
    const auto high = std::clamp<std::ptrdiff_t>(std::lround((pairs + reach) / 2.0), 0, last);
    const double mid_x = median_of(points, [](const Point& of) { return of.x; });
    const double mid_y = median_of(points, [](const Point& of) { return of.y; });
    return TheilSen{slope, mid_y - slope * mid_x,
                    median_of(points, [&](const Point& of) { return of.y - slope * of.x; }),
                    slopes[static_cast<std::size_t>(low)], slopes[static_cast<std::size_t>(high)]};
}

Result<MannKendall> mann_kendall(std::span<const double> values)
{
    if (values.size() < 3) {
        return Error{ErrorCode::WrongUsage, said("a trend test needs 3 values, has %1", values.size())};
    }
    int score = 0;
    std::map<double, int> equal;
    for (std::size_t i = 0; i < values.size(); ++i) {
        ++equal[values[i]];
        for (std::size_t j = i + 1; j < values.size(); ++j) {
            score += (values[j] > values[i] ? 1 : 0) - (values[j] < values[i] ? 1 : 0);
        }
    }
    const auto count = static_cast<double>(values.size());
    const double variance = (count * (count - 1.0) * (2.0 * count + 5.0) - tie_term(equal)) / 18.0;
    const double toward = score > 0 ? score - 1.0 : score < 0 ? score + 1.0 : 0.0;
    const double z = variance > 0.0 ? toward / std::sqrt(variance) : 0.0;
    return MannKendall{score, variance, z, 2.0 * boost::math::cdf(boost::math::normal_distribution<double, InDoubles>{}, -std::abs(z))};
}

} // namespace lathhouse::growth
