#include "core/climate/world_rows.h"

#include "core/base/csv.h"
#include "core/calendar/month_length.h"
#include "core/climate/station_checks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace lathhouse::climate {
namespace {

constexpr std::array kMonthsInHeads = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
constexpr std::array kContradicted = {"Australia", "South Africa", "Bolivia"};

/// The mean over all years from the mean over years with at least one.
double mean_of_all_years(double mean_of_years_with_any)
{
    double low = 0.0;
    double high = mean_of_years_with_any;
    for (int step = 0; step < 40; ++step) {
        const double middle = 0.5 * (low + high);
        (middle / (1.0 - std::exp(-0.45 * middle)) < mean_of_years_with_any ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

using TwelveColumns = std::array<std::size_t, 12>;

Result<TwelveColumns> columns_of(const CsvTable& table, const std::string& name)
{
    TwelveColumns columns{};
    for (std::size_t month = 0; month < 12; ++month) {
        const auto column = table.require_column(name + "_" + kMonthsInHeads[month]);
        if (!column) {
            return column.error();
        }
        columns[month] = *column;
    }
    return columns;
}

Result<Monthly<std::optional<double>>> twelve(const CsvTable& table, std::size_t row, const TwelveColumns& columns)
{
    Monthly<std::optional<double>> values{};
    for (std::size_t month = 0; month < 12; ++month) {
        const auto value = table.number(row, columns[month]);
        if (!value) {
            return value.error();
        }
        values[month] = *value;
    }
    return values;
}

template <class Make>
auto all_of(const Monthly<std::optional<double>>& values, Make make)
    -> std::optional<Monthly<std::invoke_result_t<Make, double>>>
{
    if (!std::ranges::all_of(values, [](const auto& value) { return value.has_value(); })) {
        return std::nullopt;
    }
    return [&]<std::size_t... I>(std::index_sequence<I...>)
    {
        return Monthly<std::invoke_result_t<Make, double>>{make(*values[I])...};
    }
    (std::make_index_sequence<12>{});
}

} // namespace

Result<WorldRows> read_world_rows(const std::filesystem::path& file, BasePeriod base)
{
    const auto table = CsvTable::read(file);
    if (!table) {
        return table.error();
    }
    std::array<std::size_t, 7> about{};
    constexpr std::array kAbout = {"wmo", "name", "country", "lat", "lon", "elev_m", "min_years"};
    for (std::size_t k = 0; k < about.size(); ++k) {
        const auto column = table->require_column(kAbout[k]);
        if (!column) {
            return column.error();
        }
        about[k] = *column;
    }
    std::array<TwelveColumns, 6> figures{};
    constexpr std::array kFigures = {"tmin", "tmax", "sd_tmean", "prcp_mm", "frostdays", "absmin"};
    for (std::size_t k = 0; k < figures.size(); ++k) {
        const auto columns = columns_of(*table, kFigures[k]);
        if (!columns) {
            return columns.error();
        }
        figures[k] = *columns;
    }

    std::set<std::string> counts_zeros;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        for (const auto column : figures[4]) {
            const auto value = table->number(row, column);
            if (value && *value && **value == 0.0) {
                counts_zeros.insert(table->at(row, about[2]));
            }
        }
    }

    WorldRows rows;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto& id = table->at(row, about[0]);
        const auto& name = table->at(row, about[1]);
        const auto& country = table->at(row, about[2]);
        const auto leave_out = [&](std::string reason) {
            rows.left_out.push_back({id, name, StationSource::WorldMonthly, std::move(reason)});
        };
        std::array<std::optional<double>, 7> place{};
        for (std::size_t k = 3; k < about.size(); ++k) {
            const auto value = table->number(row, about[k]);
            if (!value) {
                return value.error();
            }
            place[k] = *value;
        }
        std::array<Monthly<std::optional<double>>, 6> values{};
        for (std::size_t k = 0; k < figures.size(); ++k) {
            const auto of_row = twelve(*table, row, figures[k]);
            if (!of_row) {
                return of_row.error();
            }
            values[k] = *of_row;
        }
        const auto latitude = Latitude::from_degrees(place[3].value_or(999.0));
        const auto longitude = Longitude::from_degrees(place[4].value_or(999.0));
        const auto celsius = [](double degrees) { return Celsius::from_degrees(degrees); };
        const auto low = all_of(values[0], celsius);
        const auto high = all_of(values[1], celsius);
        if (!latitude || !longitude || !place[5]) {
            leave_out("no position or height");
            continue;
        }
        if (!low || !high) {
            leave_out("a month lacks its mean low or high");
            continue;
        }
        MonthlyFigures monthly{
            .low = *low,
            .high = *high,
            .low_spread = std::nullopt,
            .mean_spread = all_of(values[2], [](double value) { return KelvinDelta::from_kelvins(value); }),
            .years = place[6] ? std::optional{static_cast<int>(*place[6])} : std::nullopt};
        Station station{.id = id,
                        .name = name,
                        .country = country,
                        .position = {*latitude, *longitude},
                        .elevation = Metres::from_metres(*place[5]),
                        .base = base,
                        .source = StationSource::WorldMonthly,
                        .monthly = monthly,
                        .rain = {},
                        .lowest_of_season = std::nullopt,
                        .dates = {}};
        if (monthly.mean_spread && !std::ranges::all_of(*monthly.mean_spread, [](KelvinDelta spread) {
                return spread.kelvins() >= 0.2 && spread.kelvins() <= 20.0;
            })) {
            station.monthly.mean_spread = std::nullopt;
        }
        const bool contradicted = std::ranges::find(kContradicted, country) != kContradicted.end();
        for (std::size_t m = 0; m < 12; ++m) {
            if (values[3][m] && *values[3][m] >= 0.0) {
                station.rain[m] = Millimetres::from_millimetres(*values[3][m]);
            }
            // A lowest value above the mean low is a slip of the report; the means may still be right.
            if (values[5][m] && *values[5][m] <= low->at(m).degrees() && *values[5][m] >= -90.0) {
                station.monthly.lowest[m] = Celsius::from_degrees(*values[5][m]);
            }
            const auto frosts = values[4][m];
            if (!frosts || contradicted) {
                continue;
            }
            if (counts_zeros.contains(country)) {
                station.monthly.frost_days[m] = std::min(*frosts, calendar::kMeanDaysOfMonths[m]);
            } else if (*frosts >= 3.0 && calendar::kMeanDaysOfMonths[m] - *frosts >= 1.0) {
                station.monthly.frost_days[m] = mean_of_all_years(*frosts);
            }
        }
        if (auto fault = range_fault(station)) {
            leave_out(*std::move(fault));
            continue;
        }
        rows.stations.push_back(std::move(station));
    }
    return rows;
}

} // namespace lathhouse::climate
