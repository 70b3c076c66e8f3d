#include "core/climate/degree_days.h"

#include "core/climate/month_curve.h"
#include "core/climate/quadrature.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::climate {
namespace {

/// Mean of a sine between low and high above the base, all in degrees; 0 where it stays below.
double sine_above(double low, double high, double base)
{
    const double mean = (low + high) / 2.0;
    const double swing = (high - low) / 2.0;
    if (low >= base) {
        return mean - base;
    }
    if (high <= base) {
        return 0.0;
    }
    const double angle = std::asin((base - mean) / swing);
    return ((mean - base) * (std::numbers::pi / 2.0 - angle) + swing * std::cos(angle)) / std::numbers::pi;
}

} // namespace

double degree_days(Celsius low, Celsius high, Celsius base, std::optional<Celsius> upper,
                   DegreeDayMethod method)
{
    const double from = base.degrees();
    const double coldest = low.degrees();
    const double warmest = std::max(high.degrees(), coldest);
    switch (method) {
    case DegreeDayMethod::SimpleAverage: {
        const double mean = (coldest + warmest) / 2.0;
        return std::max((upper ? std::min(mean, upper->degrees()) : mean) - from, 0.0);
    }
    case DegreeDayMethod::ModifiedAverage: {
        const auto within = [&](double value) {
            const double raised = std::max(value, from);
            return upper ? std::min(raised, upper->degrees()) : raised;
        };
        return (within(coldest) + within(warmest)) / 2.0 - from;
    }
    case DegreeDayMethod::SingleSine:
        return sine_above(coldest, warmest, from) -
               (upper ? sine_above(coldest, warmest, upper->degrees()) : 0.0);
    }
    return 0.0;
}

Monthly<double> degree_days_of_months(const MonthlyFigures& figures, Celsius base)
{
    constexpr double kOfMeans = 1.1; // The years differ as well, which the spread within a month leaves out.
    constexpr double kOfLows = 0.95;
    constexpr double kUnknown = 4.5;
    constexpr std::size_t kLeapDay = 59;
    Monthly<double> low{};
    Monthly<double> high{};
    Monthly<double> spread{};
    for (std::size_t m = 0; m < 12; ++m) {
        low[m] = figures.low[m].degrees();
        high[m] = figures.high[m].degrees();
        spread[m] = figures.mean_spread  ? kOfMeans * (*figures.mean_spread)[m].kelvins()
                    : figures.low_spread ? kOfLows * (*figures.low_spread)[m].kelvins()
                                         : kUnknown;
    }
    const DailyCurve lows = curve_through_months(low);
    const DailyCurve highs = curve_through_months(high);
    const DailyCurve spreads = curve_through_months(spread);
    Monthly<double> sums{};
    for (std::size_t d = 0; d < lows.size(); ++d) {
        double day = 0.0;
        for (const auto& [at, weight] : kFiveNodes) {
            const double moved = at * std::max(spreads[d], 0.0);
            const double coldest = lows[d] + moved;
            day += weight * sine_above(coldest, std::max(highs[d] + moved, coldest), base.degrees());
        }
        sums[static_cast<std::size_t>(month_of_places()[d])] += d == kLeapDay ? day / 4.0 : day;
    }
    return sums;
}

} // namespace lathhouse::climate
