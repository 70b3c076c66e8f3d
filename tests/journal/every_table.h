#pragma once

#include "core/journal/database.h"
#include "core/journal/migrations.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::journal {

/// Rows that a household may have had from a version of the schema on.
struct RowsOfVersion {
    int version;
    const char* sql;
};

inline constexpr RowsOfVersion kRowsOfVersions[] = {
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

/// Makes a household's folder as a program of that version of the schema would have left it, with rows in every table.
inline void make_with_rows_up_to(const std::filesystem::path& home, int newest)
{
    std::filesystem::create_directories(home);
    const auto file = home / "household.sqlite3";
    SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    database.exec("PRAGMA foreign_keys = ON");
    database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
    for (int version = 1; version <= newest; ++version) {
        ASSERT_TRUE(bring_up_to_date(database, file, known_migrations().first(static_cast<std::size_t>(version))));
        for (const auto& rows : kRowsOfVersions) {
            if (rows.version == version) {
                database.exec(rows.sql);
            }
        }
    }
    database.exec("PRAGMA journal_mode = WAL");
    std::filesystem::remove_all(home / "backups");
}

} // namespace lathhouse::journal
