#include "core/journal/own_record_rows.h"

#include "core/calendar/month_length.h"
#include "core/climate/daily_lines.h"

#include <chrono>

namespace lathhouse::journal {
namespace {

void bind_reading(SQLite::Statement& statement, int place, climate::DailyReading reading)
{
    if (reading.known()) {
        statement.bind(place, reading.tenths());
    } else {
        statement.bind(place);
    }
}

climate::DailyReading day_reading_in(const SQLite::Column& column)
{
    // The table's own CHECK admits no number that a reading cannot hold.
    return column.isNull()
               ? climate::DailyReading{}
               : climate::DailyReading::from_tenths(column.getInt()).value_or(climate::DailyReading{});
}

} // namespace

bool remove_own_record(SQLite::Database& database)
{
    database.exec("DELETE FROM own_record_days");
    return database.exec("DELETE FROM own_record") > 0;
}

void write_own_record(SQLite::Database& database, const climate::OwnRecord& record)
{
    remove_own_record(database);
    SQLite::Statement head{database, "INSERT INTO own_record VALUES (1, ?, ?, ?, ?, ?, ?, ?)"};
    head.bind(1, record.name);
    head.bind(2, record.days.station());
    head.bind(3, record.file);
    head.bind(4, record.position.latitude.degrees());
    head.bind(5, record.position.longitude.degrees());
    head.bind(6, record.elevation.metres());
    head.bind(7, calendar::to_text(record.imported));
    head.exec();
    if (record.days.empty()) {
        return;
    }
    SQLite::Statement rows{database, "INSERT INTO own_record_days VALUES (?, ?, ?, ?)"};
    for (int year = record.days.first_year(); year <= record.days.last_year(); ++year) {
        for (int month = 1; month <= 12; ++month) {
            const auto* readings = record.days.month(year, month);
            for (int day = 1; readings != nullptr && day <= calendar::days_in_month(year, month); ++day) {
                const auto d = static_cast<std::size_t>(day - 1);
                if (!readings->low[d].known() && !readings->high[d].known() && !readings->rain[d].known()) {
                    continue;
                }
                rows.reset();
                rows.bind(1, calendar::to_text(calendar::Date{static_cast<unsigned short>(year),
                                                              static_cast<unsigned short>(month),
                                                              static_cast<unsigned short>(day)}));
                bind_reading(rows, 2, readings->low[d]);
                bind_reading(rows, 3, readings->high[d]);
                bind_reading(rows, 4, readings->rain[d]);
                rows.exec();
            }
        }
    }
}

Result<std::shared_ptr<const climate::OwnRecord>> load_own_record(SQLite::Database& database)
{
    SQLite::Statement head{database, "SELECT name, station, file_name, latitude_degrees, longitude_degrees, "
                                     "elevation_metres, imported_on FROM own_record"};
    if (!head.executeStep()) {
        return std::shared_ptr<const climate::OwnRecord>{};
    }
    const auto latitude = Latitude::from_degrees(head.getColumn(3).getDouble());
    const auto longitude = Longitude::from_degrees(head.getColumn(4).getDouble());
    const auto imported = calendar::parse_date(head.getColumn(6).getString());
    if (!latitude || !longitude || !imported) {
        return Error{ErrorCode::Damaged, said("%1 is damaged (its own record has no place or date); restore a backup",
                                              database.getFilename())};
    }
    climate::DailyRecord days{head.getColumn(1).getString()};
    // Dates as three numbers: cheaper than reading them as text.
    SQLite::Statement rows{database, "SELECT CAST(substr(happened_on, 1, 4) AS INTEGER), "
                                     "CAST(substr(happened_on, 6, 2) AS INTEGER), "
                                     "CAST(substr(happened_on, 9, 2) AS INTEGER), low_celsius_tenths, "
                                     "high_celsius_tenths, rain_millimetre_tenths FROM own_record_days "
                                     "ORDER BY happened_on"};
    while (rows.executeStep()) {
        const int year = rows.getColumn(0).getInt();
        const int number = rows.getColumn(1).getInt();
        const int of_month = rows.getColumn(2).getInt();
        // A record has a place for every month between its first and its last: a damaged date must not make millions.
        if (year < climate::kFirstYearOfRecords || year > climate::kLastYearOfRecords || number < 1 || number > 12 || of_month < 1 ||
            of_month > calendar::days_in_month(year, number)) {
            return Error{
                ErrorCode::Damaged,
                said("%1 is damaged (a day of its own record has no date); restore a backup", database.getFilename())};
        }
        auto& month = days.month_to_write(year, number);
        const auto day = static_cast<std::size_t>(of_month - 1);
        month.low[day] = day_reading_in(rows.getColumn(3));
        month.high[day] = day_reading_in(rows.getColumn(4));
        month.rain[day] = day_reading_in(rows.getColumn(5));
    }
    if (days.empty()) {
        return Error{ErrorCode::Damaged,
                     said("%1 is damaged (its own record has no days); restore a backup", database.getFilename())};
    }
    return std::make_shared<const climate::OwnRecord>(
        climate::OwnRecord{.name = head.getColumn(0).getString(),
                           .file = head.getColumn(2).getString(),
                           .position = {*latitude, *longitude},
                           .elevation = Metres::from_metres(head.getColumn(5).getDouble()),
                           .imported = *imported,
                           .days = std::move(days)});
}

} // namespace lathhouse::journal
