#include "core/climate/station_rows.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace lathhouse::climate {
namespace {

constexpr std::array kLines = {Celsius::from_degrees(-5.0), Celsius::from_degrees(-2.2),
                               Celsius::from_degrees(0.0),  Celsius::from_degrees(2.2),
                               Celsius::from_degrees(5.0),  Celsius::from_degrees(10.0)};
constexpr std::array kPercents = {10.0, 50.0, 90.0};

std::string number(double value, int decimals)
{
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(value * scale) / scale;
    std::array<char, 32> text{};
    // The shortest text that gives the rounded value back: 5.1 rather than 5.10.
    const auto end = std::to_chars(text.data(), text.data() + text.size(), rounded == 0.0 ? 0.0 : rounded,
                                   std::chars_format::fixed);
    return {text.data(), end.ptr};
}

std::string two_digits(std::size_t month)
{
    return month < 9 ? "0" + std::to_string(month + 1) : std::to_string(month + 1);
}

std::string text_of(ThresholdState state)
{
    switch (state) {
    case ThresholdState::Ordinary:
        return "ordinary";
    case ThresholdState::Never:
        return "never";
    case ThresholdState::NoWindow:
        return "no_window";
    case ThresholdState::NoSeason:
        return "no_season";
    }
    return "";
}

std::optional<ThresholdState> state_of(std::string_view text)
{
    for (const auto state : {ThresholdState::Ordinary, ThresholdState::Never, ThresholdState::NoWindow,
                             ThresholdState::NoSeason}) {
        if (text_of(state) == text) {
            return state;
        }
    }
    return std::nullopt;
}

std::string head_line()
{
    std::string head = "id,name,country,latitude,longitude,elevation_m,first_year,last_year,source,"
                       "reading_step_c,years";
    for (const char* name : {"low_", "high_", "low_sd_", "mean_sd_", "rain_", "lowest_", "frost_days_"}) {
        for (std::size_t month = 0; month < 12; ++month) {
            head += std::string{","} + name + two_digits(month);
        }
    }
    head += ",persistence,completeness,lowest_of_season,seasons";
    for (const auto line : kLines) {
        const auto at = "(" + number(line.degrees(), 1) + ")";
        for (const char* name : {"state", "nights", "without"}) {
            head += std::string{","} + name + at;
        }
        for (const char* name : {"last", "first", "free"}) {
            for (const double percent : kPercents) {
                head += std::string{","} + name + at + "_" + number(percent, 0);
            }
        }
    }
    return head + ",low_trend,low_trend_se\n";
}

/// Appends fields to a row.
class RowWriter {
public:
    explicit RowWriter(std::string& text) : text_(text) {}
    void add(std::string_view field)
    {
        if (!begun_) {
            begun_ = true;
        } else {
            text_ += ',';
        }
        text_ += field;
    }
    void add(std::optional<double> value, int decimals) { add(value ? number(*value, decimals) : ""); }

private:
    std::string& text_;
    bool begun_ = false;
};

void write_dates(RowWriter& row, const Station& station, Celsius line)
{
    const auto found = std::ranges::find_if(
        station.dates, [&](const ThresholdDates& dates) { return dates.threshold == line; });
    if (found == station.dates.end()) {
        for (std::size_t k = 0; k < 3 + 3 * kPercents.size(); ++k) {
            row.add("");
        }
        return;
    }
    row.add(text_of(found->state));
    row.add(found->nights_per_year, 1);
    row.add(found->first.share_without.fraction(), 4);
    for (const auto* ends : {&found->last, &found->first}) {
        for (const double percent : kPercents) {
            const auto date = ends->dates.find(percent);
            row.add(date != ends->dates.end() && date->second ? date->second->to_text() : "");
        }
    }
    for (const double percent : kPercents) {
        const auto days = found->free_days.find(percent);
        row.add(days != found->free_days.end() && days->second ? std::to_string(*days->second) : "");
    }
}

/// Reads one row's fields by column name; the first fault is kept.
class RowReader {
public:
    RowReader(const CsvTable& table, std::size_t row) : table_(table), row_(row) {}

    const std::string& text(std::size_t column) const { return table_.at(row_, column); }
    std::optional<double> optional(std::size_t column, double least, double most)
    {
        const auto value = table_.number(row_, column);
        if (!value) {
            keep(value.error());
            return std::nullopt;
        }
        if (*value && !(**value >= least && **value <= most)) {
            auto error =
                table_.error_at(row_, Said{table_.column_names()[column] + " is " + text(column) + ", outside " +
                                          number(least, 1) + " to " + number(most, 1)});
            error.code = ErrorCode::OutOfRange;
            keep(error);
            return std::nullopt;
        }
        return *value;
    }
    double required(std::size_t column, double least, double most)
    {
        const auto value = optional(column, least, most);
        if (!value) {
            fault("needs a value of " + table_.column_names()[column]);
        }
        return value.value_or(0.0);
    }
    void fault(std::string_view what) { keep(table_.error_at(row_, Said{what})); }
    const std::optional<Error>& error() const { return error_; }

private:
    const CsvTable& table_;
    std::size_t row_;
    std::optional<Error> error_;
    void keep(const Error& error)
    {
        if (!error_) {
            error_ = error;
        }
    }
};

Monthly<std::optional<double>> twelve(RowReader& reader, std::size_t first_column, double least, double most)
{
    Monthly<std::optional<double>> values{};
    for (std::size_t month = 0; month < 12; ++month) {
        values[month] = reader.optional(first_column + month, least, most);
    }
    return values;
}

template <class T, class Make>
std::optional<Monthly<T>> all_of(const Monthly<std::optional<double>>& values, Make make)
{
    if (!std::ranges::all_of(values, [](const auto& value) { return value.has_value(); })) {
        return std::nullopt;
    }
    return [&]<std::size_t... I>(std::index_sequence<I...>)
    {
        return Monthly<T>{make(*values[I])...};
    }
    (std::make_index_sequence<12>{});
}

constexpr std::size_t kFirstFigures = 11;
constexpr std::size_t kAfterFigures = kFirstFigures + 7 * 12;

std::optional<ThresholdDates> read_dates(RowReader& reader, std::size_t column, Celsius line,
                                         std::optional<int> seasons)
{
    if (reader.text(column).empty()) {
        return std::nullopt;
    }
    const auto state = state_of(reader.text(column));
    if (!state || !seasons) {
        reader.fault("\"" + reader.text(column) + "\" with its seasons is no state of a line");
        return std::nullopt;
    }
    const double nights = reader.required(column + 1, 0.0, 366.0);
    const auto without = Probability::clamped(reader.required(column + 2, 0.0, 1.0));
    ThresholdDates dates{line, *state, nights, {seasons, without, {}}, {seasons, without, {}}, {}};
    column += 3;
    for (auto* ends : {&dates.last, &dates.first}) {
        for (const double percent : kPercents) {
            const auto& text = reader.text(column++);
            ends->dates[percent] = std::nullopt;
            if (text.empty()) {
                continue;
            }
            if (const auto day = calendar::DayOfYear::parse(text)) {
                ends->dates[percent] = *day;
            } else {
                reader.fault(day.error().message);
            }
        }
    }
    for (const double percent : kPercents) {
        const auto days = reader.optional(column++, 0.0, 732.0);
        dates.free_days[percent] = std::nullopt;
        if (days) {
            dates.free_days[percent] = static_cast<int>(*days);
        }
    }
    return dates;
}

Result<Station> read_row(const CsvTable& table, std::size_t row)
{
    RowReader reader{table, row};
    const auto celsius = [](double degrees) { return Celsius::from_degrees(degrees); };
    const auto kelvins = [](double value) { return KelvinDelta::from_kelvins(value); };
    const auto figures = [&](int group, double least, double most) {
        return twelve(reader, kFirstFigures + static_cast<std::size_t>(group) * 12, least, most);
    };
    const auto latitude = Latitude::from_degrees(reader.required(3, -90.0, 90.0));
    const auto longitude = Longitude::from_degrees(reader.required(4, -180.0, 180.0));
    const double elevation = reader.required(5, -430.0, 6000.0);
    const BasePeriod base{static_cast<int>(reader.required(6, 1700.0, 2199.0)),
                          static_cast<int>(reader.required(7, 1700.0, 2199.0))};
    const double step = reader.required(9, 0.0, 2.0);
    const auto years = reader.optional(10, 0.0, 500.0);
    const auto low = all_of<Celsius>(figures(0, -80.0, 50.0), celsius);
    const auto high = all_of<Celsius>(figures(1, -80.0, 60.0), celsius);
    const auto low_sd = all_of<KelvinDelta>(figures(2, 0.0, 25.0), kelvins);
    const auto mean_sd = all_of<KelvinDelta>(figures(3, 0.0, 25.0), kelvins);
    const auto rain = figures(4, 0.0, 5000.0);
    const auto lowest = figures(5, -90.0, 50.0);
    const auto frost_days = figures(6, 0.0, 31.0);
    const auto persistence = reader.optional(kAfterFigures, -1.0, 1.0);
    const auto completeness = reader.optional(kAfterFigures + 1, 0.0, 1.0);
    const auto lowest_of_season = reader.optional(kAfterFigures + 2, -90.0, 50.0);
    const auto seasons = reader.optional(kAfterFigures + 3, 0.0, 500.0);
    StationSource source = StationSource::Own;
    if (reader.text(8) == "us_daily") {
        source = StationSource::UsDaily;
    } else if (reader.text(8) == "world_monthly") {
        source = StationSource::WorldMonthly;
    } else if (reader.text(8) != "own") {
        reader.fault("\"" + reader.text(8) + "\" is no source");
    }
    if (!low || !high) {
        reader.fault("each month needs its mean low and high");
    }
    if (base.first_year > base.last_year) {
        reader.fault("the base ends before it begins");
    }
    std::vector<ThresholdDates> dates;
    std::size_t column = kAfterFigures + 4;
    for (const auto line : kLines) {
        const auto counted = seasons ? std::optional{static_cast<int>(*seasons)} : std::nullopt;
        if (auto of_line = read_dates(reader, column, line, counted)) {
            dates.push_back(std::move(*of_line));
        }
        column += 3 + 3 * kPercents.size();
    }
    const auto trend = reader.optional(column, -20.0, 20.0);
    const auto trend_error = reader.optional(column + 1, 0.0, 20.0);
    if (reader.error()) {
        return *reader.error();
    }
    MonthlyFigures monthly{.low = *low,
                           .high = *high,
                           .low_spread = low_sd,
                           .mean_spread = mean_sd,
                           .years = years ? std::optional{static_cast<int>(*years)} : std::nullopt,
                           .reading_step = KelvinDelta::from_kelvins(step)};
    Station station{.id = reader.text(0),
                    .name = reader.text(1),
                    .country = reader.text(2),
                    .position = {*latitude, *longitude},
                    .elevation = Metres::from_metres(elevation),
                    .base = base,
                    .source = source,
                    .monthly = monthly,
                    .rain = {},
                    .lowest_of_season = std::nullopt,
                    .dates = std::move(dates)};
    for (std::size_t month = 0; month < 12; ++month) {
        if (rain[month]) {
            station.rain[month] = Millimetres::from_millimetres(*rain[month]);
        }
        if (lowest[month]) {
            station.monthly.lowest[month] = Celsius::from_degrees(*lowest[month]);
        }
        station.monthly.frost_days[month] = frost_days[month];
    }
    if (lowest_of_season) {
        station.lowest_of_season = Celsius::from_degrees(*lowest_of_season);
    }
    station.persistence = persistence;
    if (trend && trend_error) {
        station.trend = LowTrend{*trend, *trend_error};
    }
    if (completeness) {
        station.completeness = Probability::clamped(*completeness);
    }
    return station;
}

} // namespace

std::string_view to_string(StationSource source)
{
    switch (source) {
    case StationSource::UsDaily:
        return "us_daily";
    case StationSource::WorldMonthly:
        return "world_monthly";
    case StationSource::Own:
        return "own";
    }
    return "";
}

std::span<const Celsius> station_row_lines()
{
    return kLines;
}

std::span<const double> station_row_percents()
{
    return kPercents;
}

std::string station_rows_text(std::span<const Station> stations, const std::set<std::string>& without_place)
{
    std::string text = head_line();
    for (const auto& station : stations) {
        RowWriter row{text};
        row.add(csv_field(station.id));
        row.add(csv_field(station.name));
        row.add(csv_field(station.country));
        using Value = std::optional<double>;
        const bool placed = !without_place.contains(station.id);
        row.add(placed ? Value{station.position.latitude.degrees()} : Value{}, 4);
        row.add(placed ? Value{station.position.longitude.degrees()} : Value{}, 4);
        row.add(placed ? Value{station.elevation.metres()} : Value{}, 1);
        row.add(std::to_string(station.base.first_year));
        row.add(std::to_string(station.base.last_year));
        row.add(std::string{to_string(station.source)});
        row.add(station.monthly.reading_step.kelvins(), 4);
        row.add(station.monthly.years ? std::to_string(*station.monthly.years) : "");
        const auto add_twelve = [&](int decimals, auto&& value_of) {
            for (std::size_t month = 0; month < 12; ++month) {
                row.add(std::optional<double>{value_of(month)}, decimals);
            }
        };
        const auto& monthly = station.monthly;
        add_twelve(2, [&](std::size_t m) { return monthly.low[m].degrees(); });
        add_twelve(2, [&](std::size_t m) { return monthly.high[m].degrees(); });
        add_twelve(2, [&](std::size_t m) {
            return monthly.low_spread ? Value{(*monthly.low_spread)[m].kelvins()} : Value{};
        });
        add_twelve(2, [&](std::size_t m) {
            return monthly.mean_spread ? Value{(*monthly.mean_spread)[m].kelvins()} : Value{};
        });
        add_twelve(1, [&](std::size_t m) {
            return station.rain[m] ? Value{station.rain[m]->millimetres()} : Value{};
        });
        add_twelve(1, [&](std::size_t m) {
            return monthly.lowest[m] ? Value{monthly.lowest[m]->degrees()} : Value{};
        });
        add_twelve(2, [&](std::size_t m) { return monthly.frost_days[m]; });
        row.add(station.persistence, 3);
        row.add(station.completeness ? Value{station.completeness->fraction()} : Value{}, 3);
        row.add(station.lowest_of_season ? Value{station.lowest_of_season->degrees()} : Value{}, 2);
        const auto seasons = station.dates.empty() ? std::nullopt : station.dates.front().first.years;
        row.add(seasons ? std::to_string(*seasons) : "");
        for (const auto line : kLines) {
            write_dates(row, station, line);
        }
        row.add(station.trend ? Value{station.trend->kelvins_per_decade} : Value{}, 3);
        row.add(station.trend ? Value{station.trend->standard_error} : Value{}, 3);
        text += '\n';
    }
    return text;
}

Result<std::vector<Station>> parse_station_rows(std::string_view text, std::string source_name)
{
    const auto table = CsvTable::parse(text, std::move(source_name));
    if (!table) {
        return table.error();
    }
    std::string head;
    for (const auto& name : table->column_names()) {
        head += (head.empty() ? "" : ",") + name;
    }
    if (head + "\n" != head_line()) {
        return Error{ErrorCode::Malformed, table->source_name() +
                                               " has not the columns of the station table; "
                                               "make it with the command \"normals\""};
    }
    std::vector<Station> stations;
    stations.reserve(table->row_count());
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        auto station = read_row(*table, row);
        if (!station) {
            return station.error();
        }
        stations.push_back(*std::move(station));
    }
    return stations;
}

Result<std::vector<Station>> read_station_rows(const std::filesystem::path& file)
{
    const auto text = read_text_file(file);
    if (!text) {
        return text.error();
    }
    return parse_station_rows(*text, file.filename().string());
}

} // namespace lathhouse::climate
