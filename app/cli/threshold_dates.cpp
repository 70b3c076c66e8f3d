#include "app/cli/threshold_dates.h"

#include <array>
#include <charconv>

namespace lathhouse::cli {
namespace {

std::string day_or_dash(const std::map<double, std::optional<calendar::DayOfYear>>& dates, double percent)
{
    const auto found = dates.find(percent);
    return found != dates.end() && found->second ? words::day(*found->second) : "-";
}

Json json_of(const climate::EndDates& ends)
{
    Json dates = Json::object();
    for (const auto& [percent, day] : ends.dates) {
        dates[percent_key(percent)] = json_day(day);
    }
    Json json = {{"years", ends.years ? Json(*ends.years) : Json(nullptr)},
                 {"share_without", json_number(ends.share_without.fraction())},
                 {"dates", dates},
                 {"intervals", nullptr}};
    if (!ends.intervals.empty()) {
        Json intervals = Json::object();
        for (const auto& [percent, interval] : ends.intervals) {
            intervals[percent_key(percent)] = {{"from", json_day(interval.from)},
                                               {"to", json_day(interval.to)},
                                               {"coverage", json_number(interval.coverage.fraction())}};
        }
        json["intervals"] = intervals;
    }
    if (!ends.model_dates.empty()) {
        Json rare = Json::object();
        for (const auto& [percent, day] : ends.model_dates) {
            rare[percent_key(percent)] = json_day(day);
        }
        json["model_dates"] = rare;
    }
    return json;
}

/// "24 Apr (16 Apr to 1 May)"; a limit that the record does not set is a question mark.
std::string day_with_interval(const climate::EndDates& ends, double percent)
{
    std::string text = day_or_dash(ends.dates, percent);
    const auto found = ends.intervals.find(percent);
    if (found == ends.intervals.end() || (!found->second.from && !found->second.to)) {
        return text;
    }
    const auto limit = [](const std::optional<calendar::DayOfYear>& day) {
        return day ? words::day(*day) : std::string{"?"};
    };
    return text + " (" + limit(found->second.from) + " to " + limit(found->second.to) + ")";
}

std::string state_in_words(climate::ThresholdState state)
{
    switch (state) {
    case climate::ThresholdState::Ordinary:
        return "";
    case climate::ThresholdState::Never:
        return ", none in any season";
    case climate::ThresholdState::NoWindow:
        return ", such nights in every month: no safe window";
    case climate::ThresholdState::NoSeason:
        return ", no cold season here: no dates";
    }
    return "";
}

} // namespace

std::string_view name_of(climate::ThresholdState state)
{
    switch (state) {
    case climate::ThresholdState::Ordinary:
        return "ordinary";
    case climate::ThresholdState::Never:
        return "never";
    case climate::ThresholdState::NoWindow:
        return "no_window";
    case climate::ThresholdState::NoSeason:
        return "no_season";
    }
    return "";
}

std::string percent_key(double percent)
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), percent);
    return {text.data(), end.ptr};
}

Json json_of(const climate::ThresholdDates& dates)
{
    Json free_days = Json::object();
    for (const auto& [percent, days] : dates.free_days) {
        free_days[percent_key(percent)] = days ? Json(*days) : Json(nullptr);
    }
    return {{"threshold_c", json_number(dates.threshold.degrees())},
            {"state", std::string{name_of(dates.state)}},
            {"nights_per_year", json_number(dates.nights_per_year)},
            {"last", json_of(dates.last)},
            {"first", json_of(dates.first)},
            {"free_days", free_days}};
}

std::string text_of(const climate::ThresholdDates& dates, words::UnitSystem units)
{
    std::string text = "At or below " + words::temperature(dates.threshold, units) + ": " +
                       words::number(dates.nights_per_year, 1) + " nights a year" + state_in_words(dates.state) +
                       "\n";
    if (dates.state == climate::ThresholdState::Never || dates.state == climate::ThresholdState::NoSeason) {
        return text;
    }
    if (dates.first.share_without.fraction() > 0.0) {
        text += "  Seasons without any: " + words::number(dates.first.share_without.percent(), 0) + " %\n";
    }
    const bool counted = !dates.last.intervals.empty();
    const std::size_t width = counted ? 32 : 18;
    text += "  " + words::padded("chance", 12) + words::padded("one more after", width) +
            words::padded("first one by", width) + "days free exceed\n";
    for (const auto& [percent, day] : dates.last.dates) {
        const auto free = dates.free_days.find(percent);
        const bool has_free = free != dates.free_days.end() && free->second;
        text += "  " + words::padded(percent_key(percent) + " %", 12) +
                words::padded(day_with_interval(dates.last, percent), width) +
                words::padded(day_with_interval(dates.first, percent), width) +
                (has_free ? std::to_string(*free->second) : "-") + "\n";
    }
    if (counted) {
        text += "  In brackets: where the date lies with 9 chances in 10, as far as " +
                std::to_string(*dates.last.years) + " seasons can tell; ? is no limit.\n";
    }
    for (const auto& [percent, day] : dates.last.model_dates) {
        text += "  " + percent_key(percent) +
                " % is rarer than one of the seasons counted; the model says: " + "one more after " +
                day_or_dash(dates.last.model_dates, percent) + ", first one by " +
                day_or_dash(dates.first.model_dates, percent) + "\n";
    }
    return text;
}

Json json_of(const climate::LowestNight& lowest)
{
    return {{"mean_c", json_number(lowest.mean.degrees())},
            {"p10_c", json_number(lowest.tenth.degrees())},
            {"p50_c", json_number(lowest.median.degrees())},
            {"p90_c", json_number(lowest.ninetieth.degrees())}};
}

std::string text_of(const climate::LowestNight& lowest, words::UnitSystem units)
{
    return "The coldest night of the year: " + words::temperature(lowest.mean, units) +
           " on average; in 8 of 10 years between " + words::temperature(lowest.tenth, units) + " and " +
           words::temperature(lowest.ninetieth, units) + "\n";
}

} // namespace lathhouse::cli
