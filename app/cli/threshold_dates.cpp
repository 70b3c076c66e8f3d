#include "app/cli/threshold_dates.h"

#include <array>
#include <charconv>

namespace lathhouse::cli {
namespace {

Json json_of(const climate::EndDates& ends)
{
    Json dates = Json::object();
    for (const auto& [percent, day] : ends.dates) {
        dates[percent_key(percent)] = json_day(day);
    }
    return {{"years", ends.years ? Json(*ends.years) : Json(nullptr)},
            {"share_without", json_number(ends.share_without.fraction())},
            {"dates", dates}};
}

std::string day_or_dash(const std::map<double, std::optional<calendar::DayOfYear>>& dates, double percent)
{
    const auto found = dates.find(percent);
    return found != dates.end() && found->second ? words::day(*found->second) : "-";
}

std::string sentence_of(climate::ThresholdState state)
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
                       words::number(dates.nights_per_year, 1) + " nights a year" + sentence_of(dates.state) +
                       "\n";
    if (dates.state == climate::ThresholdState::Never || dates.state == climate::ThresholdState::NoSeason) {
        return text;
    }
    if (dates.first.share_without.fraction() > 0.0) {
        text += "  Seasons without any: " + words::number(dates.first.share_without.percent(), 0) + " %\n";
    }
    text += "  " + words::padded("chance", 12) + words::padded("one more after", 18) +
            words::padded("first one by", 16) + "days free exceed\n";
    for (const auto& [percent, day] : dates.last.dates) {
        const auto free = dates.free_days.find(percent);
        const bool has_free = free != dates.free_days.end() && free->second;
        text += "  " + words::padded(percent_key(percent) + " %", 12) +
                words::padded(day_or_dash(dates.last.dates, percent), 18) +
                words::padded(day_or_dash(dates.first.dates, percent), 16) +
                (has_free ? std::to_string(*free->second) : "-") + "\n";
    }
    return text;
}

} // namespace lathhouse::cli
