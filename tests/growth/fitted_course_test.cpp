#include "core/growth/recovery.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lathhouse::growth {
namespace {

const calendar::Date kEvent{2026, 4, 1};

/// 5 % a week up to the event, then the given share of it.
std::vector<SeriesReading> weekly(double share)
{
    std::vector<SeriesReading> readings;
    for (int week = -8; week <= 10; ++week) {
        const double rate = week <= 0 ? 0.05 : 0.05 * share;
        readings.push_back({kEvent + calendar::Days{7 * week}, 20.0 * std::exp(rate * week)});
    }
    return readings;
}

const FittedDay& day(const std::vector<FittedDay>& course, calendar::Date date)
{
    return *std::ranges::find(course, date, &FittedDay::date);
}

TEST(FittedCourse, FollowsReadingsWithoutError)
{
    for (const double share : {1.0, 0.5, 0.0}) {
        const auto readings = weekly(share);
        const auto course = fitted_course(SeriesKind::Size, readings, kEvent, GrowthClock::calendar(), 7);
        ASSERT_EQ(course.size(), readings.size());
        for (std::size_t at = 0; at < course.size(); ++at) {
            EXPECT_EQ(course[at].date, readings[at].date);
            // The priors pull a little towards growth regained in part: 1 % of size.
            EXPECT_NEAR(course[at].middle / readings[at].value, 1.0, 0.01) << share << " " << at;
            EXPECT_LE(course[at].low, course[at].middle);
            EXPECT_GE(course[at].high, course[at].middle);
        }
    }
}

TEST(FittedCourse, UndisturbedIsTheGrowthBeforeCarriedOn)
{
    const auto course = fitted_course(SeriesKind::Size, weekly(0.0), kEvent, GrowthClock::calendar(), 7);
    EXPECT_FALSE(day(course, kEvent).undisturbed);
    const auto& last = course.back();
    ASSERT_TRUE(last.undisturbed);
    EXPECT_NEAR(*last.undisturbed / (20.0 * std::exp(0.5)), 1.0, 0.02);
    EXPECT_GT(*last.undisturbed, last.high);
}

TEST(FittedCourse, HasTheEventAndTheLastReadingAmongItsDays)
{
    const auto readings = weekly(0.5);
    const auto course = fitted_course(SeriesKind::Size, readings, kEvent, GrowthClock::calendar(), 3);
    EXPECT_NE(std::ranges::find(course, kEvent, &FittedDay::date), course.end());
    EXPECT_EQ(course.front().date, readings.front().date);
    EXPECT_EQ(course.back().date, readings.back().date);
    EXPECT_TRUE(std::ranges::is_sorted(course, {}, &FittedDay::date));
    EXPECT_EQ(std::ranges::adjacent_find(course, {}, &FittedDay::date), course.end());
}

TEST(FittedCourse, SaysWhereTheClockStands)
{
    const auto readings = weekly(0.5);
    std::vector<double> steps;
    const auto from = readings.front().date;
    for (int at = 0; at <= 200; ++at) {
        steps.push_back(at >= 70 && at < 98 ? 0.0 : 1.0); // Two to six weeks after the event.
    }
    const auto course = fitted_course(SeriesKind::Size, readings, kEvent, GrowthClock::of_days(from, steps), 7);
    EXPECT_FALSE(day(course, kEvent).clock_stands);
    EXPECT_TRUE(day(course, kEvent + calendar::Days{21}).clock_stands);
    EXPECT_FALSE(course.back().clock_stands);
}

TEST(FittedCourse, IsEmptyWithoutEnoughReadings)
{
    const auto readings = weekly(1.0);
    EXPECT_TRUE(fitted_course(SeriesKind::Size, {}, kEvent, GrowthClock::calendar(), 7).empty());
    EXPECT_TRUE(fitted_course(SeriesKind::Size, std::span{readings}.first(5), kEvent, GrowthClock::calendar(), 7).empty());
}

TEST(FittedCourse, HoldsAnEventWithinTheLastStepOnce)
{
    const auto readings = weekly(1.0);
    const auto event = readings.back().date - calendar::Days{21};
    const auto course = fitted_course(SeriesKind::Size, readings, event, GrowthClock::calendar(), 50);
    EXPECT_EQ(std::ranges::count(course, event, &FittedDay::date), 1);
    ASSERT_FALSE(course.empty());
    EXPECT_EQ(course.back().date, readings.back().date);
}

} // namespace
} // namespace lathhouse::growth
