#include "app/words/growth_verdict_words.h"

#include "app/words/phrase.h"
#include "app/words/words.h"

#include <cmath>
#include <utility>

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
    return kind == SeriesKind::Share || kind == SeriesKind::Yellow ? phrase("%1 % a week in odds", number(percent, 1))
                                                                   : phrase("%1 % a week", number(percent, 1));
}

/// A loss of so much, without its sign.
std::string loss(SeriesKind kind, double a_day)
{
    const double percent = -100.0 * std::expm1(kDaysOfWeek * a_day);
    return kind == SeriesKind::Share ? phrase("%1 % a week in odds", number(percent, 1))
                                     : phrase("%1 % a week", number(percent, 1));
}

/// How it grew before and grows now: "It grew 4.0 % a week before and loses 2.3 % a week now".
std::string growth_then_and_now(SeriesKind kind, double before, double now)
{
    if (before >= 0.0) {
        return now >= 0.0 ? phrase("It grew %1 before and grows %2 now", plain_rate(kind, before), plain_rate(kind, now))
                          : phrase("It grew %1 before and loses %2 now", plain_rate(kind, before), loss(kind, now));
    }
    return now >= 0.0 ? phrase("It lost %1 before and grows %2 now", loss(kind, before), plain_rate(kind, now))
                      : phrase("It lost %1 before and loses %2 now", loss(kind, before), loss(kind, now));
}

/// So little that two decimals show it below nought: an end of the interval or a share of which nothing was regained, or of
/// which more was lost. The scale beside it has "none" there, too.
bool is_none(double share)
{
    return std::round(100.0 * share) < 0.0;
}

std::string share_words(double share)
{
    return is_none(share) ? phrase("none of it") : number(share, 2);
}

std::string interval(const Recovery& recovery)
{
    const auto& [low, high] = std::pair{recovery.share_low, recovery.share_high};
    const auto upper = high ? number(*high, 2) : phrase("open");
    if (low && is_none(*low)) {
        return high && is_none(*high) ? phrase("none at 9 in 10") : phrase("none to %1 at 9 in 10", upper);
    }
    return phrase("between %1 and %2 at 9 in 10", low ? number(*low, 2) : phrase("open"), upper);
}

std::string lead(SeriesKind kind, const Recovery& recovery)
{
    const bool yellow = kind == SeriesKind::Yellow;
    switch (recovery.judgement.verdict) {
    case Verdict::NoSetback:
        return yellow ? phrase("No setback: the yellow share did not rise.") : phrase("No setback: it grows on as it did before.");
    case Verdict::Recovered:
        return yellow ? phrase("Recovered: nearly all of the yellowing is gone.")
                      : phrase("Recovered: it grows about as fast as before.");
    case Verdict::Recovering:
        return yellow ? phrase("Recovering: some of the yellowing is gone.") : phrase("Recovering: it grows again, how fast is not yet sure.");
    case Verdict::Holding:
        return yellow ? phrase("Holding: the yellow share stays where it went.")
                      : phrase("Holding: it stands still or nearly so.");
    case Verdict::Declining:
        return yellow ? phrase("Declining: the yellow share is rising.") : phrase("Declining: it gets smaller.");
    case Verdict::TooEarly: break;
    }
    switch (recovery.judgement.why) {
    case TooEarlyWhy::FewBefore:
        return phrase("Cannot be judged by this measure: it has %1 of the 3 readings needed before the event, and later ones "
                      "cannot help.", number(recovery.readings_before, 0));
    case TooEarlyWhy::FewAfter:
        return phrase("Too early: it has %1 of the 4 readings that are needed after the event.",
                      number(recovery.readings_after, 0));
    case TooEarlyWhy::ClockStands:
        return phrase("Too early: by warmth and light there was no time to grow, so standing still says nothing.");
    case TooEarlyWhy::NotGrowing: return phrase("Too early: it did not grow before the event, so there is nothing to regain.");
    case TooEarlyWhy::AwaitsSupport:
        return phrase("Too early by one reading: the last one looks good, and the next has to bear it out.");
    case TooEarlyWhy::Undecided:
    case TooEarlyWhy::None: break;
    }
    if (recovery.declined) {
        return yellow ? phrase("Too early: the yellow share rose and seems to do so no longer; whether yellow goes again "
                               "cannot be said yet.")
                      : phrase("Too early: it got smaller and seems to do so no longer; whether it grows again cannot be "
                               "said yet.");
    }
    return phrase("Too early: the readings fit more than one answer.");
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

std::string growth_readings(const Recovery& recovery)
{
    return phrase("By %1 readings before the event and %2 after it.", number(recovery.readings_before, 0),
                  number(recovery.readings_after, 0));
}

std::string growth_verdict(SeriesKind kind, const Recovery& recovery, ClockKind clock)
{
    std::string text = lead(kind, recovery) + "\n";
    if (recovery.rate_after) {
        // A ruler and the chart know weeks of the calendar.
        const double now = *recovery.rate_after * recovery.pace_after;
        if (kind == SeriesKind::Yellow) {
            const auto rate = plain_rate(kind, now);
            text += recovery.share_regained
                        ? phrase("Yellow changes by %1 now; of what the event turned yellow %2 is gone again, %3.", rate,
                                 share_words(*recovery.share_regained), interval(recovery))
                        : phrase("Yellow changes by %1 now.", rate);
        } else {
            text += phrase("%1.", growth_then_and_now(kind, *recovery.rate_before * recovery.pace_before, now));
            if (recovery.share_regained && *recovery.rate_after >= 0.0) {
                const auto share = share_words(*recovery.share_regained);
                text += " " + (clock == ClockKind::Calendar
                                   ? phrase("That is %1 of what it was, %2.", share, interval(recovery))
                                   : phrase("By the growth clock, which takes warmth and light out, that is %1 of what it "
                                            "was, %2.", share, interval(recovery)));
            }
        }
        text += "\n";
    }
    text += growth_readings(recovery) + "\n";
    if (recovery.next_reading) {
        text += phrase("A reading on %1 could settle it, if it goes on as now.", full_day(*recovery.next_reading)) + "\n";
    } else if (recovery.judgement.verdict == Verdict::TooEarly && recovery.rate_after) {
        text += phrase("No date in sight settles it, if readings go on as they do.") + "\n";
    }
    return text;
}

std::vector<std::string> growth_cautions(SeriesKind kind, const Recovery& recovery)
{
    std::vector<std::string> cautions;
    if (recovery.slows_before) {
        cautions.push_back(phrase("Growth was slowing before the event: the plant may be nearing its size, and would slow "
                              "on without any harm. Compare it with spared plants of its kind (--spared)."));
    }
    if (recovery.near_ceiling) {
        cautions.push_back(phrase("The share is near its full: growth can hardly be seen in it any more. Measure a size as "
                              "well, or take a wider outline."));
    }
    if (recovery.judgement.verdict == Verdict::TooEarly && recovery.share_low && *recovery.share_low > 0.2 &&
        kind != SeriesKind::Yellow) {
        cautions.push_back(phrase("The interval lies above 0.2 and it is still too early: good news has a stricter limit, "
                              "since a look after every reading gives chance many tries."));
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
