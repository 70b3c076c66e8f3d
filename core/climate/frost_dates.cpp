#include "core/climate/frost_dates.h"

#include "core/climate/normal.h"
#include "core/climate/sampling_interval.h"

#include <cmath>

namespace lathhouse::climate {

namespace {

enum class End { Last, First };

/// The value at a percent, between the two neighbours among `known`; nullopt outside them or where one lacks.
std::optional<double> between(const std::map<double, std::optional<double>>& known, double percent)
{
    const auto upper = known.lower_bound(percent);
    if (upper == known.end()) {
        return std::nullopt;
    }
    if (upper->first == percent) {
        return upper->second;
    }
    if (upper == known.begin()) {
        return std::nullopt;
    }
    const auto lower = std::prev(upper);
    if (!lower->second || !upper->second) {
        return std::nullopt;
    }
    const auto z = [](double at) { return normal_quantile(at / 100.0); };
    const double share = (z(percent) - z(lower->first)) / (z(upper->first) - z(lower->first));
    return *lower->second + share * (*upper->second - *lower->second);
}

void complete(EndDates& ends, End end, const SeasonTurn& turn)
{
    std::map<double, std::optional<double>> known;
    for (const auto& [percent, day] : ends.dates) {
        known[percent] = day ? std::optional<double>{turn.season_index(*day)} : std::nullopt;
    }
    const auto day_at = [&](double percent) -> std::optional<calendar::DayOfYear> {
        const auto index = between(known, percent);
        return index ? std::optional{turn.day_at(static_cast<int>(std::lround(*index)))} : std::nullopt;
    };
    for (const double percent : standard_percents()) {
        ends.dates.emplace(percent, day_at(percent));
    }
    const int seasons = *ends.years;
    // The percent for which the element rule names that element.
    const auto day_of_element = [&](std::optional<int> element) -> std::optional<calendar::DayOfYear> {
        if (!element) {
            return std::nullopt;
        }
        return day_at(100.0 * (end == End::Last ? seasons - *element : *element) / seasons);
    };
    for (const auto& [percent, day] : ends.dates) {
        if (ends.intervals.contains(percent)) { // Counted from all the seasons, which know more.
            continue;
        }
        const auto chance = Probability::clamped(percent / 100.0);
        const RankInterval ranks =
            interval_of_quantile(seasons, end == End::Last ? chance.complement() : chance);
        ends.intervals.emplace(
            percent, DateInterval{day_of_element(ranks.lower), day_of_element(ranks.upper), ranks.coverage});
    }
}

} // namespace

std::vector<double> standard_percents()
{
    return {10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0};
}

int element_of_last(double percent, int seasons)
{
    // 0.3 x 10 must not be rounded to the other side of 3.
    return seasons - static_cast<int>(std::floor(percent * seasons / 100.0 + 1e-9));
}

int element_of_first(double percent, int seasons)
{
    return static_cast<int>(std::ceil(percent * seasons / 100.0 - 1e-9));
}

void complete_counted(ThresholdDates& dates, const SeasonTurn& turn)
{
    if (!dates.last.years || *dates.last.years < 1 || !dates.first.years || *dates.first.years < 1) {
        return;
    }
    complete(dates.last, End::Last, turn);
    complete(dates.first, End::First, turn);
    std::map<double, std::optional<double>> known;
    for (const auto& [percent, days] : dates.free_days) {
        known[percent] = days ? std::optional<double>{*days} : std::nullopt;
    }
    for (const double percent : standard_percents()) {
        const auto days = between(known, percent);
        dates.free_days.emplace(percent,
                                days ? std::optional{static_cast<int>(std::lround(*days))} : std::nullopt);
    }
}

} // namespace lathhouse::climate
