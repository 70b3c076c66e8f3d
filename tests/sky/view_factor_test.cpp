#include "core/sky/view_factor.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace lathhouse::sky {
namespace {

SeenRectangle rectangle(double left, double right, double bottom, double top)
{
    return {Metres::from_metres(left), Metres::from_metres(right), Metres::from_metres(bottom),
            Metres::from_metres(top)};
}
constexpr Metres kOne = Metres::from_metres(1.0);
constexpr double kFar = 1e6;

/// The definition, cos cos / (pi r^2) summed over small pieces of the rectangle.
struct Summed {
    double facing = 0.0;
    double level = 0.0;
};
Summed summed(const SeenRectangle& seen, double distance)
{
    constexpr int kPieces = 600;
    Summed sum;
    const double wide = (seen.right - seen.left).metres() / kPieces;
    const double high = (seen.top - seen.bottom).metres() / kPieces;
    for (int i = 0; i < kPieces; ++i) {
        for (int j = 0; j < kPieces; ++j) {
            const double x = seen.left.metres() + (i + 0.5) * wide;
            const double z = seen.bottom.metres() + (j + 0.5) * high;
            const double square = x * x + z * z + distance * distance;
            const double piece = wide * high * distance / (std::numbers::pi * square * square);
            sum.facing += piece * distance;
            sum.level += piece * std::max(0.0, z);
        }
    }
    return sum;
}

TEST(ViewFactorFacing, IsTheHandbooksForASquareAsFarAsItIsWide)
{
    // Corner above the element, sides equal to the distance: sqrt(1/2) arctan(sqrt(1/2)) / pi = 0.1385, as
    // read off the charts of Hamilton and Morgan, NACA TN 2836 (1952).
    EXPECT_NEAR(view_factor_facing(rectangle(0.0, 1.0, 0.0, 1.0), kOne), 0.1385, 0.0001);
}
TEST(ViewFactorFacing, OfTheWholePlaneIsAll)
{
    EXPECT_NEAR(view_factor_facing(rectangle(-kFar, kFar, -kFar, kFar), kOne), 1.0, 1e-5);
}
TEST(ViewFactorFacing, OfAHalfPlaneIsHalf)
{
    EXPECT_NEAR(view_factor_facing(rectangle(-kFar, kFar, 0.0, kFar), kOne), 0.5, 1e-5);
}
TEST(ViewFactorFacing, OfASmallFarPieceIsItsAreaOverPiDistanceSquared)
{
    const double far = view_factor_facing(rectangle(-0.5, 0.5, -0.5, 0.5), Metres::from_metres(100.0));
    EXPECT_NEAR(far, 1.0 / (std::numbers::pi * 1e4), 2e-9); // 3e-5 of it: the piece is not quite small.
}
TEST(ViewFactorFacing, OfAnEndlessStripIsHalfTheSineOfItsHeight)
{
    EXPECT_NEAR(view_factor_facing(rectangle(-kFar, kFar, 0.0, 1.0), kOne), 0.5 * std::sqrt(0.5), 1e-6);
}
TEST(ViewFactorLevel, OfAHalfPlaneThatBeginsAtTheLeafIsHalf)
{
    EXPECT_NEAR(view_factor_level(rectangle(-kFar, kFar, 0.0, kFar), kOne), 0.5, 1e-5);
}
TEST(ViewFactorLevel, OfAnEndlessStripIsHalfOfOneLessTheCosine)
{
    EXPECT_NEAR(view_factor_level(rectangle(-kFar, kFar, 0.0, 1.0), kOne), 0.5 * (1.0 - std::sqrt(0.5)),
                1e-6);
}
TEST(ViewFactorLevel, DoesNotCountWhatLiesBelowTheLeaf)
{
    EXPECT_EQ(view_factor_level(rectangle(-1.0, 1.0, -2.0, -0.5), kOne), 0.0);
    EXPECT_DOUBLE_EQ(view_factor_level(rectangle(-1.0, 1.0, -2.0, 1.5), kOne),
                     view_factor_level(rectangle(-1.0, 1.0, 0.0, 1.5), kOne));
}
TEST(ViewFactor, OfNoWidthOrHeightIsNothing)
{
    EXPECT_EQ(view_factor_facing(rectangle(0.5, 0.5, 0.0, 1.0), kOne), 0.0);
    EXPECT_EQ(view_factor_level(rectangle(-1.0, 1.0, 1.0, 1.0), kOne), 0.0);
}
TEST(ViewFactor, OfPartsAddsUp)
{
    const auto whole = rectangle(-0.7, 1.1, 0.2, 1.6);
    const auto lower = rectangle(-0.7, 1.1, 0.2, 0.9);
    const auto upper = rectangle(-0.7, 1.1, 0.9, 1.6);
    EXPECT_NEAR(view_factor_level(whole, kOne),
                view_factor_level(lower, kOne) + view_factor_level(upper, kOne), 1e-15);
    EXPECT_NEAR(view_factor_facing(whole, kOne),
                view_factor_facing(lower, kOne) + view_factor_facing(upper, kOne), 1e-15);
}
TEST(ViewFactor, IsTheSumOfItsDefinition)
{
    for (const auto& seen :
         {rectangle(-0.6, 0.6, -0.2, 1.2), rectangle(0.3, 2.0, 0.4, 1.1), rectangle(-3.0, -1.0, -2.0, 2.5)}) {
        const auto sum = summed(seen, 0.8);
        EXPECT_NEAR(view_factor_facing(seen, Metres::from_metres(0.8)), sum.facing, 2e-6);
        EXPECT_NEAR(view_factor_level(seen, Metres::from_metres(0.8)), sum.level, 2e-5);
    }
}

} // namespace
} // namespace lathhouse::sky
