#include "core/home/new_plant.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

const plants::PlantKind& kind(const char* name)
{
    return *plants::PlantReference::built_in().find(name).value();
}

Celsius degrees(double value)
{
    return Celsius::from_degrees(value);
}

TEST(MakePlant, TakesItsFiguresFromTheKind)
{
    const auto plant = make_plant(7, kind("Fuchsia"));
    ASSERT_TRUE(plant);
    EXPECT_EQ(plant->id, 7);
    EXPECT_EQ(plant->name, "Fuchsia");
    EXPECT_EQ(plant->kind, "Fuchsia hybrida");
    EXPECT_EQ(plant->lines, kind("Fuchsia").lines);
    EXPECT_FALSE(plant->spot);
}

TEST(MakePlant, PutsOwnFiguresBeforeTheKind)
{
    const auto plant = make_plant(1, kind("Fuchsia"), {.name = "Red one", .safe_night = degrees(6.0)});
    ASSERT_TRUE(plant);
    EXPECT_EQ(plant->name, "Red one");
    EXPECT_EQ(plant->lines.safe_night, degrees(6.0));
    EXPECT_EQ(plant->lines.damage_begins, kind("Fuchsia").lines.damage_begins);
}

TEST(MakePlant, MovesTheOtherLinesOutOfTheWay)
{
    const auto plant = make_plant(1, kind("Fuchsia"), {.damage_begins = degrees(8.0)});
    ASSERT_TRUE(plant);
    EXPECT_EQ(plant->lines.safe_night, degrees(8.0));
    EXPECT_EQ(plant->lines.lethal, kind("Fuchsia").lines.lethal);
}

TEST(MakePlant, ALethalLineAboveTheOthersLiftsThem)
{
    const auto plant = make_plant(1, kind("Fuchsia"), {.lethal = degrees(9.0)});
    ASSERT_TRUE(plant);
    EXPECT_EQ(plant->lines.lethal, degrees(9.0));
    EXPECT_EQ(plant->lines.damage_begins, degrees(9.0));
    EXPECT_EQ(plant->lines.safe_night, degrees(9.0));
}

TEST(MakePlant, RefusesLinesThatContradict)
{
    const auto plant =
        make_plant(1, kind("Fuchsia"), {.safe_night = degrees(2.0), .damage_begins = degrees(3.0)});
    ASSERT_FALSE(plant);
    EXPECT_EQ(plant.error().code, ErrorCode::OutOfRange);
}

TEST(MakePlant, RefusesAPotWithoutWeight)
{
    EXPECT_FALSE(make_plant(1, kind("Fuchsia"), {.pot_kilograms = 0.0}));
}

TEST(MakePlant, RefusesMoreLightToSurviveThanToThrive)
{
    EXPECT_FALSE(make_plant(1, kind("Fuchsia"), {.light_to_survive = DailyLight::from_moles(50.0)}));
}

TEST(MakePlant, CallsPoisonsHazardous)
{
    EXPECT_TRUE(make_plant(1, kind("Angel's trumpet"))->hazardous);
    EXPECT_TRUE(make_plant(1, kind("Easter lily"))->hazardous);
    EXPECT_FALSE(make_plant(1, kind("Spider plant"))->hazardous);
}

TEST(MakePlant, KnowsThatWeepingFigsSulk)
{
    EXPECT_TRUE(make_plant(1, kind("Weeping fig"))->sulks);
    EXPECT_FALSE(make_plant(1, kind("Rubber plant"))->sulks);
}

} // namespace
} // namespace lathhouse::home
