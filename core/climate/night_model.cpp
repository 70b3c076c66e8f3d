#include "core/climate/night_model.h"

#include "core/climate/normal.h"
#include "core/climate/table_sizes.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {

namespace {

// Tail correction, fitted as a probit regression of the share of nights at or below 17 lines.
struct TailKnot {
    double constant, linear, square;
};
constexpr double kFirstKnot = -8.0;
constexpr double kKnotStep = 5.0;
constexpr std::array<TailKnot, 7> kTail{{{-0.140, -0.202, 0.012},
                                         {0.051, 0.120, 0.106},
                                         {0.085, 0.099, -0.021},
                                         {-0.113, -0.161, -0.134},
                                         {-0.075, -0.126, -0.084},
                                         {-0.124, -0.177, -0.070},
                                         {-0.111, -0.092, 0.002}}};

TailKnot tail_at(double mean_low)
{
    const double place = std::clamp((mean_low - kFirstKnot) / kKnotStep, 0.0, 6.0);
    const auto left = std::min(static_cast<std::size_t>(place), kTail.size() - 2);
    const double right_share = place - static_cast<double>(left);
    const auto mix = [right_share](double a, double b) { return a + (b - a) * right_share; };
    const TailKnot& a = kTail[left];
    const TailKnot& b = kTail[left + 1];
    return {mix(a.constant, b.constant), mix(a.linear, b.linear), mix(a.square, b.square)};
}

bool reads_whole_fahrenheit(double step_kelvins)
{
    return std::abs(step_kelvins - 5.0 / 9.0) < 0.01;
}

} // namespace

NightModel NightModel::from_monthly(const MonthlyFigures& figures, Latitude latitude,
                                    std::span<const CountedNights> counted)
{
    NightModel model{SeasonTurn::of_lows(figures.low)};
    model.no_season_ = has_no_season(figures.low);
    model.basis_ = spread_basis(figures);
    model.reading_step_kelvins_ = figures.reading_step.kelvins();

    Monthly<double> low{};
    std::ranges::transform(figures.low, low.begin(), [](Celsius month) { return month.degrees(); });
    const DailyCurve mean_low = curve_through_months(low);
    Monthly<double> spread = spread_of_nights(figures, mean_low, latitude);
    if (model.basis_ != SpreadBasis::Lows && !counted.empty() &&
        model.use_counted_spread(figures.low, counted, mean_low, spread)) {
        model.basis_ = SpreadBasis::Lows;
    }
    model.set_course(mean_low, spread);
    // Where the spread of the lows is known it already holds what these two could tell.
    if (model.basis_ != SpreadBasis::Lows) {
        model.use_lowest_values(figures, spread);
        model.set_course(mean_low, spread);
        model.use_frost_days(figures.frost_days);
    } else if (!counted.empty()) {
        constexpr int kYearsNotTold = 20;
        model.use_counted_nights(counted, figures.years.value_or(kYearsNotTold));
    }
    return model;
}

void NightModel::set_course(const DailyCurve& mean_low, const Monthly<double>& spread)
{
    constexpr double kLeastSpread = 0.5;
    constexpr double kSquareBySpread = 0.111;
    constexpr double kWinterShare = 0.12;
    const DailyCurve spreads = curve_through_months(spread);
    for (std::size_t i = 0; i < kDays; ++i) {
        Day& day = days_[i];
        day.mean_low = mean_low[i];
        day.spread = std::max(spreads[i], kLeastSpread);
        const TailKnot tail = tail_at(day.mean_low);
        day.constant = tail.constant;
        day.linear = tail.linear;
        day.square = tail.square - kSquareBySpread * std::log(std::clamp(day.spread, 2.5, 8.0) / 4.5);
        day.season_share = kWinterShare * std::clamp((2.0 - day.mean_low) / 8.0, 0.0, 1.0);
        day.frost_shift = 0.0;
    }
}

double NightModel::effective_degrees(Celsius line, bool bare) const
{
    if (bare && reads_whole_fahrenheit(reading_step_kelvins_)) {
        // The warmest whole degree Fahrenheit whose value in tenths of a degree Celsius is at or below it.
        const double line_tenths = line.degrees() * 10.0 + 1e-6;
        double reading = std::floor(line.fahrenheit()) + 1.0;
        while (std::round(Celsius::from_fahrenheit(reading).degrees() * 10.0) > line_tenths) {
            reading -= 1.0;
        }
        return Celsius::from_fahrenheit(reading + 0.5).degrees();
    }
    return line.degrees() + reading_step_kelvins_ / 2.0;
}

double NightModel::barrier(std::size_t place_index, double effective_degrees, double line_degrees) const
{
    const Day& day = days_[place_index];
    const double u = (effective_degrees - day.mean_low) / day.spread;
    const double w = std::clamp(u, -3.2, 0.0);
    double result = u + day.constant + day.linear * w + day.square * (w * w - 1.0);
    if (day.frost_shift != 0.0) {
        result += day.frost_shift * std::exp(-std::abs(line_degrees) / 6.0);
    }
    return result;
}

double NightModel::chance_below(std::size_t place_index, double effective_degrees, double line_degrees) const
{
    return normal_below(barrier(place_index, effective_degrees, line_degrees));
}

double NightModel::chance_at_line(std::size_t place_index, double line_degrees, NightOffset offset) const
{
    double chance = 0.0;
    for (const QuadratureNode& node : offset_nodes(offset)) {
        const double line = open_air_degrees(line_degrees, offset, node);
        chance +=
            node.weight *
            chance_below(place_index, effective_degrees(Celsius::from_degrees(line), is_bare(offset)), line);
    }
    return chance;
}

Celsius NightModel::mean_low(calendar::DayOfYear day) const
{
    return Celsius::from_degrees(days_[static_cast<std::size_t>(day.index())].mean_low);
}

KelvinDelta NightModel::spread(calendar::DayOfYear day) const
{
    return KelvinDelta::from_kelvins(days_[static_cast<std::size_t>(day.index())].spread);
}

Probability NightModel::chance_on(calendar::DayOfYear day, Celsius line, NightOffset offset) const
{
    return Probability::clamped(
        chance_at_line(static_cast<std::size_t>(day.index()), line.degrees(), offset));
}

Celsius NightModel::quantile(calendar::DayOfYear day, Probability chance, NightOffset offset) const
{
    const auto place = static_cast<std::size_t>(day.index());
    const Day& course = days_[place];
    const double reach = 12.0 * (course.spread + offset.spread.kelvins()) + 5.0;
    const double centre = course.mean_low + offset.mean.kelvins();
    double low = centre - reach;
    double high = centre + reach;
    for (int halving = 0; halving < 50; ++halving) {
        const double line = (low + high) / 2.0;
        double below = 0.0;
        for (const QuadratureNode& node : offset_nodes(offset)) {
            const double open = open_air_degrees(line, offset, node);
            below += node.weight * chance_below(place, open + reading_step_kelvins_ / 2.0, open);
        }
        (below < chance.fraction() ? low : high) = line;
    }
    return Celsius::from_degrees((low + high) / 2.0);
}

} // namespace lathhouse::climate
