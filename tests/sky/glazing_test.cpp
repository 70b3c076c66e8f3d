#include "core/sky/glazing.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::sky {
namespace {

/// What reflection alone lets through: the panes' own absorption taken out again.
double unabsorbed(int panes, double degrees)
{
    const auto incidence = Angle::from_degrees(degrees);
    const double inside = std::asin(std::sin(incidence.radians()) / 1.526);
    return glass_transmittance(panes, incidence) / std::pow(0.97, panes / std::cos(inside));
}

TEST(GlassTransmittance, OfTwoCoversIsThatOfTheBook)
{
    // Duffie and Beckman, example 5.1.2: two covers of glass that does not absorb, 0.85 straight on and 0.76
    // at 60 degrees (quoted from memory; it follows from Fresnel's equations).
    EXPECT_NEAR(unabsorbed(2, 0.0), 0.85, 0.005);
    EXPECT_NEAR(unabsorbed(2, 60.0), 0.76, 0.005);
}
TEST(GlassTransmittance, OfOnePaneStraightOnIsNineTenths)
{
    EXPECT_NEAR(glass_transmittance(1, Angle::from_degrees(0.0)), 0.89, 0.005); // Clear float of 4 mm.
}
TEST(GlassTransmittance, OfAnOpeningIsAll)
{
    EXPECT_EQ(glass_transmittance(0, Angle::from_degrees(85.0)), 1.0);
}
TEST(GlassTransmittance, EndsAtGrazingLight)
{
    EXPECT_NEAR(glass_transmittance(1, Angle::from_degrees(90.0)), 0.0, 1e-12);
}
TEST(GlassTransmittance, FallsWithTheAngleAndWithEachPane)
{
    for (int panes = 1; panes <= 3; ++panes) {
        for (int degrees = 0; degrees < 90; degrees += 5) {
            const auto here = Angle::from_degrees(degrees);
            EXPECT_GT(glass_transmittance(panes, here) + 1e-9,
                      glass_transmittance(panes, here + Angle::from_degrees(5.0)));
            EXPECT_LT(glass_transmittance(panes + 1, here), glass_transmittance(panes, here));
        }
    }
}
TEST(GlassTransmittance, HasNoJumpWhereTheFormulaChanges)
{
    EXPECT_NEAR(glass_transmittance(1, Angle::from_radians(0.9e-6)),
                glass_transmittance(1, Angle::from_radians(1.1e-6)), 1e-9);
}

} // namespace
} // namespace lathhouse::sky
