#include "core/home/household_change.h"

#include "core/base/parse.h"
#include "core/home/demonstration.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

Household flat_in_march()
{
    return demonstration({.today = calendar::Date{2026, 3, 14}})->household;
}

/// A spot where nothing stands, as the household knows it then.
SpotId added_attic(Household& household)
{
    auto attic = household.spots.front();
    attic.id = 0;
    attic.name = "Attic";
    EXPECT_TRUE(make({.words = "Added", .spots = {attic}}, household));
    return household.spots.back().id;
}

TEST(HouseholdChange, NewThingsGetTheNextIds)
{
    auto household = flat_in_march();
    const auto before = household;
    auto spot = household.spots.front();
    spot.id = 0;
    spot.name = "Attic";
    auto plant = household.plants.front();
    plant.id = 0;
    plant.name = "Another fig";
    ASSERT_TRUE(make({.words = "Added", .spots = {spot}, .plants = {plant}}, household));
    EXPECT_EQ(household.spots.back().id, before.spots.back().id + 1);
    EXPECT_EQ(household.plants.back().id, before.plants.back().id + 1);
    EXPECT_EQ(household.plants.back().spot, plant.spot);
}

TEST(HouseholdChange, WhereAPlantStandsIsNotChangedByTheWay)
{
    auto household = flat_in_march();
    auto plant = household.plants.front();
    const auto stood = plant.spot;
    plant.name = "Old fig";
    plant.spot = std::nullopt;
    ASSERT_TRUE(make({.words = "Changed", .plants = {plant}}, household));
    EXPECT_EQ(household.plants.front().name, "Old fig");
    EXPECT_EQ(household.plants.front().spot, stood);
}

TEST(HouseholdChange, ANameThatIsTakenChangesNothing)
{
    auto household = flat_in_march();
    auto plant = household.plants.front();
    plant.name = household.plants.back().name;
    auto spot = household.spots.front();
    spot.name = "Attic";
    const auto made = make({.words = "Changed", .spots = {spot}, .plants = {plant}}, household);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(household.spots.front().name, "Attic");
}

TEST(HouseholdChange, ANameWithBlanksAtItsEndsIsTheSameName)
{
    auto household = flat_in_march();
    auto spot = household.spots.front();
    spot.id = 0;
    spot.name = " " + lower_case(spot.name) + " ";
    const auto made = make({.words = "Added", .spots = {spot}}, household);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::OutOfRange);
}

TEST(HouseholdChange, ASpotWhereAPlantIsPinnedForSomeNightsStays)
{
    auto household = flat_in_march();
    const auto id = added_attic(household);
    const calendar::Date night{2026, 3, 20};
    ASSERT_TRUE(make({.words = "Pinned", .pins = {{household.plants.front().id, id, night, night}}}, household));
    EXPECT_EQ(make({.words = "Removed", .spots_gone = {id}}, household).error().code, ErrorCode::OutOfRange);
    ASSERT_TRUE(make({.words = "Unpinned", .unpinned = {household.plants.front().id}}, household));
    EXPECT_TRUE(make({.words = "Removed", .spots_gone = {id}}, household));
}

TEST(HouseholdChange, ASpotWhereAPlantIsKeptStays)
{
    auto household = flat_in_march();
    const auto id = added_attic(household);
    household.plants.front().pinned_spot = id;
    const auto refused = make({.words = "Removed", .spots_gone = {id}}, household);
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().message.find("is kept at Attic"), std::string::npos) << refused.error().message;
}

TEST(HouseholdChange, ASpotWithAPlantStays)
{
    auto household = flat_in_march();
    const auto stood = household.plants.front().spot.value();
    EXPECT_EQ(make({.words = "Removed", .spots_gone = {stood}}, household).error().code, ErrorCode::OutOfRange);
    auto empty = household.spots.front();
    empty.id = 0;
    empty.name = "Attic";
    ASSERT_TRUE(make({.words = "Added", .spots = {empty}}, household));
    const auto count = household.spots.size();
    ASSERT_TRUE(make({.words = "Removed", .spots_gone = {household.spots.back().id}}, household));
    EXPECT_EQ(household.spots.size(), count - 1);
}

TEST(HouseholdChange, NothingGoesWithoutANameOrAZone)
{
    auto household = flat_in_march();
    const auto before = household.spots.size();
    auto spot = household.spots.front();
    spot.name = "  ";
    EXPECT_EQ(make({.words = "Changed", .spots = {spot}}, household).error().message, "a spot needs a name");
    auto plant = household.plants.front();
    plant.id = 0;
    plant.name = "";
    EXPECT_EQ(make({.words = "Added", .plants = {plant}}, household).error().message, "a plant needs a name");
    auto place = household.place;
    place.time_zone = " ";
    EXPECT_EQ(make({.words = "Moved house", .place = place}, household).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(household.spots.size(), before);
    place.time_zone = "Europe/Riga";
    ASSERT_TRUE(make({.words = "Moved house", .name = "New flat", .place = place}, household));
    EXPECT_EQ(household.place.time_zone, "Europe/Riga");
    EXPECT_EQ(household.name, "New flat");
}

TEST(HouseholdChange, APinIsOfTheHouseholdAndEndsAfterItBegins)
{
    auto household = flat_in_march();
    const auto plant = household.plants.front().id;
    const auto spot = household.spots.back().id;
    const calendar::Date day{2026, 3, 20};
    EXPECT_EQ(make({.words = "Pinned", .pins = {{.plant = 999, .spot = spot, .from = day, .to = day}}}, household).error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(make({.words = "Pinned", .pins = {{.plant = plant, .spot = 999, .from = day, .to = day}}}, household).error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(make({.words = "Pinned", .pins = {{.plant = plant, .spot = spot, .from = day, .to = day - calendar::Days{1}}}}, household)
                  .error()
                  .code,
              ErrorCode::OutOfRange);
    EXPECT_TRUE(household.pins.empty());
    ASSERT_TRUE(make({.words = "Pinned", .pins = {{.plant = plant, .spot = spot, .from = day, .to = day}}}, household));
    EXPECT_EQ(household.pins.size(), 1U);
    EXPECT_EQ(make({.words = "Unpinned", .unpinned = {999}}, household).error().code, ErrorCode::NotFound);
    ASSERT_TRUE(make({.words = "Unpinned", .unpinned = {plant}}, household));
    EXPECT_TRUE(household.pins.empty());
}

TEST(HouseholdChange, APinContradictsOneOfTheSamePlantElsewhereOnASharedNight)
{
    auto household = flat_in_march();
    const auto plant = household.plants.front().id;
    const auto here = household.spots.front().id;
    const auto there = household.spots.back().id;
    const calendar::Date first{2026, 12, 1};
    const calendar::Date last{2026, 12, 31};
    household.pins = {{plant, here, first, last}};
    EXPECT_EQ(contradicting(household, {plant, there, last, last + calendar::Days{9}}), &household.pins.front());
    EXPECT_EQ(contradicting(household, {plant, there, last + calendar::Days{1}, last + calendar::Days{9}}), nullptr);
    EXPECT_EQ(contradicting(household, {plant, there, first - calendar::Days{9}, first - calendar::Days{1}}), nullptr);
    EXPECT_EQ(contradicting(household, {plant, here, first, last}), nullptr);
    EXPECT_EQ(contradicting(household, {household.plants.back().id, there, first, last}), nullptr);
}

TEST(HouseholdChange, WhatIsNoLongerThereIsSaid)
{
    auto household = flat_in_march();
    auto plant = household.plants.front();
    plant.id = 999;
    plant.name = "Nobody";
    EXPECT_EQ(make({.words = "Changed", .plants = {plant}}, household).error().code, ErrorCode::NotFound);
    EXPECT_EQ(make({.words = "Removed", .spots_gone = {999}}, household).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace lathhouse::home
