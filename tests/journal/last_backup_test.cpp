#include "core/journal/last_backup.h"

#include "core/home/demonstration.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_store.h"
#include "tests/journal/short_names.h"
#include "tests/journal/temporary_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <fstream>

namespace lathhouse::journal {
namespace {

class LastBackupTest : public WithFolder {
protected:
    void SetUp() override
    {
        const auto shown = home::demonstration({.today = kDate}).value();
        ASSERT_TRUE(HouseholdStore::create(home(), shown.household));
        plant_ = shown.household.plants.front().id;
    }
    std::filesystem::path home() const { return folder_ / "home"; }
    std::filesystem::path memo() const { return home() / "backups" / "last-backup.json"; }
    void tell(const std::string& content) const
    {
        std::filesystem::create_directories(memo().parent_path());
        std::ofstream{memo(), std::ios::binary} << content;
    }
    void die() const
    {
        auto store = HouseholdStore::open(home());
        ASSERT_TRUE(store);
        const home::Event died{plant_, home::EventKind::Died, std::nullopt, kDate, calendar::start_of_day_utc(kDate), "", {}};
        ASSERT_TRUE(store->record(std::span{&died, 1}));
    }
    home::PlantId plant_ = 0;
};

TEST_F(LastBackupTest, NoneIsKnownBeforeTheFirst)
{
    const auto last = last_backup_of(home());
    ASSERT_TRUE(last);
    EXPECT_FALSE(last->has_value());
}

TEST_F(LastBackupTest, CountsWhatCameAfterIt)
{
    remember_backup(home(), kDate, folder_ / "a.zip", 0);
    const auto first = last_backup_of(home());
    ASSERT_TRUE(first && *first);
    EXPECT_EQ((*first)->on, kDate);
    EXPECT_EQ((*first)->file, folder_ / "a.zip");
    die();
    const auto second = last_backup_of(home());
    ASSERT_TRUE(second && *second);
    EXPECT_EQ((*second)->entries_since, (*first)->entries_since + 1);
}

TEST_F(LastBackupTest, DamagedMemoIsAsNone)
{
    for (const char* content : {"", "{", "[]", "{\"on\": 5}", "{\"on\": \"2026-11-25\", \"file\": \"a\"}",
                                "{\"on\": \"2026-13-45\", \"file\": \"a\", \"last_entry\": 1}",
                                "{\"on\": \"2026-11-25\", \"file\": \"a\", \"last_entry\": \"1\"}"}) {
        tell(content);
        const auto last = last_backup_of(home());
        ASSERT_TRUE(last) << content;
        EXPECT_FALSE(last->has_value()) << content;
    }
}

TEST_F(LastBackupTest, SchemaWithoutAnOrderOfEntryCountsNothing)
{
    remember_backup(home(), kDate, folder_ / "a.zip", 0);
    {
        SQLite::Database database{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA foreign_keys = OFF; PRAGMA writable_schema = ON; "
                      "DELETE FROM sqlite_schema WHERE name = 'entries' OR tbl_name = 'entries'; PRAGMA writable_schema = OFF");
    }
    const auto last = last_backup_of(home());
    ASSERT_TRUE(last && *last);
    EXPECT_EQ((*last)->entries_since, 0U);
}

TEST_F(LastBackupTest, FolderWithoutAHouseholdIsASentence)
{
    tell("{\"on\": \"2026-11-25\", \"file\": \"a\", \"last_entry\": 1}");
    std::filesystem::remove(home() / "household.sqlite3");
    EXPECT_EQ(last_backup_of(home()).error().code, ErrorCode::NotAHousehold);
}

TEST_F(LastBackupTest, FolderThatCannotBeWrittenKeepsNothing)
{
    std::ofstream{home() / "backups"} << "a file in its place";
    remember_backup(home(), kDate, folder_ / "a.zip", 0);
    const auto last = last_backup_of(home());
    ASSERT_TRUE(last);
    EXPECT_FALSE(last->has_value());
}

} // namespace
} // namespace lathhouse::journal
