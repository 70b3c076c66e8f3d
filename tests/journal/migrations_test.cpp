#include "core/journal/migrations.h"

#include "tests/journal/temporary_folder.h"

#include <array>
#include <fstream>

namespace lathhouse::journal {
namespace {

constexpr Migration kFirst{1,
                           "CREATE TABLE pots (id INTEGER PRIMARY KEY) STRICT; INSERT INTO pots VALUES (5);"};
constexpr Migration kSecond{2, "ALTER TABLE pots ADD COLUMN litres REAL;"};
constexpr Migration kBroken{2, "ALTER TABLE pots ADD COLUMN litres REAL; INSERT INTO nowhere VALUES (1);"};

class Migrations : public WithFolder {
protected:
    SQLite::Database fresh() const { return {file().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}; }
    std::filesystem::path file() const { return folder_ / "household.sqlite3"; }
    std::filesystem::path copy() const { return folder_ / "backups" / "before-schema-2.sqlite3"; }
};

int version_of(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA user_version").getInt();
}

TEST_F(Migrations, AreNumberedFromOneWithoutGaps)
{
    int expected = 0;
    for (const auto& migration : known_migrations()) {
        EXPECT_EQ(migration.version, ++expected);
    }
}

TEST_F(Migrations, TakeANewFileToTheNewest)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), known_migrations()));
    EXPECT_EQ(version_of(database), known_migrations().back().version);
    EXPECT_FALSE(std::filesystem::exists(folder_ / "backups"));
}

TEST_F(Migrations, GiveASpotOfTheFirstSchemaNoView)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), known_migrations().first(1)));
    database.exec("INSERT INTO spots VALUES (3, 'Sill', 'Sill', 'indoors', 0, 0, 18, 22, 9, 4, 5, 0, 1)");
    ASSERT_TRUE(bring_up_to_date(database, file(), known_migrations()));
    EXPECT_EQ(database.execAndGet("SELECT id FROM spots").getInt(), 3);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM spot_views").getInt(), 0);
}

TEST_F(Migrations, MakeOnlyStrictTables)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), known_migrations()));
    EXPECT_EQ(
        database
            .execAndGet("SELECT count(*) FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND "
                        "name NOT LIKE 'sqlite_%'")
            .getInt(),
        0);
}

TEST_F(Migrations, CopyAnOlderFileFirst)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst}));
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst, kSecond}));
    EXPECT_EQ(version_of(database), 2);
    SQLite::Database kept{copy().string()};
    EXPECT_EQ(version_of(kept), 1);
    EXPECT_EQ(kept.execAndGet("SELECT id FROM pots").getInt(), 5);
}

TEST_F(Migrations, LeaveNothingOfAStepThatFails)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst}));
    EXPECT_FALSE(bring_up_to_date(database, file(), std::array{kFirst, kBroken}));
    EXPECT_EQ(version_of(database), 1);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM pragma_table_info('pots')").getInt(), 1);
}

TEST_F(Migrations, DoNothingWhereTheCopyFails)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst}));
    std::ofstream{folder_ / "backups"} << "a file where the folder of the copies should be";
    const auto step = bring_up_to_date(database, file(), std::array{kFirst, kSecond});
    ASSERT_FALSE(step);
    EXPECT_EQ(step.error().code, ErrorCode::Unwritable);
    EXPECT_EQ(version_of(database), 1);
}

TEST_F(Migrations, ReplaceACopyOfAnEarlierAttempt)
{
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst}));
    std::filesystem::create_directory(folder_ / "backups");
    std::ofstream{copy()} << "an old copy";
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst, kSecond}));
    EXPECT_EQ(SQLite::Database{copy().string()}.execAndGet("SELECT id FROM pots").getInt(), 5);
}

TEST_F(Migrations, KeepTheTwoLatestCopies)
{
    constexpr Migration kThird{3, "ALTER TABLE pots ADD COLUMN colour TEXT;"};
    constexpr Migration kFourth{4, "ALTER TABLE pots ADD COLUMN shape TEXT;"};
    auto database = fresh();
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst}));
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst, kSecond}));
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst, kSecond, kThird}));
    EXPECT_TRUE(std::filesystem::exists(copy()));
    std::ofstream{folder_ / "backups" / "of my own.sqlite3"} << "not ours to remove";
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kFirst, kSecond, kThird, kFourth}));
    EXPECT_FALSE(std::filesystem::exists(copy()));
    EXPECT_TRUE(std::filesystem::exists(folder_ / "backups" / "before-schema-3.sqlite3"));
    EXPECT_TRUE(std::filesystem::exists(folder_ / "backups" / "before-schema-4.sqlite3"));
    EXPECT_TRUE(std::filesystem::exists(folder_ / "backups" / "of my own.sqlite3"));
}

TEST_F(Migrations, RefuseAStepThatLeavesARowPointingNowhere)
{
    constexpr Migration kTwoTables{1, "CREATE TABLE pots (id INTEGER PRIMARY KEY) STRICT; "
                                      "CREATE TABLE plants (id INTEGER PRIMARY KEY, pot INTEGER REFERENCES pots (id)) "
                                      "STRICT; INSERT INTO pots VALUES (5); INSERT INTO plants VALUES (1, 5);"};
    constexpr Migration kLosing{2, "DELETE FROM pots;"};
    auto database = fresh();
    database.exec("PRAGMA foreign_keys = ON");
    ASSERT_TRUE(bring_up_to_date(database, file(), std::array{kTwoTables}));
    EXPECT_FALSE(bring_up_to_date(database, file(), std::array{kTwoTables, kLosing}));
    EXPECT_EQ(version_of(database), 1);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM pots").getInt(), 1);
}

} // namespace
} // namespace lathhouse::journal
