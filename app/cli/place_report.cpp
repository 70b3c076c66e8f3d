#include "app/cli/place_report.h"

#include "app/cli/counted.h"
#include "app/cli/household_options.h"
#include "app/cli/place_climate_options.h"
#include "app/words/season_words.h"
#include "core/climate/own_record.h"
#include "core/climate/record_check.h"
#include "core/geodesy/geodesic.h"

#include <algorithm>

namespace lathhouse::cli {
namespace {

const char* key_of(climate::DoubtKind kind)
{
    switch (kind) {
    case climate::DoubtKind::Impossible:
        return "impossible";
    case climate::DoubtKind::LowAboveHigh:
        return "low_above_high";
    case climate::DoubtKind::Nought:
        return "nought";
    case climate::DoubtKind::Stuck:
        return "stuck";
    case climate::DoubtKind::FarOff:
        return "far_off";
    }
    return "";
}

const char* words_of(climate::DoubtKind kind)
{
    switch (kind) {
    case climate::DoubtKind::Impossible:
        return "with a value never read on land (taken as a gap)";
    case climate::DoubtKind::LowAboveHigh:
        return "with the low above the high (taken as gaps)";
    case climate::DoubtKind::Nought:
        return "with low and high both 0 °C (taken as gaps)";
    case climate::DoubtKind::Stuck:
        return "in a run of twenty or more equal lows (kept)";
    case climate::DoubtKind::FarOff:
        return "six standard deviations from the month's mean (kept)";
    }
    return "";
}

const char* key_of(climate::Verdict verdict)
{
    switch (verdict) {
    case climate::Verdict::Plausible:
        return "plausible";
    case climate::Verdict::Doubtful:
        return "doubtful";
    case climate::Verdict::Implausible:
        return "implausible";
    }
    return "";
}

Json json_of(climate::DailyReading reading)
{
    return reading.known() ? json_number(reading.tenths() / 10.0) : Json(nullptr);
}

Json json_of(const climate::Doubt& doubt)
{
    return {{"kind", key_of(doubt.kind)},
            {"from", calendar::to_text(doubt.from)},
            {"to", calendar::to_text(doubt.to)},
            {"low_c", json_of(doubt.low)},
            {"high_c", json_of(doubt.high)}};
}

/// How many of the kind, and on which days the first three.
std::string doubts_in_words(const std::vector<climate::Doubt>& doubts)
{
    std::string text;
    for (const auto kind :
         {climate::DoubtKind::Impossible, climate::DoubtKind::LowAboveHigh, climate::DoubtKind::Nought,
          climate::DoubtKind::Stuck, climate::DoubtKind::FarOff}) {
        int days = 0;
        int shown = 0;
        std::string when;
        for (const auto& doubt : doubts) {
            if (doubt.kind == kind) {
                days += calendar::days_between(doubt.from, doubt.to) + 1;
                when += shown < 3    ? (shown > 0 ? ", " : "") + calendar::to_text(doubt.from)
                        : shown == 3 ? " and later"
                                     : "";
                ++shown;
            }
        }
        if (days > 0) {
            text += "Doubtful: " + counted(static_cast<std::size_t>(days), "day ", "days ") + words_of(kind) + ": " + when + ".\n";
        }
    }
    return text.empty() ? "No doubtful values.\n" : text;
}

std::string gaps_in_words(const climate::RecordSummary& summary)
{
    if (summary.gaps.empty()) {
        return "No gap of five days or more.\n";
    }
    const auto& longest = std::ranges::max(summary.gaps, {}, &climate::Gap::days);
    std::string text = counted(summary.gaps.size(), "gap", "gaps") +
                       " of five days or more, the longest " + calendar::to_text(longest.from) + " to " +
                       calendar::to_text(longest.to) + " (" + std::to_string(longest.days()) + " days).\n";
    if (!summary.years_without.empty()) {
        text += "Years without any low:";
        for (const int year : summary.years_without) {
            text += " " + std::to_string(year);
        }
        text += ".\n";
    }
    return text;
}

Json json_of(const climate::RecordSummary& summary)
{
    Json gaps = Json::array();
    for (const auto& gap : summary.gaps) {
        gaps.push_back(
            {{"from", calendar::to_text(gap.from)}, {"to", calendar::to_text(gap.to)}, {"days", gap.days()}});
    }
    return {{"first", calendar::to_text(summary.first)},
            {"last", calendar::to_text(summary.last)},
            {"days", summary.days},
            {"days_with_low", summary.days_with_low},
            {"days_with_high", summary.days_with_high},
            {"completeness", json_number(summary.completeness().fraction())},
            {"gaps", gaps},
            {"years_without", summary.years_without},
            {"seasons", summary.seasons},
            {"counted_seasons", summary.counted_seasons}};
}

template <class Value, class Number>
Json json_of(const std::optional<Value>& value, Number number)
{
    return value ? json_number(number(*value)) : Json(nullptr);
}

struct Compared {
    Json json;
    std::string text;
};

Compared compared(const climate::Comparison& comparison, const climate::PlaceClimate& table,
                  words::UnitSystem units)
{
    Json months = Json::array();
    std::string text = words::padded("", 11) + words::right_aligned("low", 10) +
                       words::right_aligned("table", 10) + words::right_aligned("apart", 10) +
                       words::right_aligned("high", 12) + words::right_aligned("table", 10) +
                       words::right_aligned("apart", 10) + "\n";
    const auto degrees = [](Celsius value) { return value.degrees(); };
    const auto kelvins = [](KelvinDelta value) { return value.kelvins(); };
    const auto said = [units](const std::optional<Celsius>& value) {
        return value ? words::temperature(*value, units) : std::string{"-"};
    };
    const auto apart = [units](const std::optional<KelvinDelta>& value) {
        return value ? words::temperature_difference(*value, units) : std::string{"-"};
    };
    for (std::size_t m = 0; m < 12; ++m) {
        const auto& month = comparison.months[m];
        months.push_back({{"month", m + 1},
                          {"low_c", json_of(month.low, degrees)},
                          {"table_low_c", json_number(table.monthly.low[m].degrees())},
                          {"low_difference_c", json_of(month.low_difference, kelvins)},
                          {"high_c", json_of(month.high, degrees)},
                          {"table_high_c", json_number(table.monthly.high[m].degrees())},
                          {"high_difference_c", json_of(month.high_difference, kelvins)}});
        text += words::padded(words::month_name(m), 11) + words::right_aligned(said(month.low), 10) +
                words::right_aligned(words::temperature(table.monthly.low[m], units), 10) +
                words::right_aligned(apart(month.low_difference), 10) +
                words::right_aligned(said(month.high), 12) +
                words::right_aligned(words::temperature(table.monthly.high[m], units), 10) +
                words::right_aligned(apart(month.high_difference), 10) + "\n";
    }
    switch (comparison.verdict) {
    case climate::Verdict::Plausible:
        text += "Plausible: every month lies as near to the shipped table as one may expect.\n";
        break;
    case climate::Verdict::Doubtful:
        text += "Doubtful: ";
        break;
    case climate::Verdict::Implausible:
        text += "Implausible: ";
        break;
    }
    std::string reasons;
    for (const auto& reason : comparison.reasons) {
        reasons += (reasons.empty() ? "" : "; ") + reason.text;
    }
    text += reasons + (reasons.empty() ? "" : ".\n");
    return {{{"verdict", key_of(comparison.verdict)},
             {"reasons", texts(comparison.reasons)},
             {"table_error_c", json_number(table.expected_error.kelvins())},
             {"months", months}},
            text};
}

/// A household without a record: what answers instead.
Result<RecordReport> report_without_record(const home::Household& household, words::UnitSystem units)
{
    const auto climate = climate_of(household);
    if (!climate) {
        return climate.error();
    }
    return RecordReport{
        {{{"record", nullptr}, {"used", false}, {"why_not", nullptr}, {"comparison", nullptr}},
         household.place.name + " has no record of its own; the shipped stations answer.\n" +
             sources_in_words(*climate, units) +
             "A record of daily lows and highs is taken in by: lathhouse place import FILE\n",
         texts(climate->warnings)},
        {}};
}

} // namespace

Result<RecordReport> report_of(const home::Household& household, words::UnitSystem units)
{
    if (!household.own_record) {
        return report_without_record(household, units);
    }
    const auto& record = *household.own_record;
    const auto checked = climate::check_record(record.days);
    const auto summary = climate::summary_of(checked.record);
    const auto shipped = stations();
    if (!shipped) {
        return shipped.error();
    }
    const auto table = climate::climate_at(**shipped, record.position, record.elevation);
    const auto away = geodesy::distance(household.place.position, record.position);

    Json json{{"name", record.name},
              {"station", record.days.station()},
              {"file", record.file},
              {"imported", calendar::to_text(record.imported)},
              {"latitude", json_number(record.position.latitude.degrees())},
              {"longitude", json_number(record.position.longitude.degrees())},
              {"elevation_m", json_number(record.elevation.metres())},
              {"distance_km", json_number(away.kilometres())}};
    std::string text = "Own record " + record.name + ", from " + record.file + ", imported " +
                       words::full_day(record.imported) + ".\nKept " + words::distance(away, units) +
                       " from the household's place, at " + words::height(record.elevation, units) + ".\n";
    if (summary) {
        json.update(json_of(*summary));
        text += "Lows of " + std::to_string(summary->days_with_low) + " days of " +
                std::to_string(summary->days) + " (" + words::number(summary->completeness().percent(), 0) +
                " %), " + calendar::to_text(summary->first) + " to " + calendar::to_text(summary->last) +
                "; " + std::to_string(summary->counted_seasons) + " of " +
                counted(static_cast<std::size_t>(summary->seasons), "cold season", "cold seasons") + " complete enough to count.\n" +
                gaps_in_words(*summary);
    }
    Json doubts = Json::array();
    for (const auto& doubt : checked.doubts) {
        doubts.push_back(json_of(doubt));
    }
    json["doubts"] = doubts;
    text += doubts_in_words(checked.doubts);

    RecordReport report{{{{"record", json}}, "", {}}, {}};
    Json comparison = nullptr;
    if (table) {
        const auto result = climate::compare_with_table(record.days, *table);
        auto said = compared(result, *table, units);
        comparison = std::move(said.json);
        text += said.text;
        if (result.verdict == climate::Verdict::Implausible) {
            report.implausible = result.reasons.front().text;
        }
    } else {
        text += "No shipped station is near enough to compare it with.\n";
    }
    const auto own =
        climate::climate_from_own(household.own_record, household.place.position, household.place.elevation);
    if (own) {
        text += "It answers for climate, frost, chance, night and moves at this place, before the shipped "
                "table: " +
                std::to_string(own->own->station.base.first_year) + "\u2013" +
                std::to_string(own->own->station.base.last_year) + ".\n";
    } else {
        text += "It is not used: " + own.error().message + ". The shipped table answers.\n";
    }
    report.answer.json["used"] = own.has_value();
    report.answer.json["why_not"] = own ? Json(nullptr) : Json(own.error().message);
    report.answer.json["comparison"] = std::move(comparison);
    report.answer.text = std::move(text);
    return report;
}

} // namespace lathhouse::cli
