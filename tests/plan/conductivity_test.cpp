#include "core/plan/conductivity.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::plan {
namespace {

// Standards that meters are set with, at 25 C: 0.01 mol/L of potassium chloride has 1.413 mS/cm, 0.001 mol/L has
// 0.147, 0.1 mol/L has 12.88.
TEST(Conductivity, AgreesWithTheStandardsOfMeters)
{
    const auto of = [](double millimoles) {
        return conductivity(Ions{.potassium = millimoles, .chloride = millimoles});
    };
    EXPECT_NEAR(of(1.0), 0.147, 0.001);
    EXPECT_NEAR(of(10.0), 1.413, 0.01 * 1.413);
    EXPECT_NEAR(of(100.0), 12.88, 0.08 * 12.88) << "far above what a feed holds";
    EXPECT_EQ(conductivity({}), 0.0);
}

struct Published {
    double nitrogen_ppm;
    double millisiemens;
};

// Michigan State University Extension, table of a label: a feed of 20 % nitrogen (6.75 ounces in 100 gallons give
// 100 ppm) has 0.32, 0.64 and 1.28 mS/cm at 50, 100 and 200 ppm.
TEST(Conductivity, OfACommonFeedIsThatOfAPublishedLabel)
{
    for (const auto& row : {Published{50, 0.32}, Published{100, 0.64}, Published{200, 1.28}}) {
        for (const char* label : {"20-10-20", "20-2-20", "20-20-20"}) {
            const auto hint = conductivity_of(*read_feed_label(label), row.nitrogen_ppm);
            EXPECT_NEAR(hint.usual, row.millisiemens, 0.1 * row.millisiemens) << label;
            EXPECT_LT(hint.least, row.millisiemens) << label;
            EXPECT_GT(hint.highest, row.millisiemens) << label;
        }
    }
}

TEST(Conductivity, OfAFeedWithLittleNitrogenIsMadeOfItsOtherSalts)
{
    const auto hint = conductivity_of(*read_feed_label("1-20-20"), 20.0);
    EXPECT_GT(hint.least, 0.3);
    EXPECT_NEAR(hint.least, hint.highest, 1e-12) << "no nitrogen is left to differ by";
    const auto potash = conductivity_of(*read_feed_label("2-0-50"), 50.0);
    EXPECT_TRUE(std::isfinite(potash.usual));
    EXPECT_GT(potash.usual, 2.0);
}

TEST(Conductivity, NeverFallsAsTheFeedGetsStronger)
{
    const auto label = *read_feed_label("15-5-15");
    double before = 0.0;
    for (double ppm = 10.0; ppm <= 400.0; ppm += 10.0) {
        const double now = conductivity_of(label, ppm).usual;
        EXPECT_GT(now, before);
        before = now;
    }
}

} // namespace
} // namespace lathhouse::plan
