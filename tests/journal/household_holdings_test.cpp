#include "core/journal/household_holdings.h"

#include "core/home/demonstration.h"
#include "core/home/household_change.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <fstream>

namespace lathhouse::journal {
namespace {

class HouseholdHoldings : public WithFolder {
protected:
    std::filesystem::path home() const { return folder_ / "home"; }
};

TEST_F(HouseholdHoldings, CountsWhatCountsAndNotWhatWasTakenBack)
{
    const auto today = calendar::make_date(2027, 3, 1).value();
    const auto shown = home::demonstration({.today = today}).value();
    auto store = HouseholdStore::create(home(), shown.household, shown.history);
    ASSERT_TRUE(store);
    const auto now = calendar::start_of_day_utc(today);
    const home::Measurement height{.plant = shown.household.plants.front().id,
                                   .kind = home::MeasurementKind::Height,
                                   .measured = today,
                                   .repeats = {41.0},
                                   .method = home::MeasurementMethod::Ruler,
                                   .entered = now};
    ASSERT_TRUE(store->record(std::span{&height, 1}));
    auto held = holdings_of(home());
    ASSERT_TRUE(held) << held.error().message;
    EXPECT_EQ(held->plants, shown.household.plants.size());
    EXPECT_EQ(held->spots, shown.household.spots.size());
    EXPECT_EQ(held->events, store->events()->size());
    EXPECT_EQ(held->measurements, 1U);
    EXPECT_EQ(held->photos, 0U);
    EXPECT_GT(held->database_bytes, 10'000U);
    ASSERT_TRUE(store->turn_last(HouseholdStore::Direction::Undo, now));
    const home::Event died{shown.household.plants.front().id, home::EventKind::Died, std::nullopt, today, now, "", {}};
    ASSERT_TRUE(store->record(std::span{&died, 1}));
    held = holdings_of(home());
    ASSERT_TRUE(held);
    EXPECT_EQ(held->measurements, 0U);
    EXPECT_EQ(held->plants, shown.household.plants.size() - 1);
}

TEST_F(HouseholdHoldings, ASpotThatWasTakenOffTheListOrTakenBackIsNotCounted)
{
    const auto today = calendar::make_date(2027, 3, 1).value();
    const auto now = calendar::start_of_day_utc(today);
    const auto shown = home::demonstration({.today = today}).value();
    auto store = HouseholdStore::create(home(), shown.household);
    ASSERT_TRUE(store);
    auto attic = shown.household.spots.front();
    attic.id = 0;
    attic.name = "Attic";
    ASSERT_TRUE(store->change({.words = "Added Attic", .spots = {attic}}, today, now));
    EXPECT_EQ(holdings_of(home())->spots, shown.household.spots.size() + 1);
    ASSERT_TRUE(store->change({.words = "Off", .spots_gone = {store->load()->spot_called("Attic")->id}}, today, now));
    EXPECT_EQ(holdings_of(home())->spots, shown.household.spots.size());
    ASSERT_TRUE(store->turn_last(HouseholdStore::Direction::Undo, now));
    ASSERT_TRUE(store->turn_last(HouseholdStore::Direction::Undo, now));
    EXPECT_EQ(holdings_of(home())->spots, shown.household.spots.size()) << "its adding was undone";
}

TEST_F(HouseholdHoldings, OlderSchemaWithoutATableCountsAsEmpty)
{
    const auto shown = home::demonstration({.today = calendar::make_date(2027, 3, 1).value()}).value();
    ASSERT_TRUE(HouseholdStore::create(home(), shown.household));
    {
        SQLite::Database database{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        database.exec("DROP VIEW photos_that_count; DROP VIEW photo_plants_that_count; DROP TABLE photo_plants; DROP "
                      "TABLE photo_dates; DROP TABLE photo_withdrawals; DROP TABLE photos; PRAGMA user_version = 10");
    }
    const auto held = holdings_of(home());
    ASSERT_TRUE(held) << held.error().message;
    EXPECT_EQ(held->photos, 0U);
    EXPECT_EQ(held->spots, shown.household.spots.size());
}

TEST_F(HouseholdHoldings, EveryFolderThatIsNoneIsASentence)
{
    EXPECT_EQ(holdings_of(home()).error().code, ErrorCode::NotFound);
    std::filesystem::create_directory(home());
    EXPECT_EQ(holdings_of(home()).error().code, ErrorCode::NotAHousehold);
    std::ofstream{home() / "household.sqlite3"} << "no database";
    EXPECT_FALSE(holdings_of(home()));
}

} // namespace
} // namespace lathhouse::journal
