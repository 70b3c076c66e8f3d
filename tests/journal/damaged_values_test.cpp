#include "core/home/seed_lot.h"
#include "core/journal/household_holdings.h"
#include "core/journal/household_store.h"
#include "core/journal/last_backup.h"
#include "core/journal/leading_measures.h"
#include "core/journal/photo_book.h"
#include "core/journal/plant_page.h"
#include "tests/journal/every_table.h"
#include "tests/journal/short_names.h"
#include "tests/journal/temporary_folder.h"

#include <gmock/gmock.h>

#include <functional>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace lathhouse::journal {
namespace {

using testing::HasSubstr;

/// Values that a disk, or a program that knows nothing of ours, may have put there behind the rules of the tables.
const std::vector<std::string> kTexts{"", "nonsense", "[\"x\"]", "9", "2025-13-41", "9999999-01-01"};
const std::vector<std::string> kNumbers{"-1", "77777777"};
const std::vector<std::string> kReals{"-1e300", "1e300"};

class DamagedValues : public WithFolder {
protected:
    DamagedValues()
    {
        make_with_rows_up_to(folder_ / "whole", known_migrations().back().version);
        begin_anew();
        // Something in the columns that the rows of every version leave empty.
        by_another_->exec("UPDATE measurements SET measured_time = '09:30', time_zone = 'Europe/Budapest', pot_litres = 4, "
                          "photo_sha256 = (SELECT min(sha256) FROM photos)");
    }
    std::filesystem::path home() const { return folder_ / "home"; }
    void begin_anew()
    {
        store_.reset();
        by_another_.reset();
        std::filesystem::remove_all(home());
        std::filesystem::copy(folder_ / "whole", home(), std::filesystem::copy_options::recursive);
        store_.emplace(HouseholdStore::open(home()).value());
        by_another_.emplace((home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE);
        by_another_->exec("PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF; PRAGMA synchronous = OFF");
    }

    /// Everything that can be read of a household, each with its first error.
    std::map<std::string, Error> refusals() const
    {
        std::map<std::string, Error> all;
        const auto take = [&](const char* what, const auto& read) {
            if (!read) {
                all.emplace(what, read.error());
            }
        };
        const auto& store = *store_;
        PhotoBook book{*store_};
        take("household", store.load());
        take("events", store.events());
        take("events of a plant", store.events(1));
        take("gone", store.gone_plants());
        take("descents", store.descents());
        for (const int plant : {1, 7, 8}) {
            take("stays", store.stays(plant));
            take("page", read_plant_page(home(), plant, {}));
        }
        take("log", store.night_log());
        take("seeds", store.seeds());
        take("measurements", store.measurements());
        take("measurements of a plant", store.measurements(1, home::MeasurementKind::Height));
        take("leading", leading_measurements(store));
        take("jugs", store.jugs());
        take("plan", store.accepted_plan());
        take("photos", book.photos());
        take("pictures", book.pictures());
        take("last plant", book.last_plant());
        take("holdings", holdings_of(home()));
        take("last backup", last_backup_of(home()));
        return all;
    }
    struct Column {
        std::string table;
        std::string name;
        std::string type;
    };
    std::vector<Column> columns() const
    {
        std::vector<Column> all;
        SQLite::Statement rows{*by_another_, "SELECT t.name, c.name, c.type FROM sqlite_schema t, pragma_table_info(t.name) c WHERE "
                                             "t.type = 'table' AND t.name NOT LIKE 'sqlite_%'"};
        while (rows.executeStep()) {
            all.push_back({rows.getColumn(0).getString(), rows.getColumn(1).getString(), rows.getColumn(2).getString()});
        }
        return all;
    }
    /// Has `look` look at the household while every row of the table has that value there.
    void with_value(const Column& column, const std::string& value, const std::function<void()>& look)
    {
        by_another_->exec("BEGIN IMMEDIATE");
        SQLite::Statement change{*by_another_, "UPDATE OR IGNORE " + column.table + " SET " + column.name + " = ?"};
        if (column.type == "TEXT") {
            change.bind(1, value);
        } else if (column.type == "REAL") {
            change.bind(1, std::stod(value));
        } else {
            change.bind(1, static_cast<std::int64_t>(std::stoll(value)));
        }
        change.exec();
        change.reset();
        by_another_->exec("COMMIT");
        look();
    }

    mutable std::optional<HouseholdStore> store_;
    mutable std::optional<SQLite::Database> by_another_;
};

TEST_F(DamagedValues, AreRefusedWithASentenceOrReadAsTheyAreAndNeverMore)
{
    ASSERT_TRUE(refusals().empty()) << refusals().begin()->second.message;
    const auto whole = folder_ / "whole.sqlite3";
    by_another_->exec("VACUUM INTO '" + whole.string() + "'");
    by_another_->exec("ATTACH '" + whole.string() + "' AS whole");
    std::set<std::string> refused; // Columns.
    int values = 0;
    for (const auto& column : columns()) {
        const auto& damage = column.type == "TEXT" ? kTexts : column.type == "REAL" ? kReals : kNumbers;
        for (const auto& value : damage) {
            ++values;
            with_value(column, value, [&] {
                for (const auto& [what, error] : refusals()) {
                    refused.insert(column.table + "." + column.name);
                    EXPECT_EQ(error.code, ErrorCode::Damaged) << what << ": " << error.message;
                    EXPECT_THAT(error.message, HasSubstr("restore a backup")) << column.table << "." << column.name << " " << what;
                }
            });
            by_another_->exec("BEGIN IMMEDIATE; DELETE FROM main." + column.table + "; INSERT INTO main." + column.table +
                              " SELECT * FROM whole." + column.table + "; DELETE FROM main.entries; INSERT INTO main.entries " +
                              "SELECT * FROM whole.entries; COMMIT");
        }
        const auto after = refusals();
        ASSERT_TRUE(after.empty()) << column.table << "." << column.name << ": " << after.begin()->second.message;
    }
    EXPECT_GT(values, 300);
    // Every date and moment that is shown somewhere is among them.
    for (const char* column : {"events.happened_on", "events.entered_at", "events.details", "events.kind", "readings.night_of",
                               "readings.entered_at", "forecasts.issued_on", "forecasts.entered_at", "own_record.imported_on",
                               "own_record.latitude_degrees", "own_record_days.happened_on", "planned_stays.from_on",
                               "planned_stays.planned_at", "measurements.kind", "measurements.measured_time", "measurements.repeats",
                               "measurements.method", "measurements.entered_at", "photo_dates.taken_at", "photos.entered_at",
                               "jugs.volume_litres", "household.latitude_degrees"}) {
        EXPECT_TRUE(refused.contains(column)) << column;
    }
}

TEST_F(DamagedValues, WhatIsGoneIsMissed)
{
    for (const char* table : {"household", "own_record_days", "spots", "photos"}) {
        const auto whole = folder_ / (std::string{table} + ".sqlite3");
        by_another_->exec("VACUUM INTO '" + whole.string() + "'");
        by_another_->exec(std::string{"DELETE FROM "} + table);
        for (const auto& [what, error] : refusals()) {
            EXPECT_TRUE(error.code == ErrorCode::Damaged || error.code == ErrorCode::NotFound) << what << ": " << error.message;
        }
        if (std::string{table} == "household" || std::string{table} == "own_record_days") {
            EXPECT_EQ(store_->load().error().code, ErrorCode::Damaged) << table;
        }
        by_another_->exec("ATTACH '" + whole.string() + "' AS whole");
        by_another_->exec("INSERT INTO main." + std::string{table} + " SELECT * FROM whole." + table + "; DETACH whole");
        ASSERT_TRUE(store_->load()) << table;
    }
}

TEST_F(DamagedValues, UndoOfWhatCannotBeReadChangesNothing)
{
    // Each kind of entry in turn is the last one, and what it names is odd or gone.
    struct Case {
        const char* kind;
        const char* damage;
    };
    for (const auto& [kind, damage] :
         {Case{"event", "UPDATE events SET details = '[' WHERE id = (SELECT max(id) FROM events)"},
          Case{"event", "UPDATE changed_rows SET before = '{'"}, Case{"event", "DELETE FROM events WHERE id = (SELECT max(id) FROM events)"},
          Case{"measurement", "UPDATE measurements SET kind = 'guess'"}, Case{"measurement", "DELETE FROM measurements"},
          Case{"reading", "UPDATE readings SET entered_at = 'then'"}, Case{"reading", "DELETE FROM readings"},
          Case{"photo", "UPDATE photos SET taken_at = 'then'"}, Case{"photo", "UPDATE photos SET entered_at = 'then'"},
          Case{"photo", "DELETE FROM photos"}, Case{"photo_plant", "DELETE FROM photo_plants"},
          Case{"plant_picture", "UPDATE plant_pictures SET photo_id = 999"}, Case{"dream", "SELECT 1"}}) {
        by_another_->exec("BEGIN IMMEDIATE");
        const std::string table = std::string{kind} == "reading" ? "readings" : std::string{kind} == "measurement" ? "measurements"
                                  : std::string{kind} == "photo" ? "photos" : std::string{kind} == "photo_plant" ? "photo_plants"
                                  : std::string{kind} == "plant_picture" ? "plant_pictures" : "events";
        const std::string row = std::string{damage}.find("changed_rows") != std::string::npos ? "SELECT 40" : "SELECT max(id) FROM " + table;
        by_another_->exec("INSERT INTO entries (kind, row_id) VALUES ('" + std::string{kind} + "', (" + row + "))");
        by_another_->exec(damage);
        by_another_->exec("COMMIT");
        const auto entries = by_another_->execAndGet("SELECT count(*) FROM entry_states WHERE undone = 0").getInt();
        const auto turned = store_->turn_last(kUndo, calendar::start_of_day_utc(kDate));
        ASSERT_FALSE(turned) << kind << ": " << damage;
        EXPECT_EQ(turned.error().code, ErrorCode::Damaged) << turned.error().message;
        EXPECT_EQ(by_another_->execAndGet("SELECT count(*) FROM entry_states WHERE undone = 0").getInt(), entries) << damage;
        begin_anew();
    }
}

} // namespace
} // namespace lathhouse::journal
