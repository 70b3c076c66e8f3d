#include "core/growth/trend.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lathhouse::growth {
namespace {

// Sen, JASA 63 (1968) 1379, his example; limits and both intercepts as SciPy's tests state them.
const std::vector<Point> kSen{{1, 9}, {2, 15}, {3, 19}, {4, 20}, {10, 45}, {12, 55}, {18, 78}};

TEST(TheilSen, IsThePublishedExample)
{
    const auto line = theil_sen(kSen, 0.93);
    ASSERT_TRUE(line.has_value());
    EXPECT_DOUBLE_EQ(line->slope, 4.0);
    EXPECT_NEAR(line->low, 3.71, 0.005);
    EXPECT_NEAR(line->high, 4.38, 0.006);
    EXPECT_DOUBLE_EQ(line->intercept, 4.0);
    EXPECT_DOUBLE_EQ(line->joint_intercept, 6.0);
}

TEST(TheilSen, IsNotTurnedByAWildPoint)
{
    auto points = kSen;
    points[4].y = 4500.0;
    EXPECT_NEAR(theil_sen(points)->slope, 4.0, 1.0);
}

TEST(TheilSen, NeedsTwoPlaces)
{
    EXPECT_FALSE(theil_sen(std::vector<Point>{{1, 2}, {1, 3}}).has_value());
    EXPECT_FALSE(theil_sen({}).has_value());
}

// Flow of the Nile 1871-1900 (data set of R); R 4.2.2, cor.test with continuity correction.
TEST(MannKendall, IsThatOfRForTheNile)
{
    const std::array<double, 30> nile{1120, 1160, 963,  1210, 1160, 1160, 813,  1230, 1370, 1140,
                                      995,  935,  1110, 994,  1020, 960,  1180, 799,  958,  1140,
                                      1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774,  840};
    const auto trend = mann_kendall(nile);
    ASSERT_TRUE(trend.has_value());
    EXPECT_EQ(trend->score, -31);
    EXPECT_NEAR(trend->variance, 3135.0, 0.5);
    EXPECT_NEAR(trend->z, -0.53580, 5e-6);
    EXPECT_NEAR(trend->two_sided, 0.59210, 5e-6);
    std::vector<Point> points;
    for (std::size_t at = 0; at < nile.size(); ++at) {
        points.push_back({static_cast<double>(at), nile[at]});
    }
    EXPECT_NEAR(theil_sen(points)->slope, -1.111111, 1e-6);
}

TEST(MannKendall, SeesNothingInWhatIsAllAlike)
{
    const auto trend = mann_kendall(std::array<double, 5>{3, 3, 3, 3, 3});
    EXPECT_EQ(trend->score, 0);
    EXPECT_EQ(trend->two_sided, 1.0);
    EXPECT_FALSE(mann_kendall(std::array<double, 2>{1, 2}).has_value());
}

// Figures of our own; fits by R 4.2.2 and its package segmented 1.6-2, and by trying every thousandth there.
TEST(SegmentedLine, IsThatOfR)
{
    const std::array<double, 20> y{1.1, 1.9, 3.2,  3.8,  5.1,  6.2,  6.8,  8.1,  8.9,  9.7,
                                   10.1, 10.6, 10.7, 11.1, 11.2, 11.4, 11.9, 11.9, 12.4, 12.5};
    std::vector<Point> points;
    for (std::size_t at = 0; at < y.size(); ++at) {
        points.push_back({static_cast<double>(at + 1), y[at]});
    }
    const auto line = segmented_line(points);
    ASSERT_TRUE(line.has_value());
    EXPECT_NEAR(line->break_x, 9.877089489, 1e-6);
    EXPECT_NEAR(line->break_error, 0.1886092699, 1e-6);
    EXPECT_NEAR(line->slope_before, 0.99, 1e-9);
    EXPECT_NEAR(line->slope_before_error, 0.019138099, 1e-8);
    EXPECT_NEAR(line->slope_after, 0.27090909, 1e-8);
    EXPECT_NEAR(line->slope_after_error, 0.014134423, 1e-8);
    EXPECT_NEAR(line->residual_squares, 0.3516161616, 1e-9);
}

TEST(SegmentedLine, FindsABreakThatStandsAtAReading)
{
    std::vector<Point> points;
    for (int x = 1; x <= 12; ++x) {
        points.push_back({static_cast<double>(x), x <= 7 ? 2.0 * x : 14.0 - (x - 7)});
    }
    const auto line = segmented_line(points);
    ASSERT_TRUE(line.has_value());
    EXPECT_NEAR(line->break_x, 7.0, 1e-9);
    EXPECT_NEAR(line->slope_after, -1.0, 1e-9);
    EXPECT_FALSE(segmented_line(std::span{points}.first(4)).has_value());
}

} // namespace
} // namespace lathhouse::growth
