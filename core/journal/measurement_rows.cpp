#include "core/home/measurement.h"
#include "core/journal/household_store_inside.h"
#include "core/journal/row_reading.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>

namespace lathhouse::journal {
namespace {

std::string clock_text(std::chrono::minutes time)
{
    std::array<char, 8> text{};
    std::snprintf(text.data(), text.size(), "%02d:%02d", static_cast<int>(time.count() / 60 % 24),
                  static_cast<int>(time.count() % 60));
    return text.data();
}

/// `hh:mm`; nullopt for anything else, which the table's CHECK lets in nowhere but in a damaged file.
std::optional<std::chrono::minutes> clock_of(const std::string& text)
{
    const auto digit = [&](std::size_t place) { return text[place] >= '0' && text[place] <= '9'; };
    if (text.size() != 5 || text[2] != ':' || !digit(0) || !digit(1) || !digit(3) || !digit(4)) {
        return std::nullopt;
    }
    return std::chrono::hours{(text[0] - '0') * 10 + (text[1] - '0')} +
           std::chrono::minutes{(text[3] - '0') * 10 + (text[4] - '0')};
}

/// Errors: Damaged where it is no array of numbers.
Result<std::vector<double>> read_repeats(const std::string& text)
{
    const auto json = nlohmann::json::parse(text, nullptr, false);
    std::vector<double> repeats;
    if (!json.is_array() || json.empty()) {
        return Error{ErrorCode::Damaged, said("no readings: %1", text)};
    }
    for (const auto& one : json) {
        if (!one.is_number()) {
            return Error{ErrorCode::Damaged, said("no number: %1", text)};
        }
        repeats.push_back(one.get<double>());
    }
    return repeats;
}

} // namespace

Result<home::Measurement> measurement_in(SQLite::Statement& rows, const std::filesystem::path& file)
{
    const auto kind = home::measurement_kind_of(rows.getColumn(2).getString());
    const auto measured = calendar::parse_date(rows.getColumn(3).getString());
    auto repeats = read_repeats(rows.getColumn(6).getString());
    const auto method = home::measurement_method_of(rows.getColumn(7).getString());
    const auto entered = read_instant(rows.getColumn(13).getString());
    const bool has_time = !rows.getColumn(4).isNull();
    const auto time = has_time ? clock_of(rows.getColumn(4).getString()) : std::nullopt;
    if (!kind || !measured || !repeats || !method || !entered || has_time != time.has_value()) {
        return Error{ErrorCode::Damaged, said("%1 is damaged (a measurement of %2 cannot be read); restore a backup",
                                              file.string(), rows.getColumn(3).getString())};
    }
    home::Measurement measurement{.plant = rows.getColumn(1).getInt(),
                                  .kind = *kind,
                                  .measured = *measured,
                                  .repeats = std::move(*repeats),
                                  .method = *method,
                                  .entered = *entered,
                                  .time_zone = rows.getColumn(5).getString(),
                                  .by = rows.getColumn(8).getString(),
                                  .mix = rows.getColumn(10).getString(),
                                  .note = rows.getColumn(12).getString(),
                                  .id = rows.getColumn(0).getInt()};
    measurement.time = time;
    if (!rows.getColumn(9).isNull()) {
        measurement.pot = Litres::from_litres(rows.getColumn(9).getDouble());
    }
    if (!rows.getColumn(11).isNull()) {
        measurement.photo = rows.getColumn(11).getString();
    }
    return measurement;
}

const char* const kMeasurementColumns = "SELECT id, plant_id, kind, measured_on, measured_time, time_zone, repeats, method, "
                                        "measured_by, pot_litres, mix, photo_sha256, note, entered_at ";

Result<home::Measurement> measurement_of(SQLite::Database& database, const std::filesystem::path& file, int id)
{
    SQLite::Statement row{database, std::string{kMeasurementColumns} + "FROM measurements WHERE id = ?"};
    row.bind(1, id);
    if (!row.executeStep()) {
        return Error{ErrorCode::Damaged,
                     said("%1 is damaged (measurement %2 is missing); restore a backup", file.string(), id)};
    }
    return measurement_in(row, file);
}

Result<std::vector<home::Measurement>> HouseholdStore::measurements(std::optional<home::PlantId> plant,
                                                                    std::optional<home::MeasurementKind> kind) const
{
    // The plant stands in the text of the query, so that its index is used.
    std::string query = std::string{kMeasurementColumns} + "FROM measurements_that_count ";
    if (plant) {
        query += kind ? "WHERE plant_id = ?1 AND kind = ?2 " : "WHERE plant_id = ?1 ";
    } else if (kind) {
        query += "WHERE kind = ?2 ";
    }
    query += "ORDER BY measured_on, coalesce(measured_time, '12:00'), id";
    try {
        SQLite::Statement rows{inside_->database, query};
        if (plant) {
            rows.bind(1, *plant);
        }
        if (kind) {
            rows.bind(2, std::string{home::to_string(*kind)});
        }
        std::vector<home::Measurement> measurements;
        while (rows.executeStep()) {
            auto measurement = measurement_in(rows, inside_->file);
            if (!measurement) {
                return measurement.error();
            }
            measurements.push_back(std::move(*measurement));
        }
        return measurements;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<std::vector<home::MeasurementId>> HouseholdStore::record(std::span<const home::Measurement> measurements)
{
    for (const auto& measurement : measurements) {
        if (const auto sound = home::check(measurement); !sound) {
            return sound.error();
        }
    }
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement statement{inside_->database,
                                    "INSERT INTO measurements (plant_id, kind, unit, measured_on, measured_time, "
                                    "time_zone, value, repeats, method, measured_by, pot_litres, mix, photo_sha256, "
                                    "note, entered_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"};
        std::vector<home::MeasurementId> ids;
        for (const auto& one : measurements) {
            Row row{statement};
            row << one.plant << std::string{home::to_string(one.kind)}
                << std::string{home::to_string(home::unit_of(one.kind))} << calendar::to_text(one.measured);
            row << (one.time ? std::optional{clock_text(*one.time)} : std::nullopt) << one.time_zone << one.value()
                << nlohmann::json(one.repeats).dump() << std::string{home::to_string(one.method)} << one.by
                << (one.pot ? std::optional{one.pot->litres()} : std::nullopt) << one.mix << one.photo << one.note
                << calendar::to_text(one.entered);
            row.insert();
            ids.push_back(static_cast<home::MeasurementId>(inside_->database.getLastInsertRowid()));
        }
        transaction.commit();
        return ids;
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::NotFound,
                         said("nothing was recorded in %1; a plant that was measured is not in the household",
                              inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
