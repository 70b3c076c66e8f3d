#include "core/journal/household_csv.h"

#include "core/base/sha256.h"
#include "core/home/demonstration.h"
#include "core/journal/household_check.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <random>
#include <sstream>

namespace lathhouse::journal {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class Tables : public WithFolder {
protected:
    Tables()
    {
        const auto demonstration = home::demonstration({.today = calendar::make_date(2027, 3, 1).value()}).value();
        EXPECT_TRUE(HouseholdStore::create(home(), demonstration.household, demonstration.history));
    }
    fs::path home() const { return folder_ / "home"; }
    fs::path out() const { return folder_ / "tables"; }
    static SQLite::Database open(const fs::path& folder)
    {
        return SQLite::Database{(folder / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
    }
    /// Every table with its rows, values with their types.
    static std::map<std::string, std::vector<std::string>> content(const fs::path& folder)
    {
        auto database = open(folder);
        std::map<std::string, std::vector<std::string>> all;
        SQLite::Statement tables{database, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"};
        while (tables.executeStep()) {
            const auto name = tables.getColumn(0).getString();
            auto& rows = all[name];
            SQLite::Statement select{database, "SELECT * FROM \"" + name + "\" ORDER BY 1, 2"};
            while (select.executeStep()) {
                std::string row;
                for (int column = 0; column < select.getColumnCount(); ++column) {
                    const auto value = select.getColumn(column);
                    // getText alone would make numbers of 15 digits of them.
                    row += std::to_string(value.getType()) + ":";
                    if (value.isFloat()) {
                        std::ostringstream exact;
                        exact << std::hexfloat << value.getDouble();
                        row += exact.str();
                    } else if (!value.isNull()) {
                        row += value.getString();
                    }
                    row += "|";
                }
                rows.push_back(row);
            }
        }
        return all;
    }
    static std::string text_of(const fs::path& path)
    {
        std::ostringstream text;
        text << std::ifstream{path, std::ios::binary}.rdbuf();
        return text.str();
    }
    static void replace_in(const fs::path& path, const std::string& from, const std::string& to)
    {
        auto text = text_of(path);
        const auto at = text.find(from);
        ASSERT_NE(at, std::string::npos) << from;
        std::ofstream{path, std::ios::binary} << text.replace(at, from.size(), to);
    }
    void note_all(const std::vector<std::string>& notes) const
    {
        auto database = open(home());
        SQLite::Transaction transaction{database};
        SQLite::Statement insert{database, "INSERT INTO events (plant_id, kind, happened_on, entered_at, note) VALUES "
                                           "(1, 'noted', '2027-01-01', '2027-01-01T00:00:00Z', ?)"};
        for (const auto& note : notes) {
            insert.reset();
            insert.bind(1, note);
            insert.exec();
        }
        transaction.commit();
    }
};

TEST_F(Tables, TheDemonstrationComesBackTableByTable)
{
    const auto digest = sha256_of("photo");
    fs::create_directories(home() / "photos" / digest.substr(0, 2));
    std::ofstream{home() / "photos" / digest.substr(0, 2) / (digest + ".jpg")} << "photo";
    const auto written = export_csv(home(), out());
    ASSERT_TRUE(written) << written.error().message;
    EXPECT_GT(written->rows, 100U);
    const auto read = import_csv(out(), folder_ / "new");
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(fs::status(folder_ / "new").permissions(), fs::perms::owner_all) << "a home is private";
    EXPECT_EQ(read->rows, written->rows);
    EXPECT_EQ(read->photos, 1U);
    EXPECT_TRUE(read->unknown.empty());
    const auto before = content(home());
    const auto after = content(folder_ / "new");
    ASSERT_EQ(before.size(), after.size());
    for (const auto& [table, rows] : before) {
        EXPECT_EQ(after.at(table), rows) << table;
    }
    EXPECT_TRUE(check_household(folder_ / "new")->sound());
}

TEST_F(Tables, HostileTextsComeBackTheSame)
{
    std::vector<std::string> notes{"=1+1", "+1", "-1", "@SUM(A1)", "'", "''", "\"", "a\r\nb", "\n", "\t", " x ", "\xF0\x9F\xAA\xB4",
                                   "=HYPERLINK(\"http://x\",\"y\")", "#head", "null", ","};
    std::mt19937 draw{5};
    constexpr std::string_view kLetters = "=+-@'\"\r\n\t, ;#a1";
    for (int round = 0; round < 2000; ++round) {
        std::string text;
        for (auto length = draw() % 12; length > 0; --length) {
            text += kLetters[draw() % kLetters.size()];
        }
        notes.push_back(text);
    }
    note_all(notes);
    ASSERT_TRUE(export_csv(home(), out()));
    const auto read = import_csv(out(), folder_ / "new");
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(content(folder_ / "new"), content(home()));
}

TEST_F(Tables, AreRfc4180WithAHeadLine)
{
    ASSERT_TRUE(export_csv(home(), out()));
    const auto events = text_of(out() / "events.csv");
    EXPECT_TRUE(events.starts_with("id,plant_id,kind,")) << events.substr(0, 80);
    EXPECT_TRUE(events.ends_with("\r\n"));
    EXPECT_THAT(text_of(out() / "about.csv"), HasSubstr("schema,"));
}

TEST_F(Tables, NothingIsMadeWhereARowIsWrong)
{
    ASSERT_TRUE(export_csv(home(), out()));
    const auto spots = text_of(out() / "spots.csv");
    struct Case {
        const char* from;
        const char* to;
        const char* says;
    };
    for (const auto& [from, to, says] : {Case{"id,name", "id,title", "no column \"name\""}, Case{"indoors", "in space", "line 2"},
                                         Case{"\r\n1,", "\r\nx,", "no whole number"}, Case{"\r\n2,", "\r\n1,", "line 3"},
                                         Case{"id,name", "id,id,name", "fields where the head has"}}) {
        replace_in(out() / "spots.csv", from, to);
        const auto read = import_csv(out(), folder_ / "new");
        ASSERT_FALSE(read) << from;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        EXPECT_THAT(read.error().message, HasSubstr(says));
        EXPECT_THAT(read.error().message, HasSubstr("spots.csv"));
        EXPECT_FALSE(fs::exists(folder_ / "new"));
        std::ofstream{out() / "spots.csv", std::ios::binary} << spots;
    }
    EXPECT_TRUE(import_csv(out(), folder_ / "new"));
}

TEST_F(Tables, BrokenReferencesAreRefusedOrLeftOut)
{
    ASSERT_TRUE(export_csv(home(), out()));
    std::ofstream{out() / "events.csv", std::ios::app | std::ios::binary}
        << "90001,777,noted,,2027-01-01,2027-01-01T00:00:00Z,,{}\r\n";
    std::ofstream{out() / "event_undos.csv", std::ios::app | std::ios::binary} << "1,90001,1,2027-01-01T00:00:00Z\r\n";
    EXPECT_THAT(import_csv(out(), folder_ / "new").error().message, HasSubstr("--leave-out-broken"));
    const auto read = import_csv(out(), folder_ / "new", Broken::IsLeftOut);
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_THAT(read->broken, testing::UnorderedElementsAre("events, row 90001", "event_undos, row 1"));
    EXPECT_EQ(content(folder_ / "new"), content(home()));
}

TEST_F(Tables, WhatIsNoExportIsRefused)
{
    EXPECT_EQ(import_csv(folder_ / "none", folder_ / "new").error().code, ErrorCode::NotFound);
    fs::create_directory(folder_ / "empty");
    EXPECT_EQ(import_csv(folder_ / "empty", folder_ / "new").error().code, ErrorCode::Malformed);
    ASSERT_TRUE(export_csv(home(), out()));
    EXPECT_EQ(import_csv(out(), home()).error().code, ErrorCode::Unwritable);
    EXPECT_EQ(export_csv(home(), out()).error().code, ErrorCode::Unwritable);
    replace_in(out() / "about.csv", "schema,", "schema,99");
    EXPECT_EQ(import_csv(out(), folder_ / "new").error().code, ErrorCode::TooNew);
    std::ofstream{out() / "about.csv"} << "name,value\nschema,-3\n";
    EXPECT_EQ(import_csv(out(), folder_ / "new").error().code, ErrorCode::Malformed);
    fs::remove(out() / "plants.csv");
    std::ofstream{out() / "about.csv"} << "name,value\nschema,9\n";
    EXPECT_THAT(import_csv(out(), folder_ / "new").error().message, HasSubstr("plants.csv"));
    EXPECT_FALSE(fs::exists(folder_ / "new"));
}

TEST_F(Tables, AnAboutThatSaysNothingIsRefused)
{
    ASSERT_TRUE(export_csv(home(), out()));
    for (const char* about : {"", "name\nschema\n", "value\n9\n", "name,value\nversion,9\n", "name,value\nschema,nine\n",
                              "name,value\nschema,1.5\n"}) {
        std::ofstream{out() / "about.csv", std::ios::trunc} << about;
        const auto read = import_csv(out(), folder_ / "new");
        ASSERT_FALSE(read) << about;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed) << read.error().message;
        EXPECT_FALSE(fs::exists(folder_ / "new"));
    }
}

TEST_F(Tables, ColumnsAreThoseOfTheTable)
{
    ASSERT_TRUE(export_csv(home(), out()));
    const auto jugs = text_of(out() / "jugs.csv");
    replace_in(out() / "jugs.csv", "\r\n", ",colour\r\n");
    EXPECT_THAT(import_csv(out(), folder_ / "new").error().message, HasSubstr("\"colour\" that is not known"));
    std::ofstream{out() / "jugs.csv", std::ios::binary} << jugs;
    replace_in(out() / "jugs.csv", "\r\n", ",name\r\n");
    EXPECT_THAT(import_csv(out(), folder_ / "new").error().message, HasSubstr("jugs.csv"));
    EXPECT_FALSE(fs::exists(folder_ / "new"));
}

TEST_F(Tables, PhotosAreComparedWithTheirNamesAndMissedWhereTheyAreNot)
{
    const auto digest = sha256_of("photo");
    const auto path = fs::path{"photos"} / digest.substr(0, 2) / (digest + ".jpg");
    const auto lost = sha256_of("lost");
    fs::create_directories((home() / path).parent_path());
    std::ofstream{home() / path} << "photo";
    open(home()).exec("INSERT INTO photos (sha256, extension, size_bytes, width_px, height_px, taken_at, taken_from, "
                      "original_name, entered_at) VALUES ('" + lost +
                      "', 'jpg', 1, 1, 1, '2027-01-01T12:00:00', 'given', 'x', '2027-01-01T00:00:00Z')");
    const auto stop = [](std::uint64_t, std::uint64_t) { return GoOn::No; };
    EXPECT_THAT(export_csv(home(), out(), Unreadable::EndsIt, stop).error().message, HasSubstr("stopped"));
    EXPECT_FALSE(fs::exists(out()));
    ASSERT_TRUE(export_csv(home(), out()));
    EXPECT_THAT(import_csv(out(), folder_ / "new", Broken::EndsIt, stop).error().message, HasSubstr("stopped"));
    std::ofstream{out() / "letter.txt"} << "mine";
    const auto read = import_csv(out(), folder_ / "whole");
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(read->missing_photos, std::vector<std::string>{"photos/" + lost.substr(0, 2) + "/" + lost + ".jpg"});
    EXPECT_EQ(read->unknown, std::vector<std::string>{"letter.txt"});
    std::ofstream{out() / path, std::ios::trunc} << "altered";
    const auto altered = import_csv(out(), folder_ / "new");
    ASSERT_FALSE(altered);
    EXPECT_EQ(altered.error().code, ErrorCode::Damaged);
    EXPECT_THAT(altered.error().message, HasSubstr(digest));
    EXPECT_FALSE(fs::exists(folder_ / "new"));
}

TEST_F(Tables, WhatGivesNoHouseholdIsRefused)
{
    ASSERT_TRUE(export_csv(home(), out()));
    const auto household = text_of(out() / "household.csv");
    std::ofstream{out() / "household.csv", std::ios::binary | std::ios::trunc} << household.substr(0, household.find('\n') + 1);
    const auto read = import_csv(out(), folder_ / "new");
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().message, HasSubstr("household.csv needs one row"));
    // What else cannot be read is said too: a record without its days.
    std::ofstream{out() / "household.csv", std::ios::binary | std::ios::trunc} << household;
    std::ofstream{out() / "own_record.csv", std::ios::binary | std::ios::app} << "1,Station,,days.csv,48.3,20.7,160,2025-06-01\r\n";
    const auto without_days = import_csv(out(), folder_ / "again");
    ASSERT_FALSE(without_days);
    EXPECT_THAT(without_days.error().message, HasSubstr("its own record has no days"));
    EXPECT_FALSE(fs::exists(folder_ / "new"));
}

TEST_F(Tables, ADamagedPageCostsItsRowsAlone)
{
    std::vector<std::string> notes;
    for (int index = 0; index < 3000; ++index) {
        notes.push_back("note " + std::to_string(index) + std::string(100, '.'));
    }
    note_all(notes);
    int page = 0;
    int rows = 0;
    {
        auto database = open(home());
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
        rows = database.execAndGet("SELECT count(*) FROM events").getInt();
        // A leaf in the middle of the table, as SQLite itself tells (dbstat, where it is built in), else by its text.
        const auto bytes = text_of(home() / "household.sqlite3");
        page = static_cast<int>(bytes.find("note 1500.") / 4096);
    }
    {
        std::fstream file{home() / "household.sqlite3", std::ios::in | std::ios::out | std::ios::binary};
        file.seekp(4096L * page);
        file << std::string(4096, '\x55');
    }
    EXPECT_THAT(export_csv(home(), out()).error().message, HasSubstr("--salvage"));
    EXPECT_FALSE(fs::exists(out()));
    const auto saved = export_csv(home(), out(), Unreadable::IsPassedOver);
    ASSERT_TRUE(saved) << saved.error().message;
    ASSERT_EQ(saved->lost.size(), 1U);
    EXPECT_EQ(saved->lost[0].table, "events");
    EXPECT_GT(saved->lost[0].at_most, 5U);
    EXPECT_LT(saved->lost[0].at_most, 60U);
    const auto read = import_csv(out(), folder_ / "new", Broken::IsLeftOut);
    ASSERT_TRUE(read) << read.error().message;
    auto database = open(folder_ / "new");
    const int kept = database.execAndGet("SELECT count(*) FROM events").getInt();
    EXPECT_EQ(static_cast<std::uint64_t>(rows - kept), saved->lost[0].at_most);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM events WHERE note LIKE 'note 2999.%'").getInt(), 1);
}

TEST_F(Tables, ATableWithoutNumbersIsSavedFromBothEnds)
{
    int page = 0;
    {
        auto database = open(home());
        SQLite::Transaction transaction{database};
        database.exec("INSERT OR REPLACE INTO own_record VALUES (1, 'Station', '', 'days.csv', 48.3, 20.7, 160, '2025-06-01')");
        database.exec("DELETE FROM own_record_days");
        database.exec("WITH RECURSIVE days(day) AS (VALUES ('1990-01-01') UNION ALL SELECT date(day, '+1 day') FROM days WHERE "
                      "day < '2009-12-31') INSERT INTO own_record_days SELECT day, 10, 20, NULL FROM days");
        transaction.commit();
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
        page = static_cast<int>(text_of(home() / "household.sqlite3").find("2000-01-01") / 4096);
    }
    {
        std::fstream file{home() / "household.sqlite3", std::ios::in | std::ios::out | std::ios::binary};
        file.seekp(4096L * page);
        file << std::string(4096, '\x55');
    }
    const auto saved = export_csv(home(), out(), Unreadable::IsPassedOver);
    ASSERT_TRUE(saved) << saved.error().message;
    ASSERT_EQ(saved->lost.size(), 1U);
    EXPECT_EQ(saved->lost[0].table, "own_record_days");
    EXPECT_LT(saved->lost[0].from, "2000-01-01");
    EXPECT_GT(saved->lost[0].to, "2000-01-01");
    const auto read = import_csv(out(), folder_ / "new", Broken::IsLeftOut);
    ASSERT_TRUE(read) << read.error().message;
    auto database = open(folder_ / "new");
    EXPECT_GT(database.execAndGet("SELECT count(*) FROM own_record_days").getInt(), 6800); // Of 7,305.
    EXPECT_EQ(database.execAndGet("SELECT min(happened_on) FROM own_record_days").getString(), "1990-01-01");
    EXPECT_EQ(database.execAndGet("SELECT max(happened_on) FROM own_record_days").getString(), "2009-12-31");
}

TEST_F(Tables, SavesWhatItCanOfWhateverPageIsDamaged)
{
    {
        auto database = open(home());
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    const auto whole = text_of(home() / "household.sqlite3");
    int saved = 0;
    for (std::size_t page = 1; page < whole.size() / 4096; ++page) {
        auto bytes = whole;
        bytes.replace(page * 4096, 4096, 4096, '\x55');
        fs::create_directory(folder_ / "hurt");
        std::ofstream{folder_ / "hurt/household.sqlite3", std::ios::binary} << bytes;
        const auto written = export_csv(folder_ / "hurt", out(), Unreadable::IsPassedOver);
        saved += written ? 1 : 0; // A page of the schema may leave nothing that can be read: an error, no crash.
        fs::remove_all(out());
        fs::remove_all(folder_ / "hurt");
    }
    EXPECT_GT(saved, 10);
}

} // namespace
} // namespace lathhouse::journal
