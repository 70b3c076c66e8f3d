#include "core/growth/comparison.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lathhouse::growth {
namespace {

// Hours of sleep won, data set `sleep` of R; t.test of R 4.2.2.
constexpr std::array kFirst{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
constexpr std::array kSecond{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

TEST(WelchDifference, IsThatOfR)
{
    const auto of = welch_difference(kFirst, kSecond);
    ASSERT_TRUE(of.has_value());
    EXPECT_NEAR(of->t, -1.8608135, 1e-7);
    EXPECT_NEAR(of->freedom, 17.776474, 1e-6);
    EXPECT_NEAR(of->two_sided, 0.07939414, 1e-8);
    EXPECT_NEAR(of->low, -3.3654832307, 1e-9);
    EXPECT_NEAR(of->high, 0.2054832307, 1e-9);
    EXPECT_EQ(of->pairs_or_first, 10);
    EXPECT_EQ(of->second, 10);
}

TEST(PairedDifference, IsThatOfR)
{
    std::vector<double> differences;
    for (std::size_t at = 0; at < kFirst.size(); ++at) {
        differences.push_back(kFirst[at] - kSecond[at]);
    }
    const auto of = paired_difference(differences);
    ASSERT_TRUE(of.has_value());
    EXPECT_NEAR(of->t, -4.0621277, 1e-7);
    EXPECT_EQ(of->freedom, 9.0);
    EXPECT_NEAR(of->two_sided, 0.00283289, 1e-8);
    EXPECT_NEAR(of->low, -2.4598857633, 1e-9);
    EXPECT_NEAR(of->high, -0.7001142367, 1e-9);
    EXPECT_NEAR(of->difference, -1.58, 1e-12);
}

TEST(Differences, RefuseWhatSaysNothing)
{
    EXPECT_FALSE(paired_difference(std::array{1.0}).has_value());
    EXPECT_FALSE(paired_difference(std::array{1.0, 1.0, 1.0}).has_value());
    EXPECT_FALSE(welch_difference(kFirst, std::array{1.0}).has_value());
    EXPECT_FALSE(welch_difference(std::array{1.0, 1.0}, std::array{2.0, 2.0}).has_value());
}

TEST(RatesOfPlant, AreThoseBeforeAndAfter)
{
    const auto event = calendar::Date{2026, 5, 1};
    std::vector<SeriesReading> readings;
    for (int week = -3; week <= 4; ++week) {
        const double days = 7.0 * week;
        readings.push_back({event + calendar::Days{7 * week}, 20.0 * std::exp(days * (week <= 0 ? 0.008 : 0.003))});
    }
    const auto rates = rates_of(SeriesKind::Size, "any", readings, event, GrowthClock::calendar());
    EXPECT_NEAR(*rates.before, 0.008, 1e-12);
    EXPECT_NEAR(*rates.after, 0.003, 1e-12);
    EXPECT_NEAR(*rates.change(), -0.005, 1e-12);
    const auto few = rates_of(SeriesKind::Size, "any", std::span{readings}.first(6), event, GrowthClock::calendar());
    EXPECT_FALSE(few.after.has_value());
    EXPECT_FALSE(few.change().has_value());
}

} // namespace
} // namespace lathhouse::growth
