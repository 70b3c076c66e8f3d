#include "core/growth/growth_clock.h"

#include "core/growth/event_window.h"
#include "core/growth/recovery.h"
#include "core/growth/repeatability.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lathhouse::growth {
namespace {

const calendar::Date kEventOfClock{2026, 5, 1};

calendar::Date day(int days)
{
    return kEventOfClock + calendar::Days{days};
}

TEST(GrowthClock, OfTheCalendarCountsDays)
{
    EXPECT_EQ(GrowthClock::calendar().days_between(day(-3), day(4)), 7.0);
    EXPECT_EQ(GrowthClock::calendar().days_between(day(4), day(-3)), -7.0);
}

TEST(GrowthClock, AddsWhatEachDayCounts)
{
    const auto clock = GrowthClock::of_days(day(0), {0.5, 0.0, 1.0, 0.25});
    EXPECT_DOUBLE_EQ(clock.days_between(day(0), day(1)), 0.0);
    EXPECT_DOUBLE_EQ(clock.days_between(day(0), day(3)), 1.25);
    EXPECT_DOUBLE_EQ(clock.days_between(day(3), day(5)), 0.5) << "beyond the last day it goes on as it was";
    EXPECT_DOUBLE_EQ(clock.days_between(day(-2), day(0)), 1.0);
}

/// A plant of 8 readings before and some after, grown by a rate on the clock.
std::vector<SeriesReading> grown_on(const GrowthClock& clock, double before, double after, int last)
{
    std::vector<SeriesReading> readings;
    for (int week = -7; week <= last; ++week) {
        const auto date = day(7 * week);
        const double wobble = (week % 2 == 0 ? 0.006 : -0.006);
        const double time = clock.days_between(kEventOfClock, date);
        readings.push_back({date, 20.0 * std::exp(time * (time > 0.0 ? after : before) + wobble)});
    }
    return readings;
}

TEST(Recovery, OnItsClockAWinterIsNoRelapse)
{
    // Growth stops from the event on for 10 weeks of every plant, and goes on as before after that.
    std::vector<double> steps(400, 1.0);
    std::fill(steps.begin() + 101, steps.begin() + 171, 0.0);
    const auto clock = GrowthClock::of_days(day(-100), steps);
    const auto readings = grown_on(clock, 0.007, 0.007, 18);
    const auto on_clock = recovery_of(SeriesKind::Size, readings, kEventOfClock, clock);
    EXPECT_EQ(on_clock.judgement.verdict, Verdict::NoSetback) << to_string(on_clock.judgement.why);
    EXPECT_NEAR(*on_clock.rate_before, 0.007, 0.001);
    const auto in_winter = std::span{readings}.first(8 + 9);
    EXPECT_EQ(recovery_of(SeriesKind::Size, in_winter, kEventOfClock, GrowthClock::calendar()).judgement.verdict,
              Verdict::Holding);
    const auto standing = recovery_of(SeriesKind::Size, in_winter, kEventOfClock, clock);
    EXPECT_EQ(standing.judgement, (Judgement{Verdict::TooEarly, TooEarlyWhy::ClockStands}));
}

TEST(Recovery, RatesAreThoseOfADayOfTheClock)
{
    const auto half = GrowthClock::of_days(day(-100), std::vector<double>(400, 0.5));
    const auto readings = grown_on(half, 0.014, 0.014, 10);
    const auto slow = recovery_of(SeriesKind::Size, readings, kEventOfClock, half);
    const auto calendar = recovery_of(SeriesKind::Size, readings, kEventOfClock, GrowthClock::calendar());
    EXPECT_NEAR(*slow.rate_before, 2.0 * *calendar.rate_before, 1e-9);
    EXPECT_NEAR(*slow.share_regained, *calendar.share_regained, 1e-6) << "the clock's unit changes no verdict";
    EXPECT_NEAR(slow.pace_before, 0.5, 1e-9);
    EXPECT_NEAR(slow.pace_after, 0.5, 1e-9);
    EXPECT_NEAR(calendar.pace_after, 1.0, 1e-9);
}

TEST(Recovery, KnowsThatItDeclinedBefore)
{
    std::vector<SeriesReading> readings;
    for (int week = -8; week <= 14; ++week) {
        // It shrinks for six weeks, then grows again by a fifth of what it did.
        const double log = week <= 0 ? 0.05 * week : -0.06 * std::min(week, 6) + 0.01 * std::max(0, week - 6);
        readings.push_back({day(7 * week), 20.0 * std::exp(log + (week % 2 == 0 ? 0.004 : -0.004))});
    }
    bool declined = false;
    int undecided_after = 0;
    for (std::size_t count = 13; count <= readings.size(); ++count) {
        const auto of = recovery_of(SeriesKind::Size, std::span{readings}.first(count), kEventOfClock, GrowthClock::calendar());
        if (of.judgement.why == TooEarlyWhy::Undecided) {
            EXPECT_EQ(of.declined, declined) << count;
            undecided_after += declined ? 1 : 0;
        } else {
            EXPECT_FALSE(of.declined);
        }
        declined = declined || of.judgement.verdict == Verdict::Declining;
    }
    EXPECT_GT(undecided_after, 0);
}

TEST(Recovery, SaysWhatIsMissing)
{
    const auto readings = grown_on(GrowthClock::calendar(), 0.007, 0.007, 10);
    const auto few_after = recovery_of(SeriesKind::Size, std::span{readings}.first(10), kEventOfClock, GrowthClock::calendar());
    EXPECT_EQ(few_after.judgement, (Judgement{Verdict::TooEarly, TooEarlyWhy::FewAfter}));
    EXPECT_EQ(few_after.next_reading, day(35)) << "the fifth";
    const auto few_before =
        recovery_of(SeriesKind::Size, std::span{readings}.subspan(6), kEventOfClock, GrowthClock::calendar());
    EXPECT_EQ(few_before.judgement, (Judgement{Verdict::TooEarly, TooEarlyWhy::FewBefore}));
    EXPECT_FALSE(few_before.next_reading.has_value());
    EXPECT_EQ(recovery_of(SeriesKind::Size, {}, kEventOfClock, GrowthClock::calendar()).judgement.why,
              TooEarlyWhy::FewBefore);
    const auto standing = grown_on(GrowthClock::calendar(), -0.01, 0.007, 10);
    EXPECT_EQ(recovery_of(SeriesKind::Size, standing, kEventOfClock, GrowthClock::calendar()).judgement.why,
              TooEarlyWhy::NotGrowing);
}

TEST(Recovery, ForeseesTheReadingThatSettlesIt)
{
    const auto readings = grown_on(GrowthClock::calendar(), 0.007, 0.0065, 20);
    for (std::size_t count = 12; count < readings.size(); ++count) {
        const auto of = recovery_of(SeriesKind::Size, std::span{readings}.first(count), kEventOfClock, GrowthClock::calendar());
        if (of.judgement.verdict == Verdict::TooEarly) {
            ASSERT_TRUE(of.next_reading.has_value());
            EXPECT_GT(*of.next_reading, readings[count - 1].date);
            EXPECT_LE(*of.next_reading, readings[count - 1].date + calendar::Days{28});
        } else {
            EXPECT_FALSE(of.next_reading.has_value());
        }
    }
}

TEST(Recovery, ReadsYellowAsBetterWhenSmaller)
{
    std::vector<SeriesReading> back;
    std::vector<SeriesReading> rising;
    for (int week = -6; week <= 10; ++week) {
        const double wobble = week % 2 == 0 ? 0.003 : -0.003;
        back.push_back({day(7 * week), (week <= 0 ? 0.05 : 0.05 + 0.4 * std::exp(-0.6 * (week - 1))) + wobble});
        rising.push_back({day(7 * week), (week <= 0 ? 0.05 : std::min(0.9, 0.05 + 0.06 * week)) + wobble});
    }
    EXPECT_EQ(recovery_of(SeriesKind::Yellow, back, kEventOfClock, GrowthClock::calendar()).judgement.verdict,
              Verdict::Recovered);
    EXPECT_EQ(recovery_of(SeriesKind::Yellow, rising, kEventOfClock, GrowthClock::calendar()).judgement.verdict,
              Verdict::Declining);
}

TEST(Recovery, SeesAPlantThatSlowsByItself)
{
    std::vector<SeriesReading> readings;
    for (int week = -10; week <= 8; ++week) {
        readings.push_back({day(7 * week), 40.0 / (1.0 + std::exp(-(week + 9) / 3.0))});
    }
    EXPECT_TRUE(recovery_of(SeriesKind::Size, readings, kEventOfClock, GrowthClock::calendar()).slows_before);
    const auto straight = grown_on(GrowthClock::calendar(), 0.007, 0.007, 8);
    EXPECT_FALSE(recovery_of(SeriesKind::Size, straight, kEventOfClock, GrowthClock::calendar()).slows_before);
}

TEST(SparedClock, SlowsAsTheCompanionsDo)
{
    std::vector<std::vector<SeriesReading>> companions(2);
    std::vector<SeriesReading> readings;
    for (int week = -8; week <= 16; ++week) {
        const double time = week - 0.02 * week * week; // Weeks; the slope falls from 1 at the event to 0.36.
        companions[0].push_back({day(7 * week), 20.0 * std::exp(0.05 * time)});
        companions[1].push_back({day(7 * week), 11.0 * std::exp(0.05 * time)});
        readings.push_back({day(7 * week), 30.0 * std::exp(0.05 * time + (week % 2 == 0 ? 0.005 : -0.005))});
    }
    const auto spared = SparedClock::of(SeriesKind::Size, companions, kEventOfClock, GrowthClock::calendar());
    ASSERT_TRUE(spared.has_value());
    EXPECT_NEAR(spared->weeks_of(10.0), 8.0, 0.2);
    EXPECT_NEAR(spared->weeks_of(-5.0), -5.5, 0.2);
    // Far beyond what they showed it goes on evenly and slowly; the parabola itself would turn back.
    const double step = spared->weeks_of(201.0) - spared->weeks_of(200.0);
    EXPECT_GT(step, 0.0);
    EXPECT_LT(step, 0.36);
    EXPECT_NEAR(spared->weeks_of(101.0) - spared->weeks_of(100.0), step, 1e-9);
    const auto with = recovery_of(SeriesKind::Size, readings, kEventOfClock, GrowthClock::calendar(), &*spared);
    const auto alone = recovery_of(SeriesKind::Size, readings, kEventOfClock, GrowthClock::calendar());
    EXPECT_EQ(with.judgement.verdict, Verdict::NoSetback);
    EXPECT_GT(*with.share_regained, 0.8);
    EXPECT_LT(*alone.share_regained, 0.8);
}

TEST(Repeatability, PoolsWithinDates)
{
    // Two dates with two readings each: pooled variance ((0.02^2 + 0.04^2) / 2) / 2 of logarithms.
    const std::vector<Measured> measured{{day(0), std::exp(0.0)}, {day(0), std::exp(0.02)},
                                         {day(7), std::exp(1.0)}, {day(7), std::exp(1.04)},
                                         {day(9), 2.0}};
    const auto of = repeatability_of(SeriesKind::Size, measured);
    ASSERT_TRUE(of.has_value());
    EXPECT_EQ(of->freedom, 2);
    EXPECT_NEAR(of->standard_error, std::sqrt((0.0002 + 0.0008) / 2.0), 1e-12);
    EXPECT_TRUE(is_real_change(SeriesKind::Size, 1.0, std::exp(0.028), 0.01));
    EXPECT_FALSE(is_real_change(SeriesKind::Size, 1.0, std::exp(0.027), 0.01));
    EXPECT_FALSE(repeatability_of(SeriesKind::Size, std::span{measured}.last(1)).has_value());
}

TEST(EventWindow, TellsWhatIsTooCloseFromWhatIsFar)
{
    std::vector<SeriesReading> readings;
    for (int week = -10; week <= 10; ++week) {
        readings.push_back({day(7 * week), 20.0});
    }
    const std::vector<DatedEvent> others{{day(-60), "far before"}, {day(-8), "close before"}, {day(0), "that day"},
                                         {day(10), "close after"}, {day(40), "far after"}};
    const auto window = window_of(readings, kEventOfClock, others);
    ASSERT_EQ(window.also.size(), 3U);
    EXPECT_EQ(window.also.front().what, "close before");
    ASSERT_EQ(window.cut.size(), 2U);
    EXPECT_GT(window.readings.front().date, day(-60));
    EXPECT_LE(window.readings.back().date, day(40));
    EXPECT_EQ(window_of(readings, kEventOfClock, {}).readings.size(), readings.size());
}

} // namespace
} // namespace lathhouse::growth
