#include "core/plan/roots.h"

#include "core/plan/growth_index.h"
#include "tests/plan/growing_sample.h"

#include <gtest/gtest.h>

namespace lathhouse::plan {
namespace {

using namespace sample;

double cold_line(double lethal, double litres)
{
    return root_cold_line(Celsius::from_degrees(lethal), Litres::from_litres(litres)).degrees();
}

// "One to two zones": a zone is 10 F, 5.56 K.
TEST(RootColdLine, IsOneToTwoZonesWarmerThanInTheGround)
{
    EXPECT_NEAR(cold_line(-29.0, 3.0), -29.0 + 11.11, 0.01);
    EXPECT_NEAR(cold_line(-29.0, 40.0), -29.0 + 5.56, 0.01);
    EXPECT_GT(cold_line(-29.0, 10.0), cold_line(-29.0, 15.0));
}

TEST(RootColdLine, IsNeverColderThanThePlantsOwn)
{
    for (const double lethal : {-30.0, -12.0, -5.0, -2.0, 0.0, 5.0}) {
        for (const double litres : {0.3, 5.0, 12.0, 60.0}) {
            EXPECT_GE(cold_line(lethal, litres), lethal);
        }
    }
    EXPECT_EQ(cold_line(5.0, 3.0), 5.0) << "a tender plant is dead before its roots are";
    EXPECT_EQ(cold_line(-10.0, 3.0), -4.0) << "a short night of -4 is borne by roots in pots";
}

home::SpotDay summer_day(double high, double moles)
{
    return {Celsius::from_degrees(high - 10), Celsius::from_degrees(high), DailyLight::from_moles(moles), 15.0,
            Millimetres::from_millimetres(0), Millimetres::from_millimetres(5), true};
}

// USDA: white pots are 4.4 to 6.7 K cooler at the wall.
TEST(HottestMix, IsCoolerInALightPotByWhatWasMeasured)
{
    const auto day = summer_day(30, 40);
    const auto small = Litres::from_litres(3);
    const auto dark = hottest_mix(day, home::PotShade::Dark, small);
    const auto light = hottest_mix(day, home::PotShade::Light, small);
    const auto unknown = hottest_mix(day, home::PotShade::Unknown, small);
    EXPECT_GE((dark - light).kelvins(), 4.4);
    EXPECT_LE((dark - light).kelvins(), 6.7);
    EXPECT_LT(light, unknown);
    EXPECT_LT(unknown, dark);
    EXPECT_GT(dark.degrees(), 40.0) << "black pots in full sun pass 38 C for hours (Horticulturae 6 (2020) 22)";
}

TEST(HottestMix, IsTheAirWithoutLight)
{
    EXPECT_NEAR(hottest_mix(summer_day(25, 0), home::PotShade::Dark, Litres::from_litres(3)).degrees(), 25.0, 1e-9);
}

TEST(HeatOnRoots, FollowsThePublishedLimits)
{
    EXPECT_EQ(heat_on_roots(Celsius::from_degrees(29)), HeatOnRoots::None);
    EXPECT_EQ(heat_on_roots(Celsius::from_degrees(34)), HeatOnRoots::Slows);
    EXPECT_EQ(heat_on_roots(Celsius::from_degrees(39.5)), HeatOnRoots::Stops);
    EXPECT_EQ(heat_on_roots(Celsius::from_degrees(41)), HeatOnRoots::Harms);
}

RootsOfPlant roots_of(const home::Household& home, const climate::PlaceClimate& climate)
{
    const home::SpotClimate spots{home, climate};
    return roots_of_year(home, climate, spots, {}, date(2027, 6, 1)).front();
}

TEST(RootsOfYear, WarnOfAPotThatStandsOutInAHardWinter)
{
    const auto out = roots_of(potted_household("Olea europaea", 48.0, kOpen), place(48.0, 4.0, 11.0));
    ASSERT_TRUE(out.cold);
    EXPECT_EQ(out.cold->spot, kOpen);
    EXPECT_LE(out.cold->usual_lowest, out.cold_line);
    EXPECT_FALSE(roots_of(potted_household("Olea europaea", 48.0, kSill), place(48.0, 4.0, 11.0)).cold);
    EXPECT_FALSE(roots_of(potted_household("Olea europaea", 38.0, kOpen), place(38.0, 14.0, 6.0)).cold) << "mild winters";
}

TEST(RootsOfYear, WarnOfADarkPotInTheSun)
{
    auto home = potted_household("Olea europaea", 35.0, kOpen);
    home.plants.front().pot_shade = home::PotShade::Dark;
    const auto hot = roots_of(home, place(35.0, 14.0, 9.0));
    ASSERT_TRUE(hot.heat);
    EXPECT_EQ(hot.heat->effect, HeatOnRoots::Harms);
    EXPECT_GE(hot.heat->worst, date(2027, 6, 1));
    EXPECT_FALSE(roots_of(potted_household("Olea europaea", 35.0, kSill), place(35.0, 14.0, 9.0)).heat);
}

TEST(WinterQuarters, AreNeverToBeWarmAndDim)
{
    const auto climate = place(48.0, 6.0, 10.0);
    const auto dim = roots_of(potted_household("Citrus limon", 48.0, kDim), climate);
    ASSERT_TRUE(dim.winter);
    EXPECT_EQ(dim.winter->quarters, WinterQuarters::WarmAndDim);
    EXPECT_TRUE(dim.winter->wants_cool);
    auto cool = potted_household("Citrus limon", 48.0, kDim);
    cool.spots.back().winter = Celsius::from_degrees(6.0);
    EXPECT_EQ(roots_of(cool, climate).winter->quarters, WinterQuarters::CoolAndDim);
}

TEST(WinterQuarters, LieInTheMiddleOfTheDarkSeason)
{
    const auto north = roots_of(potted_household("Citrus limon", 48.0, kDim), place(48.0, 6.0, 10.0));
    EXPECT_EQ(north.winter->middle.month(), 12);
    const auto south = roots_of(potted_household("Citrus limon", -48.0, kDim), place(-48.0, 6.0, 10.0));
    EXPECT_EQ(south.winter->middle.month(), 6);
    EXPECT_FALSE(roots_of(potted_household("Citrus limon", 1.0, kDim), place(1.0, 22.0, 0.5)).winter) << "no winter there";
}

} // namespace
} // namespace lathhouse::plan
