#include "core/home/new_spot.h"

#include "core/home/shelter.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

/// Radiation of a continental town, MJ, from January.
YearOfSky year_at(Latitude latitude)
{
    auto months = climate::in_every_month(DailyRadiation::from_megajoules(0.0));
    const double figures[]{3.7, 6.4, 10.7, 15.6, 19.5, 21.0, 21.2, 18.5, 13.0, 8.0, 4.2, 3.0};
    const bool north = latitude.degrees() >= 0.0;
    for (std::size_t m = 0; m < months.size(); ++m) {
        months[m] = DailyRadiation::from_megajoules(figures[north ? m : (m + 6) % 12]);
    }
    return YearOfSky(latitude, months);
}

SpotWish south_sill()
{
    return {.name = " South sill ", .kind = SpotKind::Indoors, .facing = Angle::from_degrees(180.0), .capacity = 5};
}

TEST(NewSpot, HoldsAThousandPotsAtMost)
{
    EXPECT_TRUE(pots_can_fit("Porch", 0));
    EXPECT_TRUE(pots_can_fit("Porch", kMostPots));
    for (const int pots : {-1, kMostPots + 1}) {
        const auto refused = pots_can_fit("Porch", pots);
        ASSERT_FALSE(refused) << pots;
        EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    }
}

TEST(NewSpot, HasTheLightOfItsUsualViewInTheMonthsOfTheSolstices)
{
    const auto year = year_at(Latitude::literal(48.2));
    const auto spot = make_spot(3, 7, south_sill(), year);
    ASSERT_TRUE(spot);
    EXPECT_EQ(spot->name, "South sill");
    EXPECT_EQ(spot->walking_order, 7);
    ASSERT_TRUE(spot->view);
    const auto months = months_at(*spot->view, year);
    EXPECT_DOUBLE_EQ(spot->light_in_summer.moles(), months[5].level.moles());
    EXPECT_DOUBLE_EQ(spot->light_in_winter.moles(), months[11].level.moles());
    EXPECT_GT(spot->light_in_summer.moles(), spot->light_in_winter.moles());
}

TEST(NewSpot, InTheSouthTheSummerIsDecember)
{
    const auto year = year_at(Latitude::literal(-33.9));
    auto wish = south_sill();
    wish.facing = Angle::from_degrees(0.0);
    const auto spot = make_spot(1, 1, wish, year);
    ASSERT_TRUE(spot);
    EXPECT_DOUBLE_EQ(spot->light_in_summer.moles(), months_at(*spot->view, year)[11].level.moles());
}

TEST(NewSpot, ARoomHasTheUsualNightsUnlessSaid)
{
    const auto year = year_at(Latitude::literal(48.2));
    auto wish = south_sill();
    const auto usual = make_spot(1, 1, wish, year);
    ASSERT_TRUE(usual);
    EXPECT_EQ(usual->winter, kUsualRoomInWinter);
    wish.winter = Celsius::from_degrees(7.0);
    EXPECT_EQ(make_spot(1, 1, wish, year)->winter, Celsius::from_degrees(7.0));
    wish.kind = SpotKind::Roofed;
    const auto outdoors = make_spot(1, 1, wish, year);
    EXPECT_FALSE(outdoors->winter);
    EXPECT_EQ(outdoors->offset.mean, prior_offset(SpotKind::Roofed).mean);
}

TEST(NewSpot, WhatCannotBeIsSaid)
{
    const auto year = year_at(Latitude::literal(48.2));
    auto wish = south_sill();
    wish.name = "  ";
    EXPECT_EQ(make_spot(1, 1, wish, year).error().code, ErrorCode::OutOfRange);
    wish = south_sill();
    wish.capacity = -1;
    EXPECT_EQ(make_spot(1, 1, wish, year).error().code, ErrorCode::OutOfRange);
    wish = south_sill();
    wish.winter = Celsius::from_degrees(99.0);
    EXPECT_EQ(make_spot(1, 1, wish, year).error().code, ErrorCode::OutOfRange);
    wish = south_sill();
    wish.measured = usual_view(SpotKind::Indoors, std::nullopt);
    wish.measured->panes = 9;
    EXPECT_EQ(make_spot(1, 1, wish, year).error().code, ErrorCode::OutOfRange);
}

TEST(NewSpot, WhatIsKnownOfLightAndNightsCountsInsteadOfTheWindow)
{
    const auto year = year_at(Latitude::literal(48.2));
    auto wish = south_sill();
    wish.kind = SpotKind::Roofed;
    wish.offset = climate::NightOffset{KelvinDelta::from_kelvins(2.5), KelvinDelta::from_kelvins(0.5)};
    wish.light_in_summer = DailyLight::from_moles(18.0);
    EXPECT_TRUE(make_spot(1, 1, wish, year)->view); // One of the two says nothing.
    wish.light_in_winter = DailyLight::from_moles(3.5);
    const auto spot = make_spot(1, 1, wish, year);
    ASSERT_TRUE(spot);
    EXPECT_FALSE(spot->view);
    EXPECT_EQ(spot->light_in_summer, *wish.light_in_summer);
    EXPECT_EQ(spot->light_in_winter, *wish.light_in_winter);
    EXPECT_EQ(spot->offset, *wish.offset);
}

} // namespace
} // namespace lathhouse::home
