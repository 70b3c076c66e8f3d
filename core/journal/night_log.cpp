#include "core/journal/household_store_inside.h"

#include "core/home/night_log_file.h"

#include <algorithm>
#include <string_view>

namespace lathhouse::journal {
namespace {

std::string word_of(std::optional<climate::Sky> sky)
{
    return sky ? std::string{home::to_string(*sky)} : std::string{};
}

std::string word_of(std::optional<climate::Wind> wind)
{
    return wind ? std::string{home::to_string(*wind)} : std::string{};
}

climate::NightWeather weather_in(const SQLite::Column& sky, const SQLite::Column& wind)
{
    return {home::sky_of(sky.getString()), home::wind_of(wind.getString())};
}

Error unreadable_row(const std::filesystem::path& file, const Said& what)
{
    return {ErrorCode::Damaged, said("%1 is damaged (%2 cannot be read); restore a backup", file.string(), what)};
}

const std::string kReadingColumns = "SELECT spot_id, night_of, low_celsius, high_celsius, sky, wind, "
                                    "station_low_celsius, entered_at, note ";

/// The reading of the statement's present row. Errors: Damaged.
Result<home::Reading> reading_in(SQLite::Statement& rows, const std::filesystem::path& file)
{
    const auto night = calendar::parse_date(rows.getColumn(1).getString());
    const auto entered = read_instant(rows.getColumn(7).getString());
    if (!night || !entered) {
        return unreadable_row(file, said("a reading of %1", rows.getColumn(1).getString()));
    }
    return home::Reading{rows.getColumn(0).getInt(),
                         *night,
                         Celsius::from_degrees(rows.getColumn(2).getDouble()),
                         celsius_in(rows.getColumn(3)),
                         weather_in(rows.getColumn(4), rows.getColumn(5)),
                         celsius_in(rows.getColumn(6)),
                         *entered,
                         rows.getColumn(8).getString()};
}

} // namespace

Result<home::Reading> reading_of(SQLite::Database& database, const std::filesystem::path& file, int id)
{
    SQLite::Statement row{database, kReadingColumns + "FROM readings WHERE id = ?"};
    row.bind(1, id);
    if (!row.executeStep()) {
        return unreadable_row(file, said("reading %1", id));
    }
    return reading_in(row, file);
}

Result<calendar::Instant> read_instant(const std::string& text)
{
    // Rows of a damaged file need not keep to the rules of their table.
    constexpr std::string_view kForm = "0000-00-00T00:00:00Z";
    const auto as_the_form = [](char letter, char form) {
        return form == '0' ? letter >= '0' && letter <= '9' : letter == form;
    };
    if (!std::ranges::equal(text, kForm, as_the_form)) {
        return Error{ErrorCode::Malformed, said("no moment: %1", text.substr(0, 40))};
    }
    const auto date = calendar::parse_date(std::string_view{text}.substr(0, 10));
    if (!date) {
        return date.error();
    }
    const auto two_digits = [&](std::size_t place) {
        return (text[place] - '0') * 10 + (text[place + 1] - '0');
    };
    return calendar::start_of_day_utc(*date) + std::chrono::hours{two_digits(11)} +
           std::chrono::minutes{two_digits(14)} + std::chrono::seconds{two_digits(17)};
}

Result<home::NightLog> HouseholdStore::night_log() const
{
    try {
        SQLite::Transaction transaction{inside_->database}; // Both tables as they were at one moment.
        home::NightLog log;
        SQLite::Statement readings{inside_->database, kReadingColumns +
                                                          "FROM readings_that_count ORDER BY night_of, spot_id"};
        while (readings.executeStep()) {
            auto reading = reading_in(readings, inside_->file);
            if (!reading) {
                return reading.error();
            }
            log.readings.push_back(std::move(*reading));
        }
        SQLite::Statement forecasts{inside_->database,
                                    "SELECT issued_on, night_of, low_celsius, sky, wind, "
                                    "dew_point_celsius, entered_at FROM forecasts_that_count "
                                    "ORDER BY night_of, issued_on"};
        while (forecasts.executeStep()) {
            const auto issued = calendar::parse_date(forecasts.getColumn(0).getString());
            const auto night = calendar::parse_date(forecasts.getColumn(1).getString());
            const auto entered = read_instant(forecasts.getColumn(6).getString());
            if (!issued || !night || !entered) {
                return unreadable_row(inside_->file, said("a forecast of %1", forecasts.getColumn(1).getString()));
            }
            log.forecasts.push_back({*issued, *night,
                                     Celsius::from_degrees(forecasts.getColumn(2).getDouble()),
                                     weather_in(forecasts.getColumn(3), forecasts.getColumn(4)),
                                     celsius_in(forecasts.getColumn(5)), *entered});
        }
        return log;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::record(std::span<const home::Reading> readings)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement statement{
            inside_->database, "INSERT INTO readings (spot_id, night_of, low_celsius, high_celsius, sky, "
                               "wind, station_low_celsius, entered_at, note) "
                               "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"};
        for (const auto& reading : readings) {
            (Row{statement} << reading.spot << calendar::to_text(reading.night) << reading.low.degrees()
                            << degrees_of(reading.high) << word_of(reading.weather.sky)
                            << word_of(reading.weather.wind) << degrees_of(reading.station_low)
                            << calendar::to_text(reading.entered) << reading.note)
                .insert();
        }
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::NotFound, said("nothing was logged in %1; a spot is not in the household, or a "
                                                   "temperature lies outside -90 to 60 degrees Celsius",
                                                   inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::record(std::span<const home::KeptForecast> forecasts)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement statement{inside_->database,
                                    "INSERT INTO forecasts (issued_on, night_of, low_celsius, sky, wind, "
                                    "dew_point_celsius, entered_at) VALUES (?, ?, ?, ?, ?, ?, ?)"};
        for (const auto& forecast : forecasts) {
            (Row{statement} << calendar::to_text(forecast.issued) << calendar::to_text(forecast.night)
                            << forecast.low.degrees() << word_of(forecast.weather.sky)
                            << word_of(forecast.weather.wind) << degrees_of(forecast.dew_point)
                            << calendar::to_text(forecast.entered))
                .insert();
        }
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::OutOfRange, said("nothing was kept in %1; a forecast is of a night before it was "
                                                     "made, or a temperature lies outside -90 to 60 degrees Celsius",
                                                     inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
