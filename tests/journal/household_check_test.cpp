#include "core/journal/household_check.h"

#include "core/base/sha256.h"
#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <map>

namespace lathhouse::journal {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class Checks : public WithFolder {
protected:
    Checks()
    {
        const auto demonstration = home::demonstration({.today = calendar::make_date(2027, 3, 1).value()}).value();
        EXPECT_TRUE(HouseholdStore::create(home(), demonstration.household, demonstration.history));
        SQLite::Database database{file().string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    fs::path home() const { return folder_ / "home"; }
    fs::path file() const { return home() / "household.sqlite3"; }
    std::string put(const std::string& path, const std::string& content) const
    {
        fs::create_directories((home() / path).parent_path());
        std::ofstream{home() / path, std::ios::binary} << content;
        return path;
    }
    static std::string path_of(const std::string& content)
    {
        const auto digest = sha256_of(content);
        return "photos/" + digest.substr(0, 2) + "/" + digest + ".jpg";
    }
    std::map<std::string, FindingKind> found() const
    {
        const auto report = check_household(home());
        EXPECT_TRUE(report) << report.error().message;
        std::map<std::string, FindingKind> all;
        for (const auto& finding : report->findings) {
            all.emplace(finding.where, finding.kind);
        }
        return all;
    }
};

TEST_F(Checks, ASoundHouseholdHasNoFindings)
{
    const auto report = check_household(home());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->sound());
    EXPECT_TRUE(report->findings.empty());
    EXPECT_GT(report->schema, 0);
    EXPECT_FALSE(report->steps_due);
}

TEST_F(Checks, FindsWhatIsWrongWithPhotos)
{
    const auto listed = put(path_of("listed"), "listed");
    const auto altered = put(path_of("altered"), "something else");
    const auto unknown = put(path_of("unknown"), "unknown");
    {
        SQLite::Database database{file().string(), SQLite::OPEN_READWRITE};
        for (const char* content : {"listed", "altered", "missing"}) {
            database.exec("INSERT INTO photos (sha256, extension, size_bytes, width_px, height_px, taken_at, taken_from, "
                          "original_name, entered_at) VALUES ('" +
                          sha256_of(content) +
                          "', 'jpg', 1, 1, 1, '2027-01-01T12:00:00', 'given', 'x', '2027-01-01T00:00:00Z')");
        }
    }
    const auto all = found();
    EXPECT_EQ(all.at(path_of("missing")), FindingKind::PhotoMissing);
    EXPECT_EQ(all.at(altered), FindingKind::PhotoAltered);
    EXPECT_EQ(all.at(unknown), FindingKind::PhotoUnknown);
    EXPECT_FALSE(all.contains(listed));
    EXPECT_EQ(all.size(), 3U);
}

TEST_F(Checks, FindsAMeasurementWhosePhotoIsUnknown)
{
    const auto known = put(path_of("known"), "known");
    {
        SQLite::Database database{file().string(), SQLite::OPEN_READWRITE};
        database.exec("INSERT INTO photos (sha256, extension, size_bytes, width_px, height_px, taken_at, taken_from, "
                      "original_name, entered_at) VALUES ('" + sha256_of("known") +
                      "', 'jpg', 1, 1, 1, '2027-01-01T12:00:00', 'given', 'x', '2027-01-01T00:00:00Z')");
        int id = 80'000;
        for (const char* content : {"known", "lost", "undone"}) {
            database.exec("INSERT INTO measurements (id, plant_id, kind, unit, measured_on, time_zone, value, repeats, "
                          "method, measured_by, mix, photo_sha256, note, entered_at) VALUES (" + std::to_string(++id) +
                          ", 1, 'height', 'cm', '2027-01-01', '', 20, '[20]', 'photo', '', '', '" + sha256_of(content) +
                          "', '', '2027-01-01T00:00:00Z')");
        }
        database.exec("INSERT INTO measurement_undos (measurement_id, undone, entered_at) VALUES (80003, 1, "
                      "'2027-01-01T00:00:00Z')");
    }
    const auto report = check_household(home());
    ASSERT_TRUE(report) << report.error().message;
    ASSERT_EQ(report->findings.size(), 1U);
    EXPECT_EQ(report->findings.front().kind, FindingKind::MeasuredPhotoUnknown);
    EXPECT_EQ(report->findings.front().where, "measurements, row 80002");
    EXPECT_THAT(report->findings.front().what.text, HasSubstr(sha256_of("lost")));
    EXPECT_FALSE(report->sound());
}

TEST_F(Checks, AHouseholdFromBeforePhotosIsCheckedToo)
{
    {
        SQLite::Database database{file().string(), SQLite::OPEN_READWRITE};
        database.exec("DROP VIEW photos_that_count; DROP VIEW photo_plants_that_count; DROP VIEW plant_pictures_that_count; "
                      "DROP VIEW entry_states; DROP TABLE photo_undos; DROP TABLE photo_date_undos; "
                      "DROP TABLE photo_plant_undos; DROP TABLE photo_withdrawal_undos; DROP TABLE plant_picture_undos; "
                      "DROP TABLE plant_pictures; DROP TABLE photo_dates; DROP TABLE photo_plants; DROP TABLE photo_withdrawals; DROP TABLE photos; PRAGMA user_version = 10");
    }
    put(path_of("a"), "a");
    const auto report = check_household(home());
    ASSERT_TRUE(report) << report.error().message;
    EXPECT_TRUE(report->findings.empty());
    EXPECT_TRUE(report->steps_due);
    EXPECT_EQ(report->photos, 1U);
}

TEST_F(Checks, FindsWhatIsNotOursAndWhatIsLeftOver)
{
    put("letter.txt", "x");
    put("photos/holiday.jpg", "x");
    put("photos/ab/.incoming-77-0", "x");
    put(".household.77.part", "x");
    fs::create_symlink("/etc/passwd", home() / "photos" / "link.jpg");
    const auto all = found();
    EXPECT_EQ(all.at("photos/link.jpg"), FindingKind::FileUnknown);
    EXPECT_EQ(all.at("letter.txt"), FindingKind::FileUnknown);
    EXPECT_EQ(all.at("photos/holiday.jpg"), FindingKind::FileUnknown);
    EXPECT_EQ(all.at("photos/ab/.incoming-77-0"), FindingKind::LeftOver);
    EXPECT_EQ(all.at(".household.77.part"), FindingKind::LeftOver);
    EXPECT_TRUE(check_household(home())->sound()); // Nothing is lost.
}

TEST_F(Checks, FindsReferencesThatLeadNowhere)
{
    {
        SQLite::Database database{file().string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA foreign_keys = OFF");
        database.exec("INSERT INTO events (id, plant_id, kind, happened_on, entered_at, note) VALUES "
                      "(90001, 777, 'noted', '2027-01-01', '2027-01-01T00:00:00Z', '')");
    }
    const auto all = found();
    EXPECT_EQ(all.at("events, row 90001"), FindingKind::BrokenReference);
    EXPECT_FALSE(check_household(home())->sound());
}

TEST_F(Checks, FindsADamagedPageAndChangesNothing)
{
    {
        std::fstream stream{file(), std::ios::in | std::ios::out | std::ios::binary};
        stream.seekp(4096 * 4);
        stream << std::string(4096, '\x55');
    }
    const auto before = sha256_of_file(file()).value();
    const auto all = found();
    EXPECT_EQ(all.at("household.sqlite3"), FindingKind::DatabaseDamaged);
    EXPECT_EQ(sha256_of_file(file()).value(), before);
}

TEST_F(Checks, ATornDatabaseIsAFinding)
{
    fs::resize_file(file(), 50);
    EXPECT_EQ(found().at("household.sqlite3"), FindingKind::DatabaseDamaged);
}

TEST_F(Checks, WhatIsNoHouseholdIsAnError)
{
    EXPECT_EQ(check_household(folder_ / "none").error().code, ErrorCode::NotFound);
    EXPECT_EQ(check_household(folder_).error().code, ErrorCode::NotAHousehold);
    std::ofstream{file(), std::ios::trunc} << std::string(200, 'x');
    EXPECT_EQ(check_household(home()).error().code, ErrorCode::NotAHousehold);
}

TEST_F(Checks, CanBeStopped)
{
    put(path_of("a"), "a");
    EXPECT_EQ(check_household(home(), [](std::uint64_t, std::uint64_t) { return GoOn::No; }).error().code,
              ErrorCode::Unavailable);
}

} // namespace
} // namespace lathhouse::journal
