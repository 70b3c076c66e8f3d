#include "core/journal/household_store.h"
#include "tests/models/page_fixtures.h"

#include <cstdlib>
#include <filesystem>
#include <span>

namespace lathhouse::models {
namespace {

const calendar::Instant kNoted = calendar::start_of_day_utc(kShownToday);

/// A folder with a lot and a tray of twelve seeds.
class DoorToFolder : public testing::Test {
protected:
    DoorToFolder()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_door_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder = std::filesystem::path{pattern} / "home";
        auto store = journal::HouseholdStore::create(folder, plain_facts().as_told, plain_facts().events);
        EXPECT_TRUE(store);
        const auto lot =
            store->add_lot({0, "Zinnia", "Zinnia elegans", 2026, 70.0, 40, ""}, kShownToday, kNoted);
        EXPECT_TRUE(lot);
        const auto sown = store->record(home::Tray{0, *lot, kShownToday - calendar::Days{9}, 12, {}, {}, ""},
                                        kShownToday, kNoted);
        EXPECT_TRUE(sown);
        tray = *sown;
        door = door_to_folder(folder, []() -> Result<plan::HouseholdFacts> { return plain_facts(); });
    }
    ~DoorToFolder() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder.parent_path(), failure);
    }
    journal::HouseholdStore store() const { return *journal::HouseholdStore::open(folder); }
    std::optional<int> counted() const
    {
        const auto book = *store().seeds();
        const auto count = book.latest_count(tray);
        return count ? std::optional{count->emerged} : std::nullopt;
    }
    std::filesystem::path folder;
    home::TrayId tray = 0;
    HouseholdDoor door;
};

TEST_F(DoorToFolder, ReadingAndForecastAreInTheJournal)
{
    const auto spot = plain_facts().as_told.spots.back().id;
    ASSERT_TRUE(door.log({spot, kShownToday, Celsius::from_degrees(4.5), {}, {}, {}, kNoted, {}}));
    ASSERT_TRUE(door.keep_forecasts(
        {{kShownToday, kShownToday + calendar::Days{1}, Celsius::from_degrees(2.0), {}, {}, kNoted}}));
    const auto log = *store().night_log();
    ASSERT_EQ(log.readings.size(), 1U);
    EXPECT_EQ(log.readings.front().low, Celsius::from_degrees(4.5));
    ASSERT_EQ(log.forecasts.size(), 1U);
    EXPECT_EQ(log.forecasts.front().low, Celsius::from_degrees(2.0));
    EXPECT_FALSE(door.log({999, kShownToday, Celsius::from_degrees(4.5), {}, {}, {}, kNoted, {}}));
}

TEST_F(DoorToFolder, CountIsTakenBackAndWrittenAgain)
{
    const home::TrayCount count{tray, kShownToday, 5, false};
    ASSERT_TRUE(door.count(count, kShownToday, kNoted));
    EXPECT_EQ(counted(), 5);
    ASSERT_TRUE(door.take_back(count, kNoted));
    EXPECT_EQ(counted(), std::nullopt);
    ASSERT_TRUE(door.bring_back(count, kNoted));
    EXPECT_EQ(counted(), 5);
}

TEST_F(DoorToFolder, WhatAnotherProgramWroteIsLeft)
{
    const home::TrayCount count{tray, kShownToday, 5, false};
    ASSERT_TRUE(door.count(count, kShownToday, kNoted));
    const home::Event note{{}, home::EventKind::Noted, {}, kShownToday, kNoted, "rain"};
    ASSERT_TRUE(store().record(std::span<const home::Event>{&note, 1}));
    const auto events = store().events()->size();
    const auto back = door.take_back(count, kNoted);
    ASSERT_FALSE(back);
    EXPECT_EQ(back.error().code, ErrorCode::NotFound);
    EXPECT_EQ(store().events()->size(), events);
    EXPECT_EQ(counted(), 5);
    EXPECT_FALSE(door.bring_back(count, kNoted));
}

TEST_F(DoorToFolder, WhatAnotherProgramTookBackStaysTakenBack)
{
    const home::TrayCount count{tray, kShownToday, 5, false};
    ASSERT_TRUE(door.count(count, kShownToday, kNoted));
    const home::Event note{{}, home::EventKind::Noted, {}, kShownToday, kNoted, "rain"};
    ASSERT_TRUE(store().record(std::span<const home::Event>{&note, 1}));
    ASSERT_TRUE(store().turn_back(journal::HouseholdStore::Direction::Undo, kNoted));
    const auto events = store().events()->size();
    EXPECT_FALSE(door.bring_back(count, kNoted));
    EXPECT_EQ(store().events()->size(), events);
}

TEST_F(DoorToFolder, MoreSeedlingsThanSeedsAreRefused)
{
    EXPECT_FALSE(door.count({tray, kShownToday, 13, false}, kShownToday, kNoted));
    EXPECT_EQ(counted(), std::nullopt);
}

TEST(DoorToMemory, ChangesAreTakenBackInTurnOnly)
{
    const auto door = door_of(with_seeds(plain_facts(), kShownToday));
    EXPECT_FALSE(door.keeps);
    const home::TrayCount one{2, kShownToday, 1, false};
    const home::TrayCount two{2, kShownToday, 2, false};
    ASSERT_TRUE(door.count(one, kShownToday, kNoted));
    ASSERT_TRUE(door.count(two, kShownToday, kNoted));
    EXPECT_FALSE(door.take_back(one, kNoted));
    ASSERT_TRUE(door.take_back(two, kNoted));
    EXPECT_EQ(door.load()->seeds.latest_count(2)->emerged, 1);
    ASSERT_TRUE(door.bring_back(two, kNoted));
    EXPECT_EQ(door.load()->seeds.latest_count(2)->emerged, 2);
    EXPECT_FALSE(door.count({2, kShownToday, 99, false}, kShownToday, kNoted));
    EXPECT_EQ(door.load()->seeds.latest_count(2)->emerged, 2);
}

TEST(DoorToMemory, RoundAndDoorSeeEachOther)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    const auto door = door_to_memory(household);
    const auto spot = plain_facts().as_told.spots.front().id;
    ASSERT_TRUE(door.log({spot, kShownToday, Celsius::from_degrees(4.5), {}, {}, {}, kNoted, {}}));
    ASSERT_TRUE(door.log({spot, kShownToday, Celsius::from_degrees(5.0), {}, {}, {}, kNoted, {}}));
    EXPECT_EQ(household->facts().log.readings.size(), 1U) << "the same night replaces";
    EXPECT_EQ(household->facts().log.readings.front().low, Celsius::from_degrees(5.0));
}

TEST(NoDoor, EverythingGivesItsReason)
{
    const auto door = no_door({ErrorCode::NotFound, "the folder is gone"});
    EXPECT_EQ(door.load().error().message, "the folder is gone");
    EXPECT_FALSE(door.count({1, kShownToday, 1, false}, kShownToday, kNoted));
    EXPECT_FALSE(door.take_back({1, kShownToday, 1, false}, kNoted));
}

} // namespace
} // namespace lathhouse::models
