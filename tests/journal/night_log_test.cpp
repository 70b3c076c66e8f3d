#include "core/home/demonstration.h"
#include "core/journal/database.h"
#include "core/journal/household_store.h"
#include "core/journal/database.h"
#include "core/journal/migrations.h"
#include "tests/journal/temporary_folder.h"

#include <vector>

namespace lathhouse::journal {
namespace {

const calendar::Date kLogged{2026, 9, 10};

home::Reading reading(home::SpotId spot, calendar::Date night, double low)
{
    return {.spot = spot,
            .night = night,
            .low = Celsius::from_degrees(low),
            .high = {},
            .weather = {},
            .station_low = {},
            .entered = calendar::start_of_day_utc(kLogged),
            .note = ""};
}

home::KeptForecast forecast(calendar::Date issued, calendar::Date night, double low)
{
    return {.issued = issued,
            .night = night,
            .low = Celsius::from_degrees(low),
            .weather = {},
            .dew_point = {},
            .entered = calendar::start_of_day_utc(kLogged)};
}

class NightLogTest : public WithFolder {
protected:
    std::filesystem::path home() const { return folder_ / "home"; }
    HouseholdStore store() const
    {
        const auto made = home::demonstration({.today = kLogged}).value();
        auto created = HouseholdStore::create(home(), made.household);
        EXPECT_TRUE(created) << created.error().message;
        return std::move(created).value();
    }
};

TEST_F(NightLogTest, IsEmptyInANewHousehold)
{
    const auto log = store().night_log();
    ASSERT_TRUE(log);
    EXPECT_TRUE(log->readings.empty());
    EXPECT_TRUE(log->forecasts.empty());
}

TEST_F(NightLogTest, GivesBackWhatWasPutIn)
{
    auto full = reading(5, kLogged, 3.5);
    full.high = Celsius::from_degrees(17.25);
    full.weather = {climate::Sky::Clear, climate::Wind::Calm};
    full.station_low = Celsius::from_degrees(-1.0);
    full.note = "under the shelf";
    auto coming = forecast(kLogged, kLogged + calendar::Days{1}, 2.0);
    coming.weather = {climate::Sky::Cloudy, climate::Wind::Windy};
    coming.dew_point = Celsius::from_degrees(-4.0);
    {
        auto open = store();
        ASSERT_TRUE(open.record(std::vector{full, reading(6, kLogged, 1.0)}));
        ASSERT_TRUE(open.record(std::vector{coming}));
    }
    const auto log = HouseholdStore::open(home())->night_log();
    ASSERT_TRUE(log);
    EXPECT_EQ(log->readings, (std::vector{full, reading(6, kLogged, 1.0)}));
    EXPECT_EQ(log->forecasts, std::vector{coming});
}

TEST_F(NightLogTest, TheLastOfANightCountsAndTheFirstStays)
{
    auto open = store();
    const auto night = kLogged + calendar::Days{1};
    ASSERT_TRUE(open.record(std::vector{reading(5, kLogged, 3.0)}));
    ASSERT_TRUE(open.record(std::vector{reading(5, kLogged, 4.0)}));
    ASSERT_TRUE(open.record(std::vector{forecast(kLogged, night, 1.0), forecast(kLogged, night, 2.0)}));
    const auto log = open.night_log().value();
    EXPECT_EQ(log.readings, std::vector{reading(5, kLogged, 4.0)});
    EXPECT_EQ(log.forecasts, std::vector{forecast(kLogged, night, 2.0)});
    SQLite::Database database{(home() / "household.sqlite3").string()};
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM readings").getInt(), 2);
}

TEST_F(NightLogTest, IsInOrderOfNights)
{
    auto open = store();
    ASSERT_TRUE(open.record(std::vector{reading(6, kLogged, 3.0), reading(5, kLogged, 3.0),
                                        reading(6, kLogged - calendar::Days{3}, 3.0)}));
    const auto log = open.night_log().value();
    ASSERT_EQ(log.readings.size(), 3U);
    EXPECT_LT(log.readings[0].night, log.readings[1].night);
    EXPECT_LT(log.readings[1].spot, log.readings[2].spot);
}

TEST_F(NightLogTest, TakesAllReadingsOrNone)
{
    auto open = store();
    const auto recorded = open.record(std::vector{reading(5, kLogged, 3.0), reading(99, kLogged, 3.0)});
    ASSERT_FALSE(recorded);
    EXPECT_EQ(recorded.error().code, ErrorCode::NotFound);
    const auto hot = open.record(std::vector{reading(5, kLogged, 3.0), reading(5, kLogged, 90.0)});
    EXPECT_FALSE(hot);
    EXPECT_TRUE(open.night_log()->readings.empty());
}

TEST_F(NightLogTest, RefusesAForecastOfTheDayBefore)
{
    auto open = store();
    const auto kept = open.record(std::vector{forecast(kLogged, kLogged - calendar::Days{1}, 3.0)});
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().code, ErrorCode::OutOfRange);
}

// A household of the schema before gets the log's tables and keeps what it has.
TEST_F(NightLogTest, IsAddedToAnOlderHousehold)
{
    {
        const auto file = home() / "household.sqlite3";
        std::filesystem::create_directories(home());
        SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
        ASSERT_TRUE(bring_up_to_date(database, file, known_migrations().first(2)));
        database.exec("INSERT INTO household VALUES (1, 'Old', 0, 'Somewhere', 48.0, 20.0, NULL, 'UTC')");
        database.exec("INSERT INTO spots VALUES (5, 'Porch', 'Porch', 'open', 0, 1, NULL, NULL, 5, 5, 3, 0, 1)");
    }
    auto open = HouseholdStore::open(home());
    ASSERT_TRUE(open) << open.error().message;
    EXPECT_EQ(open->load()->spots.size(), 1U);
    EXPECT_TRUE(open->record(std::vector{reading(5, kLogged, 3.0)}));
    EXPECT_TRUE(std::filesystem::exists(home() / "backups" / "before-schema-3.sqlite3"));
}

} // namespace
} // namespace lathhouse::journal
