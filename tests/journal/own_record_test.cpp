#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "tests/climate/sample_record.h"
#include "tests/journal/temporary_folder.h"

namespace lathhouse::journal {
namespace {

class OwnRecordRows : public WithFolder {
protected:
    std::filesystem::path home() const { return folder_ / "home"; }
    HouseholdStore make() const
    {
        const auto made = home::demonstration({.today = calendar::Date{2026, 11, 25}}).value();
        return HouseholdStore::create(home(), made.household, made.history).value();
    }
    static climate::OwnRecord record(int first_year, int last_year)
    {
        return {.name = "Porch",
                .file = "porch.csv",
                .position = {Latitude::literal(48.25), Longitude::literal(20.5)},
                .elevation = Metres::from_metres(151.5),
                .imported = {2026, 11, 25},
                .days = climate::sample_record(first_year, last_year)};
    }
};

void expect_same_days(const climate::DailyRecord& got, const climate::DailyRecord& put)
{
    EXPECT_EQ(got.station(), put.station());
    ASSERT_EQ(got.first_year(), put.first_year());
    ASSERT_EQ(got.last_year(), put.last_year());
    for (int year = put.first_year(); year <= put.last_year(); ++year) {
        for (int month = 1; month <= 12; ++month) {
            EXPECT_EQ(got.month(year, month)->low, put.month(year, month)->low) << year << " " << month;
            EXPECT_EQ(got.month(year, month)->high, put.month(year, month)->high) << year << " " << month;
            EXPECT_EQ(got.month(year, month)->rain, put.month(year, month)->rain) << year << " " << month;
        }
    }
}

TEST_F(OwnRecordRows, AreGivenBackAsTheyWere)
{
    auto store = make();
    auto put = record(2016, 2020);
    put.days.month_to_write(2018, 3).low.fill(climate::DailyReading{});
    put.days.month_to_write(2018, 4).low[0] =
        *climate::DailyReading::from_tenths(-1200); // Impossible, and kept.
    auto& may = put.days.month_to_write(2018, 5); // A day without any reading.
    may.low[9] = may.high[9] = may.rain[9] = climate::DailyReading{};
    ASSERT_TRUE(store.keep_own_record(put));
    const auto loaded = HouseholdStore::open(home())->load();
    ASSERT_TRUE(loaded) << loaded.error().message;
    ASSERT_NE(loaded->own_record, nullptr);
    const auto& got = *loaded->own_record;
    EXPECT_EQ(got.name, put.name);
    EXPECT_EQ(got.file, put.file);
    EXPECT_EQ(got.position, put.position);
    EXPECT_EQ(got.elevation, put.elevation);
    EXPECT_EQ(got.imported, put.imported);
    expect_same_days(got.days, put.days);
}

TEST_F(OwnRecordRows, AHouseholdHasNoneAtFirst)
{
    EXPECT_EQ(make().load()->own_record, nullptr);
}

TEST_F(OwnRecordRows, TakeThePlaceOfEarlierOnes)
{
    auto store = make();
    ASSERT_TRUE(store.keep_own_record(record(2010, 2020)));
    ASSERT_TRUE(store.keep_own_record(record(2018, 2019)));
    EXPECT_EQ(store.load()->own_record->days.first_year(), 2018);
    EXPECT_EQ(store.load()->own_record->days.last_year(), 2019);
}

TEST_F(OwnRecordRows, AreRemoved)
{
    auto store = make();
    ASSERT_TRUE(store.keep_own_record(record(2018, 2019)));
    ASSERT_TRUE(store.remove_own_record());
    EXPECT_EQ(store.load()->own_record, nullptr);
    const auto again = store.remove_own_record();
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::NotFound);
}

TEST_F(OwnRecordRows, ARecordThatBreaksARuleLeavesTheOneThereWas)
{
    auto store = make();
    ASSERT_TRUE(store.keep_own_record(record(2018, 2019)));
    auto nameless = record(2001, 2002);
    nameless.name.clear();
    const auto kept = store.keep_own_record(nameless);
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(store.load()->own_record->days.first_year(), 2018);
}

TEST_F(OwnRecordRows, GoWithANewHousehold)
{
    auto household = home::demonstration({.today = calendar::Date{2026, 11, 25}}).value().household;
    household.own_record = std::make_shared<const climate::OwnRecord>(record(2018, 2019));
    ASSERT_TRUE(HouseholdStore::create(home(), household));
    const auto loaded = HouseholdStore::open(home())->load();
    ASSERT_NE(loaded->own_record, nullptr);
    expect_same_days(loaded->own_record->days, household.own_record->days);
}

TEST_F(OwnRecordRows, AHouseholdFromBeforeThemIsBroughtUpToDate)
{
    { // A file as the program left it before it knew own records.
        std::filesystem::create_directory(home());
        const auto file = home() / "household.sqlite3";
        SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
        ASSERT_TRUE(bring_up_to_date(database, file, known_migrations().first(2)));
        ASSERT_EQ(database.execAndGet("PRAGMA user_version").getInt(), 2);
        database.exec("INSERT INTO household VALUES (1, 'Old', 0, 'Somewhere', 48.0, 20.0, NULL, 'UTC')");
        database.exec("INSERT INTO spots VALUES (1, 'Sill', 'Sill', 'indoors', 0, 0, 15, 20, 5, 5, 3, 0, 1)");
    }
    auto store = HouseholdStore::open(home());
    ASSERT_TRUE(store) << store.error().message;
    auto loaded = store->load();
    ASSERT_TRUE(loaded) << loaded.error().message;
    EXPECT_EQ(loaded->name, "Old");
    EXPECT_EQ(loaded->spots.size(), 1U);
    EXPECT_EQ(loaded->own_record, nullptr);
    ASSERT_TRUE(store->keep_own_record(record(2018, 2019)));
    EXPECT_NE(store->load()->own_record, nullptr);
    SQLite::Database copy{(home() / "backups" / "before-schema-3.sqlite3").string()};
    EXPECT_EQ(copy.execAndGet("PRAGMA user_version").getInt(), 2);
    EXPECT_EQ(copy.execAndGet("SELECT name FROM household").getString(), "Old");
}

} // namespace
} // namespace lathhouse::journal
