#include "core/sky/apparent_sun.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::sky {
namespace {

double centuries(double julian_day)
{
    return (julian_day - 2451545.0) / 36525.0;
}

// Reda and Andreas, NREL/TP-560-34302 (2008), worked example: 2003 October 17, 12:30:30 at UTC-7, TT - UT =
// 67 s.
constexpr double kSpaJulianDay = 2452930.312847;
ApparentSun spa_example()
{
    return apparent_sun(centuries(kSpaJulianDay + 67.0 / 86400.0));
}
// 1" in degrees: what the terms left out may amount to.
constexpr double kArcsecond = 1.0 / 3600.0;

TEST(ApparentSun, HeliocentricLongitudeIsThatOfTheSpaExample)
{
    EXPECT_NEAR(spa_example().heliocentric_longitude.degrees(), 24.0182616917, kArcsecond);
}
TEST(ApparentSun, DistanceIsThatOfTheSpaExample)
{
    EXPECT_NEAR(spa_example().distance_au, 0.9965422974, 5e-6);
}
TEST(ApparentSun, NutationIsThatOfTheSpaExample)
{
    EXPECT_NEAR(spa_example().nutation_in_longitude.degrees(), -0.00399840, 1e-5);
    EXPECT_NEAR(spa_example().nutation_in_obliquity.degrees(), 0.00166657, 1e-5);
    EXPECT_NEAR(spa_example().true_obliquity.degrees(), 23.440465, 2e-5);
}
TEST(ApparentSun, PlaceIsThatOfTheSpaExample)
{
    const auto sun = spa_example();
    EXPECT_NEAR(sun.apparent_longitude.degrees(), 204.0085519281, kArcsecond);
    // The report prints 202.22741; ERFA gives 202.227444 for the same moment.
    EXPECT_NEAR(sun.right_ascension.degrees(), 202.227444, kArcsecond);
    EXPECT_NEAR(sun.declination.degrees(), -9.31434, kArcsecond);
}
TEST(ApparentSun, PlaceIsThatOfErfaOnMeeusDay)
{
    // 1992 October 13.0 TD, the day of Meeus' example 25.a; the figures are ERFA's, since the book's own low
    // accuracy method is off by up to 9".
    const auto sun = apparent_sun(centuries(2448908.5));
    EXPECT_NEAR(sun.right_ascension.degrees(), 198.378136, kArcsecond);
    EXPECT_NEAR(sun.declination.degrees(), -7.783811, kArcsecond);
    EXPECT_NEAR(sun.distance_au, 0.9976085, 5e-6);
}
TEST(ApparentSun, NutationIsThatOfMeeusExample22a)
{
    const auto sun = apparent_sun(centuries(2446895.5)); // 1987 April 10, 0h TD.
    EXPECT_NEAR(sun.nutation_in_longitude.degrees() * 3600.0, -3.788, 0.02);
    EXPECT_NEAR(sun.nutation_in_obliquity.degrees() * 3600.0, 9.443, 0.02);
}
TEST(MeanSiderealTime, IsThatOfMeeusExample12a)
{
    EXPECT_NEAR(mean_sidereal_time(2446895.5 - 2451545.0).degrees(), 197.693195, 1e-6);
}
TEST(MeanSiderealTime, GivesTheSpaExamplesApparentTime)
{
    const auto sun = spa_example();
    const double apparent = mean_sidereal_time(kSpaJulianDay - 2451545.0).degrees() +
                            sun.nutation_in_longitude.degrees() * std::cos(sun.true_obliquity.radians());
    EXPECT_NEAR(apparent, 318.511910, 1e-4);
}

} // namespace
} // namespace lathhouse::sky
