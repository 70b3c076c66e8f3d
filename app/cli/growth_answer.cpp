#include "app/cli/growth.h"
#include "app/cli/number_or_null.h"

#include <algorithm>
#include <sstream>

namespace lathhouse::cli {
namespace {

Json json_of(const std::vector<growth::DatedEvent>& events)
{
    Json list = Json::array();
    for (const auto& event : events) {
        list.push_back({{"date", calendar::to_text(event.date)},
                        {"what", event.what.empty() ? Json(nullptr) : Json(event.what)}});
    }
    return list;
}

std::string in_words(const std::vector<growth::DatedEvent>& events)
{
    std::string text;
    for (const auto& event : events) {
        text += (text.empty() ? "" : ", ") + (event.what.empty() ? "" : event.what + " ") +
                words::full_day(event.date);
    }
    return text;
}

/// Error of one measurement and what a single change must exceed.
struct SingleChange {
    double standard_error;
    bool from_repeats;
};

/// A change on the transformed scale, for people.
std::string change_in_words(growth::SeriesKind kind, double change)
{
    const auto percent = words::number(100.0 * std::expm1(change), 1) + " %";
    return kind == growth::SeriesKind::Share || kind == growth::SeriesKind::Yellow ? percent + " in odds" : percent;
}

/// Days of the clock in a calendar day, on average: a ruler knows weeks of the calendar.
double pace_of(const growth::GrowthClock& clock, calendar::Date from, calendar::Date to)
{
    const int days = calendar::days_between(from, to);
    return days > 0 ? clock.days_between(from, to) / days : 1.0;
}

} // namespace

Answer answer_of(const GrowthQuestion& question)
{
    const auto all = growth::readings_of(question.measured);
    const auto window = growth::window_of(all, question.event, question.others);
    const auto* spared = question.spared ? &*question.spared : nullptr;
    const auto recovery =
        growth::recovery_of(question.kind, window.readings, question.event, question.clock, spared);

    std::optional<SingleChange> single;
    if (const auto repeats = growth::repeatability_of(question.kind, question.measured)) {
        single = SingleChange{repeats->standard_error, true};
    } else if (recovery.standard_error) {
        single = SingleChange{*recovery.standard_error, false};
    }

    Json json{{"verdict", growth::to_string(recovery.judgement.verdict)},
              {"rate_before", number_or_null(recovery.rate_before)},
              {"rate_after", number_or_null(recovery.rate_after)},
              {"share_regained", number_or_null(recovery.share_regained)},
              {"interval", {number_or_null(recovery.share_low), number_or_null(recovery.share_high)}},
              {"level", growth::kIntervalLevel},
              {"next_reading", json_date(recovery.next_reading)},
              {"why", recovery.judgement.why == growth::TooEarlyWhy::None
                          ? Json(nullptr)
                          : Json(growth::to_string(recovery.judgement.why))},
              {"kind", growth::to_string(question.kind)},
              {"event", calendar::to_text(question.event)},
              {"event_what", question.event_word.empty() ? Json(nullptr) : Json(question.event_word)},
              {"readings_before", recovery.readings_before},
              {"readings_after", recovery.readings_after},
              {"step", number_or_null(recovery.step)},
              {"slows_before", recovery.slows_before},
              {"near_ceiling", recovery.near_ceiling},
              {"clock", words::to_string(question.clock_kind)},
              {"also", json_of(window.also)},
              {"left_out_beyond", json_of(window.cut)}};

    std::ostringstream text;
    text << question.title << ", " << (question.event_word.empty() ? "event" : question.event_word) << " on "
         << words::full_day(question.event) << '\n'
         << words::growth_verdict(question.kind, recovery, question.clock_kind);
    if (single) {
        const double limit = growth::kRealChange * single->standard_error;
        Json repeatability{{"standard_error", json_number(single->standard_error)},
                           {"from", single->from_repeats ? "repeats" : "fit"},
                           {"real_change", json_number(limit)},
                           {"last_change_is_real", nullptr}};
        text << "One reading is right to about " << change_in_words(question.kind, single->standard_error)
             << (single->from_repeats ? " (by its repeats)" : " (by the fit)")
             << "; between two readings only more than " << change_in_words(question.kind, limit)
             << " is a real change";
        if (all.size() >= 2) {
            const auto& last = all.back();
            const auto& earlier = all[all.size() - 2];
            const bool real =
                growth::is_real_change(question.kind, earlier.value, last.value, single->standard_error);
            repeatability["last_change_is_real"] = real;
            text << ", which the last one " << (real ? "is" : "is not");
        }
        text << ".\n";
        json["repeatability"] = std::move(repeatability);
    } else {
        json["repeatability"] = nullptr;
    }
    std::vector<std::string> cautions = words::growth_cautions(question.kind, recovery);
    if (!window.also.empty()) {
        cautions.push_back("Other things happened too close to tell apart (" + in_words(window.also) +
                           "): what any one of them did cannot be judged; the verdict is on the plant after all of "
                           "them.");
    }
    if (!window.cut.empty()) {
        cautions.push_back("Readings beyond another event were left out (" + in_words(window.cut) +
                           "); ask about it with --event.");
    }
    json["cautions"] = cautions;
    for (const auto& caution : cautions) {
        text << caution << '\n';
    }
    return {std::move(json), text.str(), {}};
}

Result<Answer> compare_plants(growth::SeriesKind kind, calendar::Date event,
                              const std::vector<ComparedSeries>& plants, const growth::GrowthClock& clock,
                              words::ClockKind clock_kind)
{
    constexpr double kLevel = 0.95;
    std::vector<std::string> groups;
    std::vector<std::vector<double>> changes;
    Json rows = Json::array();
    std::ostringstream text;
    const std::string by =
        clock_kind == words::ClockKind::Calendar ? "" : ", by the growth clock, which takes warmth and light out";
    text << "Growth before and after " << words::full_day(event) << '\n';
    for (const auto& plant : plants) {
        const auto rates = growth::rates_of(kind, plant.plant, plant.readings, event, clock);
        auto group = std::ranges::find(groups, plant.group);
        if (group == groups.end()) {
            groups.push_back(plant.group);
            changes.emplace_back();
            group = groups.end() - 1;
        }
        if (groups.size() > 2) {
            return Error{ErrorCode::WrongUsage, "there are more than two groups (\"" + groups[0] + "\", \"" +
                                                    groups[1] + "\", \"" + groups[2] +
                                                    "\"); compare two at a time"};
        }
        const auto change = rates.change();
        if (change) {
            changes[static_cast<std::size_t>(group - groups.begin())].push_back(*change);
        }
        rows.push_back({{"plant", plant.plant},
                        {"group", plant.group.empty() ? Json(nullptr) : Json(plant.group)},
                        {"readings_before", rates.readings_before},
                        {"readings_after", rates.readings_after},
                        {"rate_before", number_or_null(rates.before)},
                        {"rate_after", number_or_null(rates.after)},
                        {"change", number_or_null(change)}});
        text << "  " << words::padded(plant.plant, 24) << words::padded(plant.group, 10);
        if (change) {
            const double before = *rates.before * pace_of(clock, plant.readings.front().date, event);
            const double after = *rates.after * pace_of(clock, event, plant.readings.back().date);
            text << words::growth_rate(kind, before) << " before, " << words::growth_rate(kind, after) << " after\n";
        } else {
            text << "left out: it needs 3 readings before and 3 after, has " << rates.readings_before << " and "
                 << rates.readings_after << '\n';
        }
    }
    const auto json_of_difference = [&](const growth::MeanDifference& of) -> Json {
        return {{"plants", of.second == 0 ? Json(of.pairs_or_first) : Json{of.pairs_or_first, of.second}},
                {"difference", json_number(of.difference)},
                {"interval", {json_number(of.low), json_number(of.high)}},
                {"t", json_number(of.t)},
                {"degrees_of_freedom", json_number(of.freedom)},
                {"chance_if_none", json_number(of.two_sided)}};
    };
    const auto say = [&](const growth::MeanDifference& of) {
        text << words::mean_difference(kind, of, kLevel)
             << (of.low > 0.0 || of.high < 0.0 ? ".\n" : "; that may be nothing but chance.\n");
    };
    Json paired = Json::array();
    for (std::size_t at = 0; at < groups.size(); ++at) {
        const auto difference = growth::paired_difference(changes[at], kLevel);
        const std::string name = groups[at].empty() ? "" : groups[at] + ": ";
        if (!difference) {
            text << name << difference.error().message << ".\n";
            continue;
        }
        auto entry = json_of_difference(*difference);
        entry["group"] = groups[at].empty() ? Json(nullptr) : Json(groups[at]);
        paired.push_back(std::move(entry));
        text << name << difference->pairs_or_first << " plants, each against itself" << by << ": growth changed by ";
        say(*difference);
    }
    Json between = nullptr;
    if (groups.size() == 2) {
        const auto difference = growth::welch_difference(changes[0], changes[1], kLevel);
        if (difference) {
            between = json_of_difference(*difference);
            between["groups"] = groups;
            text << groups[0] << " less " << groups[1] << by << ": growth changed by ";
            say(*difference);
        } else {
            text << "The groups cannot be compared: " << difference.error().message << ".\n";
        }
    }
    text << words::comparison_is_no_experiment() << '\n';
    return Answer{{{"event", calendar::to_text(event)},
                   {"kind", growth::to_string(kind)},
                   {"clock", words::to_string(clock_kind)},
                   {"plants", std::move(rows)},
                   {"paired", std::move(paired)},
                   {"between_groups", std::move(between)},
                   {"level", kLevel},
                   {"statement", words::comparison_is_no_experiment()}},
                  text.str(),
                  {}};
}

} // namespace lathhouse::cli
