#include "core/climate/thermal_season.h"

#include "core/calendar/month_length.h"
#include "core/climate/month_curve.h"

#include <algorithm>
#include <chrono>
#include <vector>

namespace lathhouse::climate {
namespace {

constexpr int kRun = 6;
constexpr int kMostMissingOfYear = 15;
constexpr int kFewestYears = 10;
constexpr std::size_t kLeapDay = 59;

/// Tenths of the sum of low and high of twelve months beginning with that one; a gap where either is missing.
std::vector<std::optional<int>> doubled_means(const DailyRecord& record, int year, int first_month)
{
    std::vector<std::optional<int>> days;
    for (int k = 0; k < 12; ++k) {
        const int month = (first_month - 1 + k) % 12 + 1;
        const int of_year = year + (first_month - 1 + k) / 12;
        const auto* readings = record.month(of_year, month);
        for (int day = 0; day < calendar::days_in_month(of_year, month); ++day) {
            const auto d = static_cast<std::size_t>(day);
            days.push_back(readings != nullptr && readings->low[d].known() && readings->high[d].known()
                               ? std::optional{readings->low[d].tenths() + readings->high[d].tenths()}
                               : std::nullopt);
        }
    }
    return days;
}

/// Where the first run of kRun days begins that all satisfy the rule, from `begin` on.
template <class Rule>
std::optional<int> first_run(const std::vector<std::optional<int>>& days, int begin, Rule rule)
{
    int length = 0;
    for (int day = begin; day < static_cast<int>(days.size()); ++day) {
        const auto& value = days[static_cast<std::size_t>(day)];
        length = value && rule(*value) ? length + 1 : 0;
        if (length == kRun) {
            return day - kRun + 1;
        }
    }
    return std::nullopt;
}

} // namespace

ThermalSeason thermal_season(const MonthlyFigures& figures, Celsius above)
{
    Monthly<double> mean{};
    for (std::size_t m = 0; m < 12; ++m) {
        mean[m] = (figures.low[m].degrees() + figures.high[m].degrees()) / 2.0;
    }
    const DailyCurve curve = curve_through_months(mean);
    const auto is_above = [&](int day) {
        return curve[static_cast<std::size_t>((day + 366) % 366)] > above.degrees();
    };
    int longest = 0;
    int begin = 0;
    for (int day = 0; day < 366; ++day) {
        if (!is_above(day) || is_above(day - 1)) {
            continue;
        }
        int length = 1;
        while (is_above(day + length)) {
            ++length;
        }
        if (length > longest) {
            longest = length;
            begin = day;
        }
    }
    if (longest == 0) {
        return {above, is_above(0) ? 365.25 : 0.0, std::nullopt, std::nullopt};
    }
    double days = longest;
    for (int day = begin; day < begin + longest; ++day) {
        days -= static_cast<std::size_t>(day % 366) == kLeapDay ? 0.75 : 0.0;
    }
    return {above, days, calendar::DayOfYear::wrapped(begin + 1),
            calendar::DayOfYear::wrapped(begin + longest)};
}

std::optional<double> growing_season_length(const DailyRecord& record, BasePeriod base, Latitude latitude,
                                            Celsius above)
{
    const bool south = latitude.degrees() < 0.0;
    const int first_month = south ? 7 : 1;
    const double line = 20.0 * above.degrees(); // Tenths, doubled.
    double sum = 0.0;
    int years = 0;
    for (int year = base.first_year; year + (south ? 1 : 0) <= base.last_year; ++year) {
        const auto days = doubled_means(record, year, first_month);
        if (std::ranges::count_if(days, [](const auto& day) { return !day; }) > kMostMissingOfYear) {
            continue;
        }
        ++years;
        const auto begin = first_run(days, 0, [line](int value) { return value > line; });
        if (!begin) {
            continue;
        }
        int middle = 0; // The first day of the second half.
        for (int k = 0; k < 6; ++k) {
            middle += calendar::days_in_month(year, (first_month - 1 + k) % 12 + 1);
        }
        const auto end =
            first_run(days, std::max(middle, *begin), [line](int value) { return value < line; });
        sum += end.value_or(static_cast<int>(days.size())) - *begin;
    }
    return years >= kFewestYears ? std::optional{sum / years} : std::nullopt;
}

} // namespace lathhouse::climate
