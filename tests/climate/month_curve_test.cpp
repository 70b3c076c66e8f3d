#include "core/climate/month_curve.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::climate {
namespace {

constexpr Monthly<double> kLows{-8.1, -6.9, -2.4, 3.1, 8.8, 13.9, 16.5, 15.6, 11.2, 5.0, 0.1, -5.2};

TEST(MonthCurve, KeepsEachMonthsMean)
{
    const Monthly<double> means = means_of_months(curve_through_months(kLows));
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(means[m], kLows[m], 0.005) << "month " << m + 1;
    }
}

TEST(MonthCurve, AConstantYearStaysConstant)
{
    Monthly<double> same{};
    same.fill(7.25);
    for (const double day : curve_through_months(same)) {
        EXPECT_NEAR(day, 7.25, 1e-9);
    }
}

TEST(MonthCurve, IsSmoothAcrossNewYear)
{
    const DailyCurve curve = curve_through_months(kLows);
    const double across = curve[0] - curve[365];
    EXPECT_NEAR(across, (curve[1] - curve[0] + curve[365] - curve[364]) / 2.0, 0.01);
}

TEST(MonthCurve, VarianceOfAStraightSlope)
{
    DailyCurve line{};
    for (std::size_t d = 0; d < 366; ++d) {
        line[d] = 0.2 * static_cast<double>(d);
    }
    // Of n evenly spaced values the population variance is (n^2 - 1) / 12 steps squared.
    EXPECT_NEAR(variance_within_months(line)[0], 0.04 * (31.0 * 31.0 - 1.0) / 12.0, 1e-9);
    EXPECT_NEAR(variance_within_months(line)[1], 0.04 * (29.0 * 29.0 - 1.0) / 12.0, 1e-9);
}

TEST(MonthCurve, LinesMeetTheMiddles)
{
    const DailyCurve curve = lines_between_months(kLows);
    EXPECT_NEAR(curve[15], kLows[0], 1e-9); // 16 January ends and begins at the middle, day 15.5.
    EXPECT_NEAR((curve[44] + curve[45] + curve[46]) / 3.0, kLows[1], 0.2); // About 14 February.
}

} // namespace
} // namespace lathhouse::climate
