#include "core/sky/daily_clearness.h"

#include "core/base/csv.h"
#include "core/sky/radiation.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lathhouse::sky {
namespace {

constexpr int kDaysTaken = 2000;

/// Mean over the days of a month, evenly by their share.
template <class Of>
double mean_over(const DailyClearness& days, Of of)
{
    double sum = 0.0;
    for (int day = 0; day < kDaysTaken; ++day) {
        sum += of(days.at(Probability::clamped((day + 0.5) / kDaysTaken))) / kDaysTaken;
    }
    return sum;
}

/// g by the fit to its exact value that Duffie and Beckman print (section 2.9; eqs. 2.9.4 to 2.9.6 of the
/// fifth edition).
double published_steepness(const DailyClearness& days)
{
    const double width = days.most() - days.least();
    const double x = width / (days.most() - days.mean());
    return -1.498 + (1.184 * x - 27.182 * std::exp(-1.5 * x)) / width;
}

class MeanClearness : public testing::TestWithParam<double> {};

TEST_P(MeanClearness, IsTheMeanOfTheDays)
{
    const DailyClearness days{GetParam()};
    EXPECT_NEAR(mean_over(days, [](double clearness) { return clearness; }), GetParam(), 1e-4);
}
TEST_P(MeanClearness, HasTheSteepnessOfThePublishedFit)
{
    const DailyClearness days{GetParam()};
    const double fit = published_steepness(days);
    EXPECT_NEAR(days.steepness(), fit, 0.2);
    // A day's share with that fit is met within 1 in 100.
    for (double k = 0.1; k < days.most(); k += 0.05) {
        const double share = (std::exp(fit * days.least()) - std::exp(fit * k)) /
                             (std::exp(fit * days.least()) - std::exp(fit * days.most()));
        EXPECT_NEAR(days.share_below(k).fraction(), share, 0.01) << k;
    }
}
TEST_P(MeanClearness, IsCountedBackFromItsShare)
{
    const DailyClearness days{GetParam()};
    for (const double share : {0.0, 0.05, 0.5, 0.95, 1.0}) {
        EXPECT_NEAR(days.share_below(days.at(Probability::clamped(share))).fraction(), share, 1e-9);
    }
}
TEST_P(MeanClearness, GivesTheMonthlyShareOfTheSkyThroughItsDays)
{
    // Erbs, Klein and Duffie's monthly curves, which are another fit of theirs, to monthly means.
    const double k = GetParam();
    const DailyClearness days{k};
    const double winter = 1.391 + k * (-3.560 + k * (4.189 - 2.137 * k));
    const double summer = 1.311 + k * (-3.022 + k * (3.427 - 1.821 * k));
    const auto through_days = [&](double sunset) {
        return mean_over(
                   days,
                   [&](double of) { return of * diffuse_share_of_day(of, Angle::from_degrees(sunset)); }) /
               k;
    };
    EXPECT_NEAR(through_days(70.0), winter, 0.045);
    EXPECT_NEAR(through_days(100.0), summer, 0.045);
}
INSTANTIATE_TEST_SUITE_P(FromDullToClear, MeanClearness, testing::Values(0.3, 0.4, 0.5, 0.6, 0.7));

TEST(DailyClearness, HasTheBrightestDaysOfDebrecenWithinATenthOnAverage)
{
    constexpr Latitude kDebrecen = Latitude::literal(47.5);
    constexpr std::array<int, 12> kBefore{0,   31,  60,  91,  121, 152,
                                          182, 213, 244, 274, 305, 335}; // A leap year.
    constexpr double kMegajoules = 0.01;                                 // Of a J per square centimetre.
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/sky/brightest_days.csv");
    ASSERT_TRUE(table);
    ASSERT_EQ(table->row_count(), 9U);
    double measured = 0.0;
    double told = 0.0;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto figure = [&](std::size_t column) { return **table->number(row, column); };
        const int before = kBefore[static_cast<std::size_t>(figure(0)) - 1];
        const int of_month = static_cast<int>(figure(1));
        double above = 0.0;
        for (int day = 1; day <= of_month; ++day) {
            above += extraterrestrial_radiation(kDebrecen, before + day).megajoules();
        }
        const DailyClearness days{kMegajoules * figure(2) / above};
        // The clearest of so many days, on average.
        double clearest = 0.0;
        for (int i = 0; i < kDaysTaken; ++i) {
            clearest +=
                days.at(Probability::clamped(std::pow((i + 0.5) / kDaysTaken, 1.0 / of_month))) / kDaysTaken;
        }
        const int brightest = before + static_cast<int>(figure(4));
        const double seen =
            kMegajoules * figure(3) / extraterrestrial_radiation(kDebrecen, brightest).megajoules();
        EXPECT_NEAR(clearest, seen, 0.12) << figure(0);
        told += clearest / 9.0;
        measured += seen / 9.0;
    }
    EXPECT_NEAR(told / measured, 1.06, 0.03); // 0.740 and 0.697: the clearest days are told 6 % too clear.
}

TEST(DailyClearness, HasNoSpreadWhereTheMeanHasNoRoom)
{
    for (const double mean : {0.0, 0.95, 1.0, 2.0}) {
        const DailyClearness days{mean};
        EXPECT_EQ(days.least(), days.most()) << mean;
        EXPECT_EQ(days.at(Probability::literal(0.05)), days.at(Probability::literal(0.95))) << mean;
    }
    EXPECT_EQ(DailyClearness{0.0}.at(Probability::literal(0.5)), 0.0);
}
TEST(DailyClearness, IsFlatWhereTheMeanLiesInTheMiddle)
{
    // Where the mean is the middle of least and most the share rises in a straight line; near it nothing
    // jumps.
    const DailyClearness days{0.3915};
    EXPECT_NEAR(days.at(Probability::literal(0.25)), days.least() + 0.25 * (days.most() - days.least()),
                0.005);
    double last = 0.0;
    for (double mean = 0.380; mean < 0.405; mean += 0.0005) {
        const double middle = DailyClearness{mean}.at(Probability::literal(0.5));
        EXPECT_GT(middle, last) << mean;
        EXPECT_NEAR(middle, mean, 0.01);
        last = middle;
    }
}
TEST(DailyClearness, OfADullMonthStillHasDarkerAndBrighterDays)
{
    const DailyClearness days{0.06};
    EXPECT_NEAR(days.least(), 0.03, 1e-12);
    EXPECT_NEAR(mean_over(days, [](double clearness) { return clearness; }), 0.06, 1e-3);
    EXPECT_LT(days.at(Probability::literal(0.05)), 0.06);
    EXPECT_GT(days.at(Probability::literal(0.95)), 0.06);
}
TEST(DiffuseShareOfDay, RunsFromAllToTheClearestDaysShare)
{
    // Erbs, Klein and Duffie (1982), the daily curves at their ends and at 0.5, by hand.
    const auto winter = Angle::from_degrees(75.0);
    const auto summer = Angle::from_degrees(100.0);
    EXPECT_EQ(diffuse_share_of_day(0.0, winter), 1.0);
    EXPECT_NEAR(diffuse_share_of_day(0.5, winter), 0.5688, 1e-3);
    EXPECT_NEAR(diffuse_share_of_day(0.5, summer), 0.6083, 1e-3);
    EXPECT_EQ(diffuse_share_of_day(0.8, winter), 0.143);
    EXPECT_EQ(diffuse_share_of_day(0.8, summer), 0.175);
    for (double k = 0.0; k < 1.0; k += 0.01) {
        EXPECT_LE(diffuse_share_of_day(k, summer), 1.0);
        EXPECT_GT(diffuse_share_of_day(k, winter), 0.0);
    }
}

} // namespace
} // namespace lathhouse::sky
