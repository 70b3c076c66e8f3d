#include "core/climate/day_table.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/calendar/date.h"

#include <cmath>
#include <map>

namespace lathhouse::climate {
namespace {

constexpr double kMostTenths = 30000.0;

std::optional<std::size_t> column_of(const CsvTable& table, std::string_view name)
{
    const auto wanted = lower_case(trimmed(name));
    const auto& names = table.column_names();
    for (std::size_t column = 0; column < names.size(); ++column) {
        if (lower_case(trimmed(names[column])) == wanted) {
            return column;
        }
    }
    return std::nullopt;
}

Error no_column(const CsvTable& table, const std::string& name)
{
    return {ErrorCode::Malformed,
            said("%1 has no column \"%2\"; name its columns, such as --columns date=Day,low=Min,high=Max",
                 table.source_name(), name)};
}

/// `1991-01-31` or `19910131`.
std::optional<calendar::Date> date_in(std::string_view text)
{
    const auto written = trimmed(text);
    std::string dashed{written};
    if (written.size() == 8) {
        dashed = dashed.substr(0, 4) + "-" + dashed.substr(4, 2) + "-" + dashed.substr(6, 2);
    }
    const auto date = calendar::parse_date(dashed);
    return date ? std::optional{*date} : std::nullopt;
}

double tenths_of_temperature(double value, TableUnits units)
{
    return std::round(10.0 * (units == TableUnits::Us ? (value - 32.0) / 1.8 : value));
}

double tenths_of_rain(double value, TableUnits units)
{
    constexpr double kInch = 25.4;
    return std::round(10.0 * (units == TableUnits::Us ? value * kInch : value));
}

} // namespace

Result<DailyRecord> read_day_table(const std::filesystem::path& file, const DayTableColumns& columns,
                                   TableUnits units, std::string station)
{
    const auto text = read_text_file(file);
    if (!text) {
        return text.error();
    }
    return parse_day_table(*text, file.string(), columns, units, std::move(station));
}

Result<DailyRecord> parse_day_table(std::string_view text, std::string source_name,
                                    const DayTableColumns& columns, TableUnits units, std::string station)
{
    if (trimmed(text).empty()) {
        return Error{ErrorCode::Malformed, said("%1 is empty; it needs a head line and a row a day", source_name)};
    }
    const auto table = CsvTable::parse(text, std::move(source_name));
    if (!table) {
        return table.error();
    }
    const auto date_column = column_of(*table, columns.date);
    if (!date_column) {
        return no_column(*table, columns.date);
    }
    const auto low_column = column_of(*table, columns.low);
    if (!low_column) {
        return no_column(*table, columns.low);
    }
    const auto high_column = column_of(*table, columns.high);
    if (!high_column) {
        return no_column(*table, columns.high);
    }
    const auto rain_column = column_of(*table, columns.rain.value_or("rain"));
    if (columns.rain && !rain_column) {
        return no_column(*table, *columns.rain);
    }
    if (table->row_count() == 0) {
        return Error{ErrorCode::Malformed, said("%1 has a head line and no days", table->source_name())};
    }

    DailyRecord record{std::move(station)};
    std::map<calendar::Date, std::size_t> seen; // Line by day.
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto& written = table->at(row, *date_column);
        const auto date = date_in(written);
        if (!date) {
            return table->error_at(row, said("\"%1\" is no day; write it as 1991-01-31", written));
        }
        const auto [known, is_new] = seen.emplace(*date, table->line(row));
        if (!is_new) {
            return table->error_at(
                row, said("%1 stands on line %2 already; keep one of them", calendar::to_text(*date), known->second));
        }
        auto& month = record.month_to_write(date->year(), date->month());
        const auto day = static_cast<std::size_t>(date->day() - 1);
        const auto put = [&](std::size_t column, double (*tenths_of)(double, TableUnits),
                             std::array<DailyReading, 31>& readings) -> Result<void> {
            const auto number = table->number(row, column);
            if (!number) {
                return number.error();
            }
            if (!*number) {
                return {};
            }
            const double tenths = tenths_of(**number, units);
            if (!(std::abs(tenths) <= kMostTenths)) {
                return table->error_at(
                    row, said("\"%1\" is no possible value; leave the cell empty for a gap", table->at(row, column)));
            }
            readings[day] = *DailyReading::from_tenths(static_cast<int>(tenths));
            return {};
        };
        if (auto done = put(*low_column, tenths_of_temperature, month.low); !done) {
            return done.error();
        }
        if (auto done = put(*high_column, tenths_of_temperature, month.high); !done) {
            return done.error();
        }
        if (rain_column) {
            if (auto done = put(*rain_column, tenths_of_rain, month.rain); !done) {
                return done.error();
            }
        }
    }
    return record;
}

} // namespace lathhouse::climate
