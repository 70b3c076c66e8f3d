#include "app/cli/forecast_options.h"

#include "app/clock.h"
#include "core/base/csv.h"
#include "core/home/night_log_file.h"

#include <iostream>
#include <iterator>

namespace lathhouse::cli {

void add_columns_option(CLI::App& command, FileOptions& options, const std::string& example)
{
    command
        .add_option(
            "--columns", options.columns,
            "What the file calls its columns, OURS=THEIRS, separated by commas; for JSON the path with "
            "points (" +
                example + ")")
        ->type_name("NAMES");
}

Result<std::string> text_of(const FileOptions& options)
{
    if (options.file == "-") {
        return std::string{std::istreambuf_iterator<char>{std::cin}, std::istreambuf_iterator<char>{}};
    }
    return read_text_file(options.file);
}

std::string name_of(const FileOptions& options)
{
    return options.file == "-" ? "standard input" : std::filesystem::path{options.file}.filename().string();
}

Result<std::vector<home::KeptForecast>> forecast_of(const FileOptions& options, calendar::Date issued)
{
    std::vector<ColumnName> names;
    if (!options.columns.empty()) {
        const auto parsed = parse_column_names(options.columns, home::kForecastColumns);
        if (!parsed) {
            return Error{parsed.error().code, "--columns: " + parsed.error().message};
        }
        names = *parsed;
    }
    const auto text = text_of(options);
    if (!text) {
        return text.error();
    }
    return NamedRows::parse(*text, name_of(options), home::kForecastColumns, names)
        .and_then([&](const NamedRows& rows) { return home::forecast_from(rows, issued, now()); });
}

Result<void> were_made_by(calendar::Date today, const std::vector<home::KeptForecast>& forecasts)
{
    for (const auto& forecast : forecasts) {
        if (forecast.issued > today) {
            return Error{ErrorCode::OutOfRange, "a forecast of " + calendar::to_text(forecast.issued) +
                                                    " is after today; say --on for another today"};
        }
    }
    return {};
}

void add_weather_options(CLI::App& command, WeatherOptions& options)
{
    command.add_option("--sky", options.sky, "clear or cloudy, through the night")
        ->check(CLI::IsMember({"clear", "cloudy"}));
    command.add_option("--wind", options.wind, "calm (under 2 m/s) or windy, through the night")
        ->check(CLI::IsMember({"calm", "windy"}));
}

climate::NightWeather weather_of(const WeatherOptions& options)
{
    return {home::sky_of(options.sky), home::wind_of(options.wind)};
}

Result<Celsius> logged_temperature(const std::string& option, double degrees)
{
    const auto value = Celsius::from_degrees(degrees);
    if (!(value >= home::kColdestLogged && value <= home::kWarmestLogged)) {
        return Error{ErrorCode::OutOfRange, option + " must lie within -90 and 60 degrees Celsius"};
    }
    return value;
}

void add_sure_flag(CLI::App& command, bool& sure)
{
    command.add_flag("--sure", sure, "Takes a low that is far from what such a night usually has here");
}

Result<void> not_a_slip(Celsius low, Celsius usual, calendar::Date night, words::UnitSystem units)
{
    if (!home::is_slip_of_low(low, usual)) {
        return {};
    }
    const auto tenth = Celsius::from_degrees(low.degrees() / 10.0); // The point forgotten.
    return Error{ErrorCode::OutOfRange,
                 "a low of " + words::temperature(low, units) + " in the night to " + calendar::to_text(night) +
                     " is far from what such a night usually has here, " + words::temperature(usual, units) +
                     (home::is_slip_of_low(tenth, usual) ? "; correct it, or add --sure if it is so"
                                                         : "; did you mean " + words::temperature(tenth, units) +
                                                               "? Add --sure if it is so")};
}

Result<calendar::Date> date_of(const std::string& text, calendar::Date otherwise)
{
    if (text.empty()) {
        return otherwise;
    }
    return calendar::parse_date(text);
}

Result<calendar::Date> past_date_of(const std::string& option, const std::string& text, calendar::Date today,
                                    std::string_view because)
{
    const auto date = date_of(text, today);
    if (date && *date > today) {
        return Error{ErrorCode::OutOfRange, option + " " + text + " is after today" +
                                                (because.empty() ? "" : "; " + std::string{because})};
    }
    return date;
}

} // namespace lathhouse::cli
