#include "core/growth/recovery.h"

#include "core/base/in_doubles.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>

#include <boost/math/distributions/students_t.hpp>

namespace lathhouse::growth {
namespace {

// A little is not taken for good news; nearly all counts as all.
constexpr double kLittle = 0.2;
constexpr double kNearlyAll = 0.8;
// Limits of the verdicts, set by simulation.
constexpr double kSureOfSizes = 0.998;
constexpr double kSureOfOthers = 0.99;
constexpr double kSupported = 0.80;
constexpr double kRecovered = 0.95;
constexpr double kNotBelowNearlyAll = 0.20;
constexpr double kStepSeen = 0.02;
constexpr double kLeastWithoutChange = 0.2;
constexpr double kHeld = 0.90;
constexpr double kWorse = 0.95;
constexpr double kWorseSupported = 0.80;
constexpr double kWorseAlone = 0.99;
constexpr double kHarmSeen = 0.95;
constexpr double kSmallRise = 0.5; // On the logit scale.
constexpr double kSureOfYellow = 0.99;
constexpr double kSlowingSeen = 0.05;
constexpr double kCeiling = 0.85; // Common practice, no source.

constexpr std::size_t kGapsSeen = 5;
constexpr int kMostAhead = 20;
constexpr std::size_t kLooksBack = 8;
constexpr double kWobble = 0.8; // Of a reading's spread, from one reading ahead to the next.

Judgement judge_yellow(const RecoveryModel& now, const std::optional<RecoveryModel>& before)
{
    const auto sure = [&](auto chance) {
        if (!(chance(now) >= kSureOfYellow)) {
            return std::optional<bool>{};
        }
        return std::optional{before && chance(*before) >= kSupported};
    };
    bool awaits = false;
    if (now.chance_of_harm() < kHarmSeen) {
        if (const auto small = sure([](const RecoveryModel& of) { return of.chance_rise_below(kSmallRise); })) {
            if (*small) {
                return {Verdict::NoSetback};
            }
            awaits = true;
        }
    }
    for (const auto& [share, verdict] :
         {std::pair{kNearlyAll, Verdict::Recovered}, std::pair{kLittle, Verdict::Recovering}}) {
        if (const auto gone = sure([&](const RecoveryModel& of) { return of.chance_regained_above(share); })) {
            if (*gone) {
                return {verdict};
            }
            awaits = true;
        }
    }
    if (now.chance_regained_above(-kLittle) - now.chance_regained_above(kLittle) >= kHeld) {
        return {Verdict::Holding};
    }
    return {Verdict::TooEarly, awaits ? TooEarlyWhy::AwaitsSupport : TooEarlyWhy::Undecided};
}

/// Whether growth bent down before the event, by the curvature of a parabola (one-sided t).
bool slows(SeriesKind kind, std::span<const ClockReading> readings)
{
    std::vector<FitRow> rows;
    for (const auto& reading : readings) {
        if (reading.weeks <= 0.0) {
            const double t = reading.weeks;
            rows.push_back({t, {1.0, t, t * t}, transformed(kind, reading.value), spread_ratio(kind, reading.value)});
        }
    }
    std::size_t times = 0;
    for (std::size_t at = 0; at < rows.size(); ++at) {
        times += at == 0 || rows[at].weeks > rows[at - 1].weeks ? 1 : 0;
    }
    if (kind == SeriesKind::Yellow || times < 5) {
        return false;
    }
    const auto fit = student_fit(rows, std::array<Prior, 3>{}, usual_spread(kind));
    const double t = fit.parameters[2] / std::sqrt(fit.covariance[2][2]);
    return boost::math::cdf(boost::math::students_t_distribution<double, InDoubles>{fit.freedom}, t) <= kSlowingSeen;
}

/// Clock times of dates of one series.
class SeriesTime {
public:
    SeriesTime(std::span<const SeriesReading> readings, calendar::Date event, const GrowthClock& clock,
               const SparedClock* spared)
        : clock_(clock), spared_(spared), event_(event)
    {
        const auto first = std::min(readings.front().date, event);
        const auto last = std::max(readings.back().date, event);
        const int days = calendar::days_between(first, last);
        scale_ = days > 0 ? clock.days_between(first, last) / days : 1.0;
    }
    bool stands() const { return !(scale_ > 0.0); }
    double weeks(calendar::Date date) const
    {
        // Equal on both sides where the clock is the calendar.
        const double base = clock_.days_between(event_, date) / (scale_ * kDaysOfWeek);
        return spared_ == nullptr ? base : spared_->weeks_of(base);
    }
    /// A day of the clock, of a rate a scaled week.
    double rate_a_day(double a_week) const { return a_week / (kDaysOfWeek * scale_); }
    /// Days of the clock in a calendar day, on average between two dates.
    double pace(calendar::Date from, calendar::Date to) const
    {
        const int days = calendar::days_between(from, to);
        return days > 0 ? (weeks(to) - weeks(from)) * kDaysOfWeek * scale_ / days : 1.0;
    }

private:
    const GrowthClock& clock_;
    const SparedClock* spared_;
    calendar::Date event_;
    double scale_ = 1.0;
};

/// Whether one of the last looks before the last reading, whose model is `before`, said declining.
bool declined(SeriesKind kind, std::span<const ClockReading> readings, const std::optional<RecoveryModel>& before)
{
    auto look = before;
    for (std::size_t back = 1; look && back <= kLooksBack && back + 1 < readings.size(); ++back) {
        auto earlier = RecoveryModel::of(kind, readings.first(readings.size() - back - 1));
        if (judge(kind, *look, earlier).verdict == Verdict::Declining) {
            return true;
        }
        look = std::move(earlier);
    }
    return false;
}

/// Median gap of the last five, in days; nullopt of a single reading.
std::optional<int> usual_gap(std::span<const SeriesReading> readings)
{
    std::vector<int> gaps;
    for (std::size_t at = readings.size(); at > 1 && gaps.size() < kGapsSeen; --at) {
        gaps.push_back(calendar::days_between(readings[at - 2].date, readings[at - 1].date));
    }
    if (gaps.empty()) {
        return std::nullopt;
    }
    std::ranges::sort(gaps);
    return gaps[gaps.size() / 2];
}

} // namespace

std::string_view to_string(Verdict verdict)
{
    switch (verdict) {
    case Verdict::NoSetback: return "no_setback";
    case Verdict::Recovered: return "recovered";
    case Verdict::Recovering: return "recovering";
    case Verdict::Holding: return "holding";
    case Verdict::Declining: return "declining";
    case Verdict::TooEarly: return "too_early";
    }
    return "";
}

std::string_view to_string(TooEarlyWhy why)
{
    switch (why) {
    case TooEarlyWhy::None: return "";
    case TooEarlyWhy::FewBefore: return "few_before";
    case TooEarlyWhy::FewAfter: return "few_after";
    case TooEarlyWhy::ClockStands: return "clock_stands";
    case TooEarlyWhy::NotGrowing: return "not_growing";
    case TooEarlyWhy::AwaitsSupport: return "awaits_support";
    case TooEarlyWhy::Undecided: return "undecided";
    }
    return "";
}

Judgement judge(SeriesKind kind, const RecoveryModel& now, const std::optional<RecoveryModel>& look_before)
{
    const double worse = now.chance_worsening();
    if (worse >= kWorse &&
        ((look_before && look_before->chance_worsening() >= kWorseSupported) || worse >= kWorseAlone)) {
        return {Verdict::Declining};
    }
    if (kind == SeriesKind::Yellow) {
        return judge_yellow(now, look_before);
    }
    if (!(now.rate_before() > 0.0)) {
        return {Verdict::TooEarly, TooEarlyWhy::NotGrowing};
    }
    const double sure = kind == SeriesKind::Size ? kSureOfSizes : kSureOfOthers;
    const double more_than_little = now.chance_regained_above(kLittle);
    if (more_than_little >= sure) {
        const bool supported = look_before && look_before->rate_before() > 0.0 &&
                               look_before->chance_regained_above(kLittle) >= kSupported;
        if (!supported) {
            return {Verdict::TooEarly, TooEarlyWhy::AwaitsSupport};
        }
        const double nearly_all = now.chance_regained_above(kNearlyAll);
        if (now.step_chance() > kStepSeen && nearly_all >= kNotBelowNearlyAll &&
            now.weight_without_change() >= kLeastWithoutChange) {
            return {Verdict::NoSetback};
        }
        return {nearly_all >= kRecovered ? Verdict::Recovered : Verdict::Recovering};
    }
    if (now.chance_regained_above(-kLittle) - more_than_little >= kHeld) {
        return {Verdict::Holding};
    }
    return {Verdict::TooEarly, TooEarlyWhy::Undecided};
}

Recovery recovery_of(SeriesKind kind, std::span<const SeriesReading> readings, calendar::Date event,
                     const GrowthClock& clock, const SparedClock* spared)
{
    Recovery recovery;
    for (const auto& reading : readings) {
        ++(reading.date <= event ? recovery.readings_before : recovery.readings_after);
    }
    if (recovery.readings_before < static_cast<int>(kLeastBefore)) {
        recovery.judgement.why = TooEarlyWhy::FewBefore;
        return recovery;
    }
    const int gap = usual_gap(readings).value_or(0);
    const SeriesTime time{readings, event, clock, spared};
    if (recovery.readings_after < static_cast<int>(kLeastAfter)) {
        // The fifth: the fourth is the first that is judged, and its good news waits for one more.
        const int missing = static_cast<int>(kLeastAfter) + 1 - recovery.readings_after;
        recovery.next_reading =
            std::max(readings.back().date, event) + calendar::Days{missing * std::max(gap, 1)};
        return recovery;
    }
    std::vector<ClockReading> on_clock;
    on_clock.reserve(readings.size() + kMostAhead);
    if (!time.stands()) {
        for (const auto& reading : readings) {
            // The clock may have stood since the event; what came after it still counts as after.
            const double weeks = time.weeks(reading.date);
            on_clock.push_back({reading.date > event ? std::max(weeks, 1e-9) : std::min(weeks, 0.0), reading.value});
        }
    }
    auto now = RecoveryModel::of(kind, on_clock);
    const bool stood = !now || !(on_clock.back().weeks > 1e-6);
    if (stood) {
        recovery.judgement.why = TooEarlyWhy::ClockStands;
        return recovery;
    }
    const auto look_before = RecoveryModel::of(kind, std::span{on_clock}.first(on_clock.size() - 1));
    recovery.judgement = judge(kind, *now, look_before);
    recovery.rate_before = kind == SeriesKind::Yellow ? 0.0 : time.rate_a_day(now->rate_before());
    recovery.rate_after = time.rate_a_day(now->rate_now());
    recovery.pace_before = time.pace(readings.front().date, event);
    recovery.pace_after = time.pace(event, readings.back().date);
    recovery.declined =
        recovery.judgement.why == TooEarlyWhy::Undecided && declined(kind, on_clock, look_before);
    recovery.step = now->step();
    recovery.standard_error = now->scale();
    recovery.slows_before = spared == nullptr && slows(kind, on_clock);
    recovery.near_ceiling = kind == SeriesKind::Share && readings.back().value >= kCeiling;
    if (recovery.judgement.why != TooEarlyWhy::NotGrowing) {
        const double tail = (1.0 - kIntervalLevel) / 2.0;
        recovery.share_regained = now->regained_at(0.5);
        recovery.share_low = now->regained_at(1.0 - tail);
        recovery.share_high = now->regained_at(tail);
    }
    if (recovery.judgement.verdict != Verdict::TooEarly) {
        return recovery;
    }

    const double level = now->level();
    const double rate = now->rate_now();
    const double usual = now->scale();
    const double since = on_clock.back().weeks;
    const auto add_reading = [&](int ahead) {
        const double weeks = std::max(time.weeks(readings.back().date + calendar::Days{ahead * std::max(gap, 1)}),
                                      on_clock.back().weeks);
        const double expected = level + rate * (weeks - since);
        const double ratio = spread_ratio(kind, back_transformed(kind, expected));
        const double wobble = (ahead % 2 == 1 ? kWobble : -kWobble) * usual * ratio;
        on_clock.push_back({weeks, back_transformed(kind, expected + wobble)});
    };
    const bool every = on_clock.size() <= kLongSeries;
    auto last = std::move(now);
    int last_at = 0;
    for (int ahead = 1; ahead <= kMostAhead; ++ahead) {
        add_reading(ahead);
        if (!every && !std::has_single_bit(static_cast<unsigned>(ahead)) && ahead != kMostAhead) {
            continue;
        }
        if (last_at != ahead - 1) {
            last = RecoveryModel::of(kind, std::span{on_clock}.first(on_clock.size() - 1));
        }
        auto next = RecoveryModel::of(kind, on_clock);
        if (judge(kind, *next, last).verdict != Verdict::TooEarly) {
            recovery.next_reading = readings.back().date + calendar::Days{ahead * std::max(gap, 1)};
            break;
        }
        last = std::move(next);
        last_at = ahead;
    }
    return recovery;
}

std::vector<FittedDay> fitted_course(SeriesKind kind, std::span<const SeriesReading> readings, calendar::Date event,
                                     const GrowthClock& clock, int step_days, const SparedClock* spared)
{
    constexpr double kStands = 0.05; // Of a usual day of the series.
    std::vector<FittedDay> course;
    if (readings.empty()) {
        return course;
    }
    const SeriesTime time{readings, event, clock, spared};
    if (time.stands()) {
        return course;
    }
    std::vector<ClockReading> on_clock;
    for (const auto& reading : readings) {
        const double weeks = time.weeks(reading.date);
        on_clock.push_back({reading.date > event ? std::max(weeks, 1e-9) : std::min(weeks, 0.0), reading.value});
    }
    const auto model = RecoveryModel::of(kind, on_clock);
    if (!model) {
        return course;
    }
    const auto add = [&](calendar::Date date) {
        double weeks = time.weeks(date);
        weeks = date > event ? std::max(weeks, 1e-9) : std::min(weeks, 0.0);
        const auto expected = model->expected_at(weeks, kIntervalLevel);
        const double counts = (time.weeks(date + calendar::Days{step_days}) - time.weeks(date)) * kDaysOfWeek / step_days;
        course.push_back({date, back_transformed(kind, expected.middle), back_transformed(kind, expected.low),
                          back_transformed(kind, expected.high),
                          date > event ? std::optional{back_transformed(kind, model->undisturbed_at(weeks))}
                                       : std::nullopt,
                          counts < kStands});
    };
    const auto last = readings.back().date;
    bool event_is_there = event < readings.front().date || event > last;
    for (auto date = readings.front().date; date < last; date += calendar::Days{step_days}) {
        if (!event_is_there && date >= event) {
            event_is_there = true;
            if (date > event) {
                add(event);
            }
        }
        add(date);
    }
    if (!event_is_there) {
        add(event);
    }
    if (course.empty() || course.back().date < last) {
        add(last);
    }
    return course;
}

} // namespace lathhouse::growth
