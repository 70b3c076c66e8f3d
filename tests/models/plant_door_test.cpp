#include "app/models/gone_in_memory.h"
#include "app/models/mend_door.h"
#include "app/models/plant_door.h"
#include "core/journal/household_store.h"
#include "tests/models/page_fixtures.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <span>

namespace lathhouse::models {
namespace {

const calendar::Instant kEntered = calendar::start_of_day_utc(kShownToday);

home::Event watered(home::PlantId plant)
{
    return {plant, home::EventKind::Watered, std::nullopt, kShownToday, kEntered, "from below"};
}

home::Measurement height(home::PlantId plant, double centimetres)
{
    return {.plant = plant,
            .kind = home::MeasurementKind::Height,
            .measured = kShownToday,
            .repeats = {centimetres},
            .method = home::MeasurementMethod::Ruler,
            .entered = kEntered};
}

std::vector<home::Measurement> measured(const PlantDoor& door, home::PlantId plant)
{
    return *door.load()->archive->measurements(plant);
}

class PlantsInFolder : public testing::Test {
protected:
    PlantsInFolder()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_plants_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder = std::filesystem::path{pattern} / "home";
        EXPECT_TRUE(journal::HouseholdStore::create(folder, plain_facts().as_told, plain_facts().events));
        first = plain_facts().as_told.plants[0].id;
        second = plain_facts().as_told.plants[1].id;
        door = plants_in_folder(folder, []() -> Result<plan::HouseholdFacts> { return plain_facts(); });
    }
    ~PlantsInFolder() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder.parent_path(), failure);
    }
    journal::HouseholdStore store() const { return *journal::HouseholdStore::open(folder); }
    std::size_t events() const { return store().events()->size(); }

    std::filesystem::path folder;
    home::PlantId first = 0;
    home::PlantId second = 0;
    PlantDoor door;
};

TEST_F(PlantsInFolder, WhatIsLoggedForTwoIsTakenBackForBoth)
{
    const auto before = events();
    const PlantEntries entries{{watered(first), watered(second)}, {}};
    ASSERT_TRUE(door.record(entries));
    EXPECT_EQ(events(), before + 2);
    ASSERT_TRUE(door.take_back(entries, kEntered));
    EXPECT_EQ(events(), before);
    ASSERT_TRUE(door.bring_back(entries, kEntered));
    EXPECT_EQ(events(), before + 2);
}

TEST_F(PlantsInFolder, WhatDiedOrWasGivenAwayIsCountedAmongTheGone)
{
    EXPECT_TRUE(door.load()->gone.empty());
    const PlantEntries entries{{{first, home::EventKind::Died, {}, kShownToday, kEntered, ""},
                                {second, home::EventKind::GivenAway, {}, kShownToday, kEntered, ""}},
                               {}};
    ASSERT_TRUE(door.record(entries));
    EXPECT_EQ(door.load()->gone.size(), 2U);
    EXPECT_EQ(store().load()->plant(first), nullptr);
    ASSERT_TRUE(door.take_back(entries, kEntered));
    EXPECT_TRUE(door.load()->gone.empty());
    EXPECT_NE(store().load()->plant(first), nullptr);
}

TEST_F(PlantsInFolder, MeasurementIsReadTakenBackAndBroughtBack)
{
    const PlantEntries entries{{}, {height(first, 27.3)}};
    ASSERT_TRUE(door.record(entries));
    ASSERT_EQ(measured(door, first).size(), 1U);
    EXPECT_DOUBLE_EQ(measured(door, first).front().value(), 27.3);
    EXPECT_TRUE(measured(door, second).empty());
    ASSERT_TRUE(door.take_back(entries, kEntered));
    EXPECT_TRUE(measured(door, first).empty());
    ASSERT_TRUE(door.bring_back(entries, kEntered));
    EXPECT_EQ(measured(door, first).size(), 1U);
}

TEST_F(PlantsInFolder, NothingIsTakenBackWhereAnotherWroteSince)
{
    const PlantEntries entries{{watered(first), watered(second)}, {}};
    ASSERT_TRUE(door.record(entries));
    auto other = store();
    const home::Event note{first, home::EventKind::Noted, {}, kShownToday, kEntered, "by another program"};
    ASSERT_TRUE(other.record(std::span{&note, 1}));
    const auto before = events();
    const auto done = door.take_back(entries, kEntered);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, something_else_came().code);
    EXPECT_EQ(events(), before);
}

TEST_F(PlantsInFolder, NothingIsTakenBackWhereAnotherWroteInBetween)
{
    ASSERT_TRUE(door.record({{watered(first)}, {}}));
    ASSERT_TRUE(door.record({{watered(second)}, {}}));
    const auto before = events();
    // It takes the second for its own, then finds that the one before is none of these.
    const PlantEntries never_written{{watered(second), watered(second)}, {}};
    EXPECT_FALSE(door.take_back(never_written, kEntered));
    EXPECT_EQ(events(), before);
}

TEST_F(PlantsInFolder, UnknownPlantWritesNothing)
{
    const auto before = events();
    EXPECT_FALSE(door.record({{watered(first), watered(9999)}, {}}));
    EXPECT_EQ(events(), before);
}

TEST_F(PlantsInFolder, ADivisionMakesItsPiecesAndIsTakenBackWhole)
{
    const PlantEntries entries{
        {{first, home::EventKind::Divided, {}, kShownToday, kEntered, "", {{"into", "Left half, Right half"}}}}, {}};
    ASSERT_TRUE(door.record(entries));
    const auto home = *store().load();
    ASSERT_NE(home.plant_called("Left half"), nullptr);
    EXPECT_EQ(home.plant_called("Right half")->spot, home.plant(first)->spot);
    const auto descents = door.load()->descents;
    ASSERT_EQ(descents.size(), 2U);
    EXPECT_EQ(descents.front().parent, first);
    EXPECT_FALSE(door.record(entries)) << "the names are taken";
    ASSERT_TRUE(door.take_back(entries, kEntered));
    EXPECT_EQ(store().load()->plant_called("Left half"), nullptr);
    ASSERT_TRUE(door.bring_back(entries, kEntered));
    EXPECT_NE(store().load()->plant_called("Left half"), nullptr);
}

TEST(PlantsInMemory, ThePiecesOfADivisionTakeNoNumberOfAPlantThatIsGone)
{
    auto facts = plain_facts();
    const auto last = std::ranges::max(facts.as_told.plants, {}, &home::Plant::id).id;
    const auto parent = facts.as_told.plants.front().id;
    ASSERT_TRUE(happen_in_memory(facts, {last, home::EventKind::Died, {}, kShownToday, kEntered, ""}));
    ASSERT_TRUE(happen_in_memory(facts, {parent, home::EventKind::Divided, {}, kShownToday, kEntered, "", {{"into", "Left half"}}}));
    EXPECT_GT(facts.as_told.plant_called("Left half")->id, last);
}

TEST(PlantsInMemory, FollowTheHouseholdOfTheOtherPages)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    const auto door = plants_in_memory(household, {});
    const auto plant = plain_facts().as_told.plants[0].id;
    const auto spot = plain_facts().as_told.spots.back().id;
    const PlantEntries move{{{plant, home::EventKind::Moved, spot, kShownToday, kEntered, ""}}, {}};
    ASSERT_TRUE(door.record(move));
    EXPECT_EQ(household->facts().as_told.plant(plant)->spot, spot);
    ASSERT_TRUE(door.take_back(move, kEntered));
    EXPECT_EQ(household->facts().as_told.plant(plant)->spot, plain_facts().as_told.plant(plant)->spot);
    ASSERT_TRUE(door.bring_back(move, kEntered));
    EXPECT_EQ(household->facts().as_told.plant(plant)->spot, spot);
}

TEST(PlantsInMemory, NameOfOneThatDiedIsTakenAsInAFolder)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    const auto door = plants_in_memory(household, {});
    const auto mend = mend_in_memory(household, {});
    EXPECT_TRUE(mend.gone_names()->empty());
    const auto plant = plain_facts().as_told.plants[0];
    ASSERT_TRUE(door.record({{{plant.id, home::EventKind::Died, {}, kShownToday, kEntered, ""}}, {}}));
    EXPECT_EQ(*mend.gone_names(), std::vector{plant.name});
    ASSERT_EQ(door.load()->gone.size(), 1U);
    EXPECT_EQ(door.load()->gone.front().plant.name, plant.name);
}

TEST(PlantsInMemory, MeasurementsAreTakenBackWithTheirChange)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    const auto plant = plain_facts().as_told.plants[0].id;
    const auto door = plants_in_memory(household, {height(plant, 20.0)});
    const PlantEntries entries{{}, {height(plant, 21.0)}};
    ASSERT_TRUE(door.record(entries));
    EXPECT_EQ(measured(door, plant).size(), 2U);
    ASSERT_TRUE(door.take_back(entries, kEntered));
    ASSERT_EQ(measured(door, plant).size(), 1U);
    EXPECT_DOUBLE_EQ(measured(door, plant).front().value(), 20.0);
    EXPECT_FALSE(door.record({{}, {height(plant, -1.0)}}));
    EXPECT_EQ(measured(door, plant).size(), 1U);
}

} // namespace
} // namespace lathhouse::models
