#include "core/growth/comparison.h"

#include "core/base/in_doubles.h"
#include "core/growth/trend.h"

#include <cmath>
#include <optional>

#include <boost/math/distributions/students_t.hpp>

namespace lathhouse::growth {
namespace {

constexpr std::size_t kLeastReadings = 3;

struct Moments {
    double mean;
    double variance_of_mean;
};

Moments moments(std::span<const double> values)
{
    const auto count = static_cast<double>(values.size());
    double mean = 0.0;
    for (const double value : values) {
        mean += value / count;
    }
    double squares = 0.0;
    for (const double value : values) {
        squares += (value - mean) * (value - mean);
    }
    return {mean, squares / (count - 1.0) / count};
}

MeanDifference with_limits(double difference, double variance, double freedom, double level)
{
    const boost::math::students_t_distribution<double, InDoubles> student{freedom};
    const double error = std::sqrt(variance);
    const double t = difference / error;
    const double reach = boost::math::quantile(student, (1.0 + level) / 2.0) * error;
    return {difference,
            difference - reach,
            difference + reach,
            t,
            freedom,
            2.0 * boost::math::cdf(student, -std::abs(t)),
            0,
            0};
}

std::optional<double> rate(std::span<const Point> points)
{
    if (points.size() < kLeastReadings) {
        return std::nullopt;
    }
    const auto line = theil_sen(points);
    return line ? std::optional{line->slope} : std::nullopt;
}

} // namespace

Result<MeanDifference> paired_difference(std::span<const double> differences, double level)
{
    if (differences.size() < 2) {
        return Error{ErrorCode::WrongUsage, said("a comparison needs 2 plants, has %1", differences.size())};
    }
    const auto of = moments(differences);
    if (!(of.variance_of_mean > 0.0)) {
        return Error{ErrorCode::WrongUsage,
                     said("all plants changed alike to the last digit; nothing can be said of chance")};
    }
    auto result = with_limits(of.mean, of.variance_of_mean, static_cast<double>(differences.size()) - 1.0, level);
    result.pairs_or_first = static_cast<int>(differences.size());
    return result;
}

Result<MeanDifference> welch_difference(std::span<const double> first, std::span<const double> second, double level)
{
    if (first.size() < 2 || second.size() < 2) {
        return Error{ErrorCode::WrongUsage, said("a comparison of two groups needs 2 plants in each, has %1 and %2",
                                                 first.size(), second.size())};
    }
    const auto one = moments(first);
    const auto two = moments(second);
    const double variance = one.variance_of_mean + two.variance_of_mean;
    if (!(variance > 0.0)) {
        return Error{ErrorCode::WrongUsage,
                     said("the plants of each group changed alike to the last digit; nothing can be said of chance")};
    }
    const double freedom =
        variance * variance /
        (one.variance_of_mean * one.variance_of_mean / (static_cast<double>(first.size()) - 1.0) +
         two.variance_of_mean * two.variance_of_mean / (static_cast<double>(second.size()) - 1.0));
    auto result = with_limits(one.mean - two.mean, variance, freedom, level);
    result.pairs_or_first = static_cast<int>(first.size());
    result.second = static_cast<int>(second.size());
    return result;
}

RatesOfPlant rates_of(SeriesKind kind, std::string name, std::span<const SeriesReading> readings,
                      calendar::Date event, const GrowthClock& clock)
{
    std::vector<Point> before;
    std::vector<Point> after;
    for (const auto& reading : readings) {
        (reading.date <= event ? before : after)
            .push_back({clock.days_between(event, reading.date), transformed(kind, reading.value)});
    }
    return {std::move(name), {},           static_cast<int>(before.size()), static_cast<int>(after.size()),
            rate(before),    rate(after)};
}

} // namespace lathhouse::growth
