#include "core/climate/line_dates.h"

#include "core/climate/own_record.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {
namespace {

/// Counted at a station that stands where the place is, for every line asked for; nullopt where there is none such.
std::optional<std::vector<ThresholdDates>> counted_at_place(const PlaceClimate& place, std::span<const Celsius> lines,
                                                            std::span<const double> further_percents)
{
    if (!station_stands_at(place)) {
        return std::nullopt;
    }
    if (place.own) {
        return dates_from_own(*place.own, lines, further_percents);
    }
    if (!further_percents.empty()) {
        return std::nullopt;
    }
    const auto nearest = std::ranges::min(place.stations, {}, &StationInUse::distance);
    std::vector<ThresholdDates> found;
    for (const Celsius line : lines) {
        const auto dates = std::ranges::find_if(nearest.station->dates, [line](const auto& known) {
            return std::abs((known.threshold - line).kelvins()) < 0.005;
        });
        if (dates == nearest.station->dates.end()) {
            return std::nullopt;
        }
        found.push_back(*dates);
    }
    return found;
}

} // namespace

LineDates dates_of_lines(const PlaceClimate& place, std::span<const Celsius> lines,
                         std::span<const double> further_percents, CountedDates counted)
{
    const bool left_out = counted == CountedDates::AreLeftOut;
    const auto nights = left_out ? PlaceNights{place.nights()} : PlaceNights::of(place);
    LineDates answer{.lines = {}, .error_days = 0.0};
    if (auto dates = left_out ? std::nullopt : counted_at_place(place, lines, further_percents)) {
        for (auto& of : *dates) {
            complete_counted(of, nights.model().turn());
        }
        answer.error_days = counted_error_days(dates->front().last.years.value_or(1));
        answer.lines = std::move(*dates);
        answer.counted = true;
        return answer;
    }
    for (const Celsius line : lines) {
        answer.moved |= nights.dates_from(line) != DatesFrom::Model;
        answer.lines.push_back(nights.dates(line, further_percents));
    }
    answer.error_days = nights.expected_error_days(place, lines.front());
    return answer;
}

LineDates dates_at_spot(const PlaceClimate& place, Celsius line, NightOffset offset,
                        std::span<const double> further_percents)
{
    const auto nights = PlaceNights::of(place);
    const Celsius open_air = line - offset.mean;
    return {.lines = {nights.dates(line, further_percents, offset)},
            .moved = nights.dates_from(open_air) != DatesFrom::Model,
            .error_days = nights.expected_error_days(place, open_air)};
}

Result<NightsBetween> nights_between(const PlaceNights& nights, calendar::Date from, calendar::Date to, Celsius line,
                                     NightOffset offset)
{
    const int days = calendar::days_between(from, to);
    if (days < 0 || days > kMostDaysBetween) {
        return Error{ErrorCode::WrongUsage, said("the last night %1 must be the first, %2, or up to a year later",
                                                 calendar::to_text(to), calendar::to_text(from))};
    }
    std::vector<calendar::DayOfYear> asked;
    double expected = 0.0;
    for (int day = 0; day <= days; ++day) {
        asked.push_back(calendar::DayOfYear::of(from + calendar::Days{day}));
        expected += nights.chance_on(asked.back(), line, offset).fraction();
    }
    NightsBetween answer{.nights = static_cast<int>(asked.size()),
                         .any = nights.chance_among(asked, line, offset),
                         .expected = expected,
                         .before = {},
                         .after = {}};
    if (!nights.model().no_season()) {
        const auto season = nights.season(line, offset);
        // Before the first night of all, the day after the turn, there is none.
        const auto day_before = calendar::DayOfYear::wrapped(asked.front().place() - 1);
        answer.before = day_before == season.turn().last_day() ? Probability::literal(0.0) : season.on_or_before(day_before);
        answer.after = season.after(asked.back());
    }
    return answer;
}

} // namespace lathhouse::climate
