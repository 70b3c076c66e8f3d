#include "core/growth/recovery.h"

#include <gtest/gtest.h>

#include <vector>

namespace lathhouse::growth {
namespace {

const calendar::Date kHurt{2027, 5, 1};

/// The verdict on weekly shares of yellow, the last of `before` half a week before the event.
Judgement judged(const std::vector<double>& before, const std::vector<double>& after)
{
    std::vector<SeriesReading> readings;
    auto date = kHurt - calendar::Days{7 * static_cast<int>(before.size()) - 4};
    for (const auto* values : {&before, &after}) {
        for (const double value : *values) {
            readings.push_back({date, value});
            date = date + calendar::Days{7};
        }
    }
    return recovery_of(SeriesKind::Yellow, readings, kHurt, GrowthClock::calendar()).judgement;
}

const std::vector<double> kHealthy{0.050, 0.054, 0.047, 0.052, 0.049, 0.051, 0.053, 0.048};

TEST(YellowShare, ThatStaysAsItWasIsNoSetback)
{
    EXPECT_EQ(judged(kHealthy, {0.051, 0.048, 0.053, 0.050, 0.049, 0.052, 0.047, 0.051, 0.050, 0.052}).verdict, Verdict::NoSetback);
}

TEST(YellowShare, ThatJumpedAndStaysIsHolding)
{
    EXPECT_EQ(judged(kHealthy, {0.40, 0.41, 0.39, 0.40, 0.405, 0.395, 0.40, 0.41, 0.39, 0.40, 0.40, 0.395}).verdict, Verdict::Holding);
}

TEST(YellowShare, ThatFellBackIsRecovered)
{
    EXPECT_EQ(judged(kHealthy, {0.40, 0.33, 0.24, 0.16, 0.10, 0.07, 0.055, 0.05, 0.049, 0.051, 0.05, 0.048}).verdict, Verdict::Recovered);
}

TEST(YellowShare, ThatScattersAsItDidBeforeSaysNothingYet)
{
    const auto early = judged({0.05, 0.20, 0.03, 0.15, 0.04, 0.22, 0.05, 0.12}, {0.10, 0.04, 0.20, 0.06});
    EXPECT_EQ(early.verdict, Verdict::TooEarly);
    EXPECT_NE(early.why, TooEarlyWhy::None);
}

} // namespace
} // namespace lathhouse::growth
