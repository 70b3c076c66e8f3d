#include "core/calendar/month_length.h"
#include "core/climate/night_model.h"
#include "core/climate/normal.h"
#include "core/climate/table_sizes.h"

#include <algorithm>
#include <cmath>

// What lowest values and frost days tell of the spread and the tail.

namespace lathhouse::climate {

namespace {

std::size_t first_place_of_month(std::size_t month)
{
    return static_cast<std::size_t>(calendar::places_before_month(static_cast<int>(month) + 1));
}

std::size_t length_of_month(std::size_t month)
{
    return static_cast<std::size_t>(calendar::days_in_month_of_leap_year(static_cast<int>(month) + 1));
}

} // namespace

void NightModel::use_lowest_values(const MonthlyFigures& figures, Monthly<double>& spread)
{
    if (!figures.years || *figures.years < 1) {
        return;
    }
    // 0.45 of the nights count as independent; of the lowest of so many, 0.69 = ln 2 is the median.
    constexpr double kIndependentShare = 0.45;
    constexpr double kExpectedBelow = 0.69;
    Monthly<std::optional<double>> ratio{};
    double sum = 0.0;
    int count = 0;
    for (std::size_t m = 0; m < kMonths; ++m) {
        if (!figures.lowest[m]) {
            continue;
        }
        const std::size_t start = first_place_of_month(m);
        const double nights = kIndependentShare * *figures.years;
        double low = figures.low[m].degrees() - 60.0;
        double high = figures.low[m].degrees() + 10.0;
        for (int halving = 0; halving < 30; ++halving) {
            const double line = (low + high) / 2.0;
            double below = 0.0;
            for (std::size_t d = start; d < start + length_of_month(m); ++d) {
                below += chance_below(d, line, line);
            }
            (nights * below < kExpectedBelow ? low : high) = line;
        }
        const double expected = (low + high) / 2.0 - reading_step_kelvins_ / 2.0;
        const double mean = figures.low[m].degrees();
        ratio[m] = std::log(
            std::clamp((mean - figures.lowest[m]->degrees()) / std::max(mean - expected, 1.0), 0.4, 2.5));
        sum += *ratio[m];
        ++count;
    }
    if (count == 0) {
        return;
    }
    const double year = sum / count * count / (count + 1.33);
    Monthly<double> rest{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        rest[m] = ratio[m] ? *ratio[m] - year : 0.0;
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        const double smooth = (rest[(m + 11) % kMonths] + rest[m] + rest[(m + 1) % kMonths]) / 3.0;
        spread[m] *= std::exp(year + 0.5 * smooth);
    }
}

void NightModel::use_frost_days(const Monthly<std::optional<double>>& frost_days)
{
    // "Below 0" ends half a step under the reading 0.
    const double effective = -reading_step_kelvins_ / 2.0;
    DailyCurve base{};
    for (std::size_t d = 0; d < kDays; ++d) {
        base[d] = barrier(d, effective, 0.0);
    }
    const auto usable = [&frost_days](std::size_t m) {
        constexpr double kFromTheEnds = 0.4;
        return frost_days[m] && *frost_days[m] >= kFromTheEnds &&
               *frost_days[m] <= calendar::kMeanDaysOfMonths[m] - kFromTheEnds;
    };
    Monthly<double> shift{};
    for (int sweep = 0; sweep < 6; ++sweep) {
        const DailyCurve daily = lines_between_months(shift);
        for (std::size_t m = 0; m < kMonths; ++m) {
            if (!usable(m)) {
                continue;
            }
            const std::size_t start = first_place_of_month(m);
            const auto length = static_cast<double>(length_of_month(m));
            double share = 0.0;
            double density = 0.0;
            for (std::size_t d = start; d < start + length_of_month(m); ++d) {
                share += normal_below(base[d] + daily[d]) / length;
                density += normal_density(base[d] + daily[d]) / length;
            }
            const double step = (*frost_days[m] / calendar::kMeanDaysOfMonths[m] - share) / std::max(density, 0.002);
            shift[m] += 0.8 * std::clamp(step, -0.3, 0.3);
        }
    }
    // A month that would need more than this contradicts the place's other figures.
    constexpr double kContradiction = 0.7;
    double sum = 0.0;
    int count = 0;
    Monthly<bool> used{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        used[m] = usable(m) && std::abs(shift[m]) <= kContradiction;
        if (used[m]) {
            shift[m] = std::clamp(shift[m], -0.5, 0.5);
            sum += shift[m];
            ++count;
        }
    }
    if (count == 0) {
        return;
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        if (!used[m]) {
            shift[m] = 0.7 * sum / count;
        }
    }
    const DailyCurve daily = lines_between_months(shift);
    for (std::size_t d = 0; d < kDays; ++d) {
        days_[d].frost_shift = daily[d];
    }
}

} // namespace lathhouse::climate
