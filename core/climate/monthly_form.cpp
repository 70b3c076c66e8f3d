#include "core/climate/monthly_form.h"

#include "core/base/parse.h"
#include "core/calendar/day_of_year.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::climate {

namespace {

using MonthColumns = Monthly<std::size_t>;

std::string month_column(std::string_view stem, std::size_t month)
{
    const std::string number = std::to_string(month + 1);
    return std::string{stem} + (number.size() == 1 ? "_0" : "_") + number;
}

Result<MonthColumns> require_months(const CsvTable& table, std::string_view stem)
{
    MonthColumns columns{};
    for (std::size_t m = 0; m < 12; ++m) {
        const auto column = table.require_column(month_column(stem, m));
        if (!column) {
            return column.error();
        }
        columns[m] = *column;
    }
    return columns;
}

/// nullopt where the form has none of the twelve. Errors: Malformed where it has some of them.
Result<std::optional<MonthColumns>> optional_months(const CsvTable& table, std::string_view stem)
{
    const auto is_there = [&](std::size_t m) { return table.column(month_column(stem, m)).has_value(); };
    bool any = false;
    for (std::size_t m = 0; m < 12; ++m) {
        any = any || is_there(m);
    }
    if (!any) {
        return std::optional<MonthColumns>{};
    }
    const auto columns = require_months(table, stem);
    if (!columns) {
        return columns.error();
    }
    return std::optional<MonthColumns>{*columns};
}

/// A number within limits; nullopt where the cell is blank.
Result<std::optional<double>> number_within(const CsvTable& table, std::size_t row, std::size_t column,
                                            double lowest, double highest)
{
    const auto number = table.number(row, column);
    if (!number) {
        return number.error();
    }
    if (*number && !(**number >= lowest && **number <= highest)) {
        return table.error_at(row, said("%1 is %2, which cannot be; give a value from %3 to %4",
                                        table.column_names()[column], table.at(row, column),
                                        static_cast<int>(std::floor(lowest)), static_cast<int>(std::ceil(highest))));
    }
    return number;
}

Result<double> required_within(const CsvTable& table, std::size_t row, std::size_t column, double lowest,
                               double highest)
{
    const auto number = number_within(table, row, column, lowest, highest);
    if (!number) {
        return number.error();
    }
    if (!*number) {
        return table.error_at(row, said("%1 is blank, and the form needs it", table.column_names()[column]));
    }
    return **number;
}

constexpr double kColdestRead = -95.0; // A little beyond the extremes that were ever read.
constexpr double kHottestRead = 60.0;
constexpr double kWidestSpread = 30.0;

Result<Monthly<Celsius>> temperatures(const CsvTable& table, std::size_t row, const MonthColumns& columns)
{
    Monthly<double> values{};
    for (std::size_t m = 0; m < 12; ++m) {
        const auto value = required_within(table, row, columns[m], kColdestRead, kHottestRead);
        if (!value) {
            return value.error();
        }
        values[m] = *value;
    }
    const auto c = [&values](std::size_t m) { return Celsius::from_degrees(values[m]); };
    return Monthly<Celsius>{c(0), c(1), c(2), c(3), c(4), c(5), c(6), c(7), c(8), c(9), c(10), c(11)};
}

Result<std::optional<Monthly<KelvinDelta>>> spread(const CsvTable& table, std::size_t row,
                                                   const std::optional<MonthColumns>& columns)
{
    if (!columns) {
        return std::optional<Monthly<KelvinDelta>>{};
    }
    Monthly<double> values{};
    std::size_t blank = 0;
    for (std::size_t m = 0; m < 12; ++m) {
        const auto value = number_within(table, row, (*columns)[m], 0.0, kWidestSpread);
        if (!value) {
            return value.error();
        }
        if (*value && **value == 0.0) {
            return table.error_at(
                row, said("%1 is 0, and a spread of temperatures is above 0; leave it blank where it is not known",
                          table.column_names()[(*columns)[m]]));
        }
        blank += *value ? 0U : 1U;
        values[m] = value->value_or(0.0);
    }
    if (blank == 12) {
        return std::optional<Monthly<KelvinDelta>>{};
    }
    if (blank != 0) {
        return table.error_at(row, said("%1 and its fellows must be given for all twelve months or for none",
                                        table.column_names()[(*columns)[0]]));
    }
    const auto k = [&values](std::size_t m) { return KelvinDelta::from_kelvins(values[m]); };
    return std::optional<Monthly<KelvinDelta>>{
        {k(0), k(1), k(2), k(3), k(4), k(5), k(6), k(7), k(8), k(9), k(10), k(11)}};
}

/// The columns of one line of counted nights.
struct CountColumns {
    Celsius line;
    MonthColumns months;
};

/// The line in a name such as `nights_20f_01`; nullopt where it is another column.
std::optional<Celsius> line_in(std::string_view name)
{
    constexpr std::string_view kStem = "nights_";
    constexpr std::size_t kMonthLength = 3; // "_01"
    if (!name.starts_with(kStem) || name.size() < kStem.size() + 2 + kMonthLength) {
        return std::nullopt;
    }
    const std::string_view line = name.substr(kStem.size(), name.size() - kStem.size() - kMonthLength);
    const auto number = parse_number(line.substr(0, line.size() - 1));
    if (!number) {
        return std::nullopt;
    }
    if (line.back() != 'f' && line.back() != 'c') {
        return std::nullopt;
    }
    const Celsius result =
        line.back() == 'f' ? Celsius::from_fahrenheit(*number) : Celsius::from_degrees(*number);
    const bool can_be = result.degrees() >= kColdestRead && result.degrees() <= kHottestRead;
    return can_be ? std::optional{result} : std::nullopt;
}

/// From the coldest line up. Errors: Malformed where a line lacks a month.
Result<std::vector<CountColumns>> count_columns(const CsvTable& table)
{
    std::vector<CountColumns> result;
    for (const std::string& name : table.column_names()) {
        const auto line = line_in(name);
        if (!line) {
            continue;
        }
        // From any of the twelve, so that the lack of another is seen.
        const auto months = require_months(table, std::string_view{name}.substr(0, name.size() - 3));
        if (!months) {
            return months.error();
        }
        if (name.ends_with("_01")) {
            result.push_back({*line, *months});
        }
    }
    std::ranges::sort(result, {}, [](const CountColumns& count) { return count.line.degrees(); });
    return result;
}

struct Columns {
    std::size_t station, latitude, longitude;
    std::optional<std::size_t> name, elevation, years, reading_step;
    MonthColumns low, high;
    std::optional<MonthColumns> low_spread, mean_spread, lowest, frost_days;
    std::vector<CountColumns> counted;
};

Result<Columns> find_columns(const CsvTable& table)
{
    const auto station = table.require_column("station");
    const auto latitude = table.require_column("latitude");
    const auto longitude = table.require_column("longitude");
    const auto low = require_months(table, "low");
    const auto high = require_months(table, "high");
    const auto low_spread = optional_months(table, "low_sd");
    const auto mean_spread = optional_months(table, "mean_sd");
    const auto lowest = optional_months(table, "lowest");
    const auto frost_days = optional_months(table, "frost_days");
    const auto counted = count_columns(table);
    if (!counted) {
        return counted.error();
    }
    for (const auto* column : {&station, &latitude, &longitude}) {
        if (!*column) {
            return column->error();
        }
    }
    for (const auto* columns : {&low, &high}) {
        if (!*columns) {
            return columns->error();
        }
    }
    for (const auto* columns : {&low_spread, &mean_spread, &lowest, &frost_days}) {
        if (!*columns) {
            return columns->error();
        }
    }
    return Columns{*station,
                   *latitude,
                   *longitude,
                   table.column("name"),
                   table.column("elevation_m"),
                   table.column("years"),
                   table.column("reading_step_c"),
                   *low,
                   *high,
                   *low_spread,
                   *mean_spread,
                   *lowest,
                   *frost_days,
                   *counted};
}

Result<void> read_optional_figures(const CsvTable& table, std::size_t row, const Columns& columns,
                                   MonthlyFigures& figures)
{
    for (std::size_t m = 0; m < 12; ++m) {
        if (columns.lowest) {
            const auto value = number_within(table, row, (*columns.lowest)[m], kColdestRead, kHottestRead);
            if (!value) {
                return value.error();
            }
            if (*value) {
                figures.lowest[m] = Celsius::from_degrees(**value);
            }
        }
        if (columns.frost_days) {
            const double most = calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1);
            const auto value = number_within(table, row, (*columns.frost_days)[m], 0.0, most);
            if (!value) {
                return value.error();
            }
            figures.frost_days[m] = *value;
        }
    }
    if (columns.years) {
        const auto value = number_within(table, row, *columns.years, 1.0, 500.0);
        if (!value) {
            return value.error();
        }
        if (*value) {
            figures.years = static_cast<int>(std::lround(**value));
        }
    }
    if (columns.reading_step) {
        const auto value = number_within(table, row, *columns.reading_step, 0.0, 5.0);
        if (!value) {
            return value.error();
        }
        if (*value) {
            figures.reading_step = KelvinDelta::from_kelvins(**value);
        }
    }
    return {};
}

Result<std::vector<CountedNights>> read_counts(const CsvTable& table, std::size_t row,
                                               const std::vector<CountColumns>& columns)
{
    constexpr double kRounding = 0.051; // Each is told to a tenth of a night.
    std::vector<CountedNights> result;
    for (const CountColumns& line : columns) {
        CountedNights counted{line.line, {}};
        std::size_t blank = 0;
        for (std::size_t m = 0; m < 12; ++m) {
            const double most = calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1);
            const auto value = number_within(table, row, line.months[m], 0.0, most);
            if (!value) {
                return value.error();
            }
            blank += *value ? 0U : 1U;
            counted.nights[m] = value->value_or(0.0);
            if (*value && !result.empty() && counted.nights[m] + kRounding < result.back().nights[m]) {
                return table.error_at(row, said("%1 has fewer nights than the next colder line; a night at or below "
                                                "that line is at or below this one too",
                                                table.column_names()[line.months[m]]));
            }
        }
        if (blank != 0 && blank != 12) {
            return table.error_at(row, said("%1 and its fellows must be given for all twelve months or for none",
                                            table.column_names()[line.months[0]]));
        }
        if (blank == 0) {
            result.push_back(counted);
        }
    }
    return result;
}

Result<MonthlyPlace> read_row(const CsvTable& table, std::size_t row, const Columns& columns)
{
    const auto latitude = required_within(table, row, columns.latitude, -90.0, 90.0);
    if (!latitude) {
        return latitude.error();
    }
    const auto longitude = required_within(table, row, columns.longitude, -180.0, 180.0);
    if (!longitude) {
        return longitude.error();
    }
    std::optional<Metres> elevation;
    if (columns.elevation) {
        const auto value = number_within(table, row, *columns.elevation, -500.0, 9000.0);
        if (!value) {
            return value.error();
        }
        if (*value) {
            elevation = Metres::from_metres(**value);
        }
    }
    const auto low = temperatures(table, row, columns.low);
    if (!low) {
        return low.error();
    }
    const auto high = temperatures(table, row, columns.high);
    if (!high) {
        return high.error();
    }
    for (std::size_t m = 0; m < 12; ++m) {
        if ((*low)[m] > (*high)[m]) {
            return table.error_at(row,
                                  said("%1 lies above %2; the mean low cannot be above the mean high",
                                       table.column_names()[columns.low[m]], table.column_names()[columns.high[m]]));
        }
    }
    const auto low_spread = spread(table, row, columns.low_spread);
    if (!low_spread) {
        return low_spread.error();
    }
    const auto mean_spread = spread(table, row, columns.mean_spread);
    if (!mean_spread) {
        return mean_spread.error();
    }
    MonthlyFigures figures{.low = *low,
                           .high = *high,
                           .low_spread = *low_spread,
                           .mean_spread = *mean_spread,
                           .lowest = {},
                           .frost_days = {},
                           .years = {}};
    const auto rest = read_optional_figures(table, row, columns, figures);
    if (!rest) {
        return rest.error();
    }
    auto counted = read_counts(table, row, columns.counted);
    if (!counted) {
        return counted.error();
    }
    const auto position_latitude = Latitude::from_degrees(*latitude);
    const auto position_longitude = Longitude::from_degrees(*longitude);
    if (!position_latitude) {
        return position_latitude.error();
    }
    if (!position_longitude) {
        return position_longitude.error();
    }
    return MonthlyPlace{std::string{trimmed(table.at(row, columns.station))},
                        columns.name ? std::string{trimmed(table.at(row, *columns.name))} : std::string{},
                        Position{*position_latitude, *position_longitude},
                        elevation,
                        figures,
                        std::move(counted).value()};
}

} // namespace

Result<std::vector<MonthlyPlace>> read_monthly_form(const CsvTable& table)
{
    const auto columns = find_columns(table);
    if (!columns) {
        return columns.error();
    }
    if (table.row_count() == 0) {
        return Error{ErrorCode::Malformed,
                     said("%1 has a head line and no rows; give one row for each place", table.source_name())};
    }
    std::vector<MonthlyPlace> places;
    places.reserve(table.row_count());
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        auto place = read_row(table, row, *columns);
        if (!place) {
            return place.error();
        }
        places.push_back(std::move(place).value());
    }
    return places;
}

} // namespace lathhouse::climate
