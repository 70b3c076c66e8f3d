#include "core/home/measurement.h"
#include "core/home/seed_lot.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "core/journal/photo_book.h"
#include "tests/journal/temporary_folder.h"

#include <algorithm>
#include <fstream>
#include <thread>

namespace lathhouse::journal {
namespace {

/// Rows that a household may have had from a version of the schema on.
struct Rows {
    int version;
    const char* sql;
};

constexpr Rows kRows[] = {
    {1, "INSERT INTO household VALUES (1, 'Ours', 0, 'Town', 48.2, 20.8, 170, 'Europe/Budapest');"
        "INSERT INTO spots (id, name, short_name, kind, offset_kelvin, offset_spread_kelvin, winter_celsius, "
        "summer_celsius, light_in_summer_moles, light_in_winter_moles, capacity_pots, in_reach, walking_order) VALUES "
        "(3, 'Sill', 'Sill', 'indoors', 0, 0, 18, 22, 9, 4, 5, 0, 1), (4, 'Rail', 'Rail', 'open', 0, 1, NULL, NULL, "
        "40, 6, 5, 0, 2);"
        "INSERT INTO plants (id, name, kind, lethal_celsius, damage_celsius, safe_night_celsius, heat_limit_celsius, "
        "light_to_survive_moles, light_to_thrive_moles, must_dry, hazardous, sulks, pot_kilograms, spot_id) VALUES "
        "(1, 'Lemon', 'Citrus limon', -3, 0, 5, 38, 5, 20, 0, 0, 0, 4, 3), (7, 'Olive', 'Olea europaea', -9, -5, 0, "
        "40, 8, 25, 0, 0, 0, 9, 4);"
        "INSERT INTO events (id, plant_id, kind, spot_id, happened_on, entered_at, note) VALUES "
        "(2, 1, 'moved', 3, '2025-05-01', '2025-05-01T06:00:00Z', 'first'), "
        "(5, 1, 'watered', NULL, '2025-05-02', '2025-05-02T06:00:00Z', 'by hand'), "
        "(9, 7, 'moved', 4, '2025-05-03', '2020-01-01T00:00:00Z', 'the clock stood wrong');"
        "INSERT INTO planned_stays VALUES (1, 1, 4, '2025-05-20', '2025-09-10', '', '2025-05-04T06:00:00Z');"},
    {3, "INSERT INTO readings VALUES (1, 4, '2025-05-04', 3.5, NULL, 'clear', 'calm', NULL, '2025-05-04T06:00:00Z', ''),"
        " (2, 4, '2025-05-04', 3.0, NULL, 'clear', 'calm', NULL, '2025-05-04T07:00:00Z', 'read again');"
        "INSERT INTO forecasts VALUES (1, '2025-05-03', '2025-05-04', 2.5, '', '', NULL, '2025-05-03T16:00:00Z');"},
    {4, "INSERT INTO own_record VALUES (1, 'Station', '', 'days.csv', 48.3, 20.7, 160, '2025-06-01');"
        "INSERT INTO own_record_days VALUES ('2020-01-01', -50, 10, NULL);"},
    {5, "INSERT INTO spot_views VALUES (3, 'opening', 180, 1.2, 1.4, 0, 0.3, 0, 0, 8, 0, 2, 0.7);"},
    {6, "INSERT INTO events (id, plant_id, kind, spot_id, happened_on, entered_at, note, details) VALUES "
        "(20, 1, 'pest_found', NULL, '2025-06-01', '2025-06-01T06:00:00Z', '', '{\"pest\":\"mealybug\"}'), "
        "(21, 1, 'fed', NULL, '2025-06-02', '2025-06-02T06:00:00Z', 'undone', '{}');"
        "INSERT INTO event_undos VALUES (1, 21, 1, '2025-06-02T07:00:00Z');"},
    {7, "INSERT INTO pins VALUES (1, 7, 4, '2025-06-01', '2025-08-01', '2025-06-01T06:00:00Z', NULL);"},
    {8, "INSERT INTO jugs VALUES (1, 'Can', 9, '2025-06-01T06:00:00Z');"},
    {9, "INSERT INTO events (id, kind, spot_id, happened_on, entered_at, note) VALUES "
        "(30, 'noted', NULL, '2026-02-01', '2026-02-01T06:00:00Z', 'a packet'), "
        "(31, 'sown', 3, '2026-03-01', '2026-03-01T06:00:00Z', ''), "
        "(32, 'emerged', 3, '2026-03-09', '2026-03-09T06:00:00Z', '');"
        "INSERT INTO seed_lots VALUES (1, 30, 'Basil', 'Ocimum basilicum', 2025, 70, 100);"
        "INSERT INTO trays VALUES (1, 31, 1, 20, 22);"
        "INSERT INTO tray_counts VALUES (1, 32, 1, 14, 1);"
        "INSERT INTO plants (id, name, kind, lethal_celsius, damage_celsius, safe_night_celsius, heat_limit_celsius, "
        "light_to_survive_moles, light_to_thrive_moles, must_dry, hazardous, sulks, pot_kilograms, spot_id, "
        "from_tray_id) VALUES (8, 'Basil', 'Ocimum basilicum', 0, 4, 10, 38, 5, 20, 0, 0, 0, 1, 3, 1);"},
    {10, "INSERT INTO measurements (id, plant_id, kind, unit, measured_on, time_zone, value, repeats, method, "
         "measured_by, mix, note, entered_at) VALUES (4, 1, 'height', 'cm', '2026-04-01', '', 43.5, '[43.4,43.6]', "
         "'ruler', '', '', '', '2026-04-01T06:00:00Z');"},
    {11, "INSERT INTO photos (id, sha256, extension, size_bytes, width_px, height_px, taken_at, taken_from, "
         "original_name, entered_at) VALUES (6, "
         "'6b752a24800f687461413179918b18b93b11a6e3b72cdf27efdbac90fde4d311', 'jpg', 7, 40, 30, "
         "'2026-04-02T12:00:00', 'given', 'a.jpg', '2026-04-02T12:00:00Z'), (7, "
         "'0f6e5a4dd5a3cb7c2c0de1de1bd4f0b3a3e8f3df2c8cf0b7ca5ad0e6b9f0a511', 'jpg', 7, 40, 30, "
         "'2026-04-03T12:00:00', 'given', 'b.jpg', '2026-04-03T12:00:00Z');"
         "INSERT INTO photo_plants (id, photo_id, plant_id, shows, entered_at) VALUES "
         "(3, 6, 1, 1, '2026-04-02T12:00:00Z'), (4, 6, 7, 1, '2026-04-02T12:00:00Z'), "
         "(5, 6, 7, 0, '2026-04-02T13:00:00Z');"
         "INSERT INTO photo_dates (id, photo_id, taken_at, entered_at) VALUES "
         "(1, 6, '2026-04-01T09:00:00', '2026-04-02T14:00:00Z');"
         "INSERT INTO photo_withdrawals (id, photo_id, withdrawn, entered_at) VALUES (1, 7, 1, '2026-04-03T13:00:00Z');"},
    {12, "INSERT INTO plant_pictures (id, plant_id, photo_id, entered_at) VALUES (1, 1, 6, '2026-04-05T12:00:00Z');"
         "INSERT INTO entries (kind, row_id) VALUES ('plant_picture', 1);"},
    {13, "INSERT INTO events (id, kind, happened_on, entered_at, note) VALUES (40, 'noted', '2026-04-02', "
         "'2026-04-02T06:00:00Z', 'Took Attic off the list');"
         "INSERT INTO spots (id, name, short_name, kind, offset_kelvin, offset_spread_kelvin, light_in_summer_moles, "
         "light_in_winter_moles, capacity_pots, in_reach, walking_order, gone) VALUES (9, 'Attic (9, off the list)', "
         "'Attic', 'open', 0, 1, 40, 6, 5, 0, 3, 1);"
         "INSERT INTO changed_rows VALUES (1, 40, 'spots', 9, '{\"gone\":0}', '{\"gone\":1}');"},
    {14, "INSERT INTO events (id, kind, happened_on, entered_at, note) VALUES (41, 'noted', '2026-04-03', "
         "'2026-04-03T06:00:00Z', 'Olive stays on the balcony');"
         "INSERT INTO pin_changes VALUES (1, 41, 1, 1);"},
};

class EveryVersion : public WithFolder, public testing::WithParamInterface<int> {
protected:
    std::filesystem::path home() const { return folder_ / "home"; }
    void make() const
    {
        std::filesystem::create_directories(home());
        const auto file = home() / "household.sqlite3";
        SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        database.exec("PRAGMA foreign_keys = ON");
        database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
        for (int version = 1; version <= GetParam(); ++version) {
            ASSERT_TRUE(bring_up_to_date(database, file, known_migrations().first(static_cast<std::size_t>(version))));
            for (const auto& rows : kRows) {
                if (rows.version == version) {
                    database.exec(rows.sql);
                }
            }
        }
        database.exec("PRAGMA journal_mode = WAL");
        std::filesystem::remove_all(home() / "backups");
    }
    std::vector<int> ids(const HouseholdStore& store) const
    {
        std::vector<int> found;
        const auto events = store.events();
        EXPECT_TRUE(events);
        for (const auto& event : *events) {
            found.push_back(*event.id);
        }
        return found;
    }
};

TEST_P(EveryVersion, KeepsWhatWasWritten)
{
    make();
    auto store = HouseholdStore::open(home());
    ASSERT_TRUE(store) << store.error().message;
    const auto household = store->load();
    ASSERT_TRUE(household) << household.error().message;
    const int version = GetParam();
    EXPECT_EQ(household->plants.size(), version >= 9 ? 3U : 2U);
    EXPECT_EQ(household->plant(1)->spot, 3);
    std::vector expected{2, 5, 9};
    if (version >= 6) {
        expected.push_back(20);
    }
    if (version >= 9) {
        expected.insert(expected.end(), {30, 31, 32});
    }
    if (version >= 13) {
        expected.push_back(40);
    }
    if (version >= 14) {
        expected.push_back(41);
    }
    EXPECT_EQ(ids(*store), expected);
    const auto stays = store->stays(1);
    ASSERT_TRUE(stays);
    ASSERT_EQ(stays->actual.size(), 1U);
    EXPECT_EQ(stays->planned.size(), 1U);
    const auto log = store->night_log();
    ASSERT_TRUE(log);
    ASSERT_EQ(log->readings.size(), version >= 3 ? 1U : 0U);
    if (version >= 3) {
        EXPECT_EQ(log->readings.front().note, "read again");
        EXPECT_EQ(log->forecasts.size(), 1U);
    }
    EXPECT_EQ(household->own_record != nullptr, version >= 4);
    EXPECT_EQ(household->spot(3)->view.has_value(), version >= 5);
    EXPECT_EQ(household->pins.size(), version >= 7 ? 1U : 0U);
    EXPECT_EQ(store->jugs()->size(), version >= 8 ? 1U : 0U);
    EXPECT_EQ(store->seeds()->counts.size(), version >= 9 ? 1U : 0U);
    EXPECT_EQ(store->measurements()->size(), version >= 10 ? 1U : 0U);
    const auto photos = PhotoBook{*store}.photos();
    ASSERT_TRUE(photos) << photos.error().message;
    ASSERT_EQ(photos->size(), version >= 11 ? 1U : 0U);
    if (version >= 11) {
        EXPECT_EQ(photos->front().plants, std::vector{1});
        EXPECT_EQ(photos->front().date(), (calendar::Date{2026, 4, 1}));
    }
    EXPECT_EQ(PhotoBook{*store}.pictures()->size(), version >= 12 ? 1U : 0U);
    EXPECT_EQ(household->spot(9), nullptr); // Off the list from 13 on.
}

TEST_P(EveryVersion, ComesBackFromABackupOfItsTimeAndIsSteppedUpThen)
{
    make();
    std::filesystem::create_directories(home() / "photos" / "6b");
    const std::string photo = "photos/6b/6b752a24800f687461413179918b18b93b11a6e3b72cdf27efdbac90fde4d311.jpg";
    std::ofstream{home() / photo, std::ios::binary} << "pixels\n";
    const auto archive = folder_ / "kept.zip";
    const auto made = back_up(home(), archive, Existing::Refused, calendar::Date{2026, 5, 1});
    ASSERT_TRUE(made) << made.error().message;
    const auto restored = restore(archive, folder_ / "new");
    ASSERT_TRUE(restored) << restored.error().message;
    const auto version_in = [](const std::filesystem::path& folder) {
        SQLite::Database database{(folder / "household.sqlite3").string()};
        return database.execAndGet("PRAGMA user_version").getInt();
    };
    EXPECT_EQ(version_in(home()), GetParam()); // Neither backing up nor restoring takes a step.
    EXPECT_EQ(version_in(folder_ / "new"), GetParam());
    const auto store = HouseholdStore::open(folder_ / "new");
    ASSERT_TRUE(store) << store.error().message;
    EXPECT_EQ(version_in(folder_ / "new"), known_migrations().back().version);
    const auto original = HouseholdStore::open(home());
    ASSERT_TRUE(original) << original.error().message;
    EXPECT_EQ(ids(*store), ids(*original));
    EXPECT_EQ(store->load()->plants.size(), original->load()->plants.size());
    EXPECT_EQ(store->night_log()->readings.size(), original->night_log()->readings.size());
    EXPECT_EQ(*store->measurements(), *original->measurements());
    EXPECT_TRUE(std::filesystem::exists(folder_ / "new" / photo));
}

TEST_P(EveryVersion, IsCopiedBeforeItIsChanged)
{
    make();
    ASSERT_TRUE(HouseholdStore::open(home()));
    const auto copy = home() / "backups" / ("before-schema-" + std::to_string(GetParam() + 1) + ".sqlite3");
    if (GetParam() == known_migrations().back().version) {
        EXPECT_FALSE(std::filesystem::exists(home() / "backups"));
        return;
    }
    SQLite::Database kept{copy.string()};
    EXPECT_EQ(kept.execAndGet("PRAGMA user_version").getInt(), GetParam());
    EXPECT_EQ(kept.execAndGet("PRAGMA integrity_check").getString(), "ok");
    EXPECT_GE(kept.execAndGet("SELECT count(*) FROM events").getInt(), 3);
}

TEST_P(EveryVersion, HoldsItsRulesAfterwards)
{
    make();
    ASSERT_TRUE(HouseholdStore::open(home()));
    SQLite::Database database{(home() / "household.sqlite3").string()};
    EXPECT_EQ(database.execAndGet("PRAGMA integrity_check").getString(), "ok");
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt(), 0);
}

TEST_P(EveryVersion, UndoesInTheOrderOfEntryThoughAClockStoodWrong)
{
    make();
    auto store = HouseholdStore::open(home()).value();
    const auto now = calendar::start_of_day_utc(calendar::Date{2026, 5, 1});
    const auto last = store.turn_last(HouseholdStore::Direction::Undo, now);
    ASSERT_TRUE(last) << last.error().message;
    ASSERT_TRUE(*last);
    if (GetParam() >= 14) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 41);
        EXPECT_TRUE(store.load()->pins.empty());
    } else if (GetParam() >= 13) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 40);
        EXPECT_NE(store.load()->spot(9), nullptr);
    } else if (GetParam() >= 12) {
        EXPECT_EQ(std::get<home::PhotoChange>(**last).kind, home::PhotoChangeKind::Chosen);
        EXPECT_TRUE(PhotoBook{store}.pictures()->empty());
    } else if (GetParam() >= 10) { // Photos of version 11 are in no order of entry.
        EXPECT_EQ(std::get<home::Measurement>(**last).id, 4);
    } else if (GetParam() >= 9) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 32);
    } else if (GetParam() >= 6) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 20);
    } else if (GetParam() >= 3) {
        EXPECT_EQ(std::get<home::Reading>(**last).note, "read again");
        EXPECT_EQ(store.night_log()->readings.front().low, Celsius::from_degrees(3.5));
    } else {
        EXPECT_EQ(std::get<home::Event>(**last).id, 9);
    }
}

TEST_P(EveryVersion, MayBeOpenedByTwoAtOnce)
{
    make();
    std::vector<std::optional<Error>> errors(2);
    std::vector<std::thread> programs;
    for (auto& error : errors) {
        programs.emplace_back([&error, this] {
            if (const auto store = HouseholdStore::open(home()); !store) {
                error = store.error();
            }
        });
    }
    for (auto& program : programs) {
        program.join();
    }
    for (const auto& error : errors) {
        EXPECT_FALSE(error) << error->message;
    }
}

INSTANTIATE_TEST_SUITE_P(Schema, EveryVersion,
                         testing::Range(1, static_cast<int>(known_migrations().size()) + 1));

} // namespace
} // namespace lathhouse::journal
