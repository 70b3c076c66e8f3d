#include "app/words/growth_verdict_words.h"

#include "app/words/words.h"

#include <cmath>

namespace lathhouse::words {
namespace {

using growth::Recovery;
using growth::SeriesKind;
using growth::TooEarlyWhy;
using growth::Verdict;

constexpr double kDaysOfWeek = 7.0;

std::string signed_number(double value, int decimals)
{
    const auto text = number(value, decimals);
    return std::round(value * std::pow(10.0, decimals)) > 0.0 ? "+" + text : text;
}

std::string plain_rate(SeriesKind kind, double a_day)
{
    const double percent = 100.0 * std::expm1(kDaysOfWeek * a_day);
    return number(percent, 1) + " % a week" +
           (kind == SeriesKind::Share || kind == SeriesKind::Yellow ? " in odds" : "");
}

std::string readings_of(const Recovery& recovery)
{
    return number(recovery.readings_before, 0) + " readings before the event and " +
           number(recovery.readings_after, 0) + " after it";
}

std::string interval(const Recovery& recovery)
{
    const auto end = [](const std::optional<double>& of) { return of ? number(*of, 2) : std::string{"open"}; };
    return "between " + end(recovery.share_low) + " and " + end(recovery.share_high) + " at 9 in 10";
}

std::string lead(SeriesKind kind, const Recovery& recovery)
{
    const bool yellow = kind == SeriesKind::Yellow;
    switch (recovery.judgement.verdict) {
    case Verdict::NoSetback:
        return yellow ? "No setback: the yellow share did not rise." : "No setback: it grows on as it did before.";
    case Verdict::Recovered:
        return yellow ? "Recovered: nearly all of the yellowing is gone."
                      : "Recovered: it grows nearly as fast as before.";
    case Verdict::Recovering:
        return yellow ? "Recovering: some of the yellowing is gone." : "Recovering: it grows again, how fast is not yet sure.";
    case Verdict::Holding:
        return yellow ? "Holding: the yellow share stays where it went."
                      : "Holding: it stands still or nearly so.";
    case Verdict::Declining:
        return yellow ? "Declining: the yellow share is rising." : "Declining: it gets smaller.";
    case Verdict::TooEarly: break;
    }
    switch (recovery.judgement.why) {
    case TooEarlyWhy::FewBefore:
        return "Too early, and later readings cannot help: without 3 readings before the event nobody knows how "
               "it grew.";
    case TooEarlyWhy::FewAfter: return "Too early: at least 4 readings after the event are needed.";
    case TooEarlyWhy::ClockStands:
        return "Too early: by warmth and light there was no time to grow, so standing still says nothing.";
    case TooEarlyWhy::NotGrowing: return "Too early: it did not grow before the event, so there is nothing to regain.";
    case TooEarlyWhy::AwaitsSupport:
        return "Too early by one reading: the last one looks good, and the next has to bear it out.";
    case TooEarlyWhy::Undecided:
    case TooEarlyWhy::None: break;
    }
    return "Too early: the readings fit more than one answer.";
}

} // namespace

std::string_view to_string(ClockKind clock)
{
    switch (clock) {
    case ClockKind::Calendar: return "calendar";
    case ClockKind::Place: return "place";
    case ClockKind::Plant: return "plant";
    case ClockKind::Spared: return "spared";
    }
    return "";
}

std::string growth_rate(SeriesKind kind, double a_day)
{
    return plain_rate(kind, a_day);
}

std::string growth_verdict(SeriesKind kind, const Recovery& recovery, ClockKind clock)
{
    std::string text = lead(kind, recovery) + "\n";
    if (recovery.rate_after) {
        if (kind == SeriesKind::Yellow) {
            text += "Yellow changes by " + plain_rate(kind, *recovery.rate_after) + " now";
            if (recovery.share_regained) {
                text += "; of what the event turned yellow " + number(*recovery.share_regained, 2) +
                        " is gone again, " + interval(recovery);
            }
        } else {
            text += "Growth was " + plain_rate(kind, *recovery.rate_before) + " before and is " +
                    plain_rate(kind, *recovery.rate_after) + " now";
            if (recovery.share_regained) {
                text += ", " + number(*recovery.share_regained, 2) + " of what it was, " + interval(recovery);
            }
        }
        text += clock == ClockKind::Calendar ? ".\n" : "; weeks are those of the growth clock.\n";
    }
    text += "By " + readings_of(recovery) + ".\n";
    if (recovery.next_reading) {
        text += "A reading on " + full_day(*recovery.next_reading) + " could settle it, at the earliest.\n";
    } else if (recovery.judgement.verdict == Verdict::TooEarly && recovery.rate_after) {
        text += "No date in sight settles it, if readings go on as they do.\n";
    }
    return text;
}

std::vector<std::string> growth_cautions(SeriesKind kind, const Recovery& recovery)
{
    std::vector<std::string> cautions;
    if (recovery.slows_before) {
        cautions.emplace_back("Growth was slowing before the event: the plant may be nearing its size, and would slow "
                              "on without any harm. Compare it with spared plants of its kind (--spared).");
    }
    if (recovery.near_ceiling) {
        cautions.emplace_back("The share is near its full: growth can hardly be seen in it any more. Measure a size as "
                              "well, or take a wider outline.");
    }
    if (recovery.judgement.verdict == Verdict::TooEarly && recovery.share_low && *recovery.share_low > 0.2 &&
        kind != SeriesKind::Yellow) {
        cautions.emplace_back("The interval lies above 0.2 and it is still too early: good news has a stricter limit, "
                              "since a look after every reading gives chance many tries.");
    }
    return cautions;
}

std::string_view comparison_is_no_experiment()
{
    return "A comparison at home is no experiment: nobody drew lots for which plant got what, and season, place and "
           "care changed as well. It can make one look again; it cannot prove a cause.";
}

std::string mean_difference(SeriesKind kind, const growth::MeanDifference& of, double level)
{
    const auto percent = [](double a_day) { return signed_number(100.0 * std::expm1(kDaysOfWeek * a_day), 1); };
    return percent(of.difference) + " % a week" +
           (kind == SeriesKind::Share || kind == SeriesKind::Yellow ? " in odds" : "") + " (between " +
           percent(of.low) + " and " + percent(of.high) + " at " + number(100.0 * level, 0) + " in 100)";
}

} // namespace lathhouse::words
