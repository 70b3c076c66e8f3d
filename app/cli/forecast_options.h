#pragma once

#include "app/cli/commands.h"
#include "core/home/thermometer.h"

#include <string>
#include <vector>

namespace lathhouse::cli {

/// Options of a file that may not be ours.
struct FileOptions {
    std::string file; ///< "-" for what is pasted or piped in.
    std::string columns;
};
/// Declares `--columns` with the names that may be mapped.
void add_columns_option(CLI::App& command, FileOptions& options, const std::string& example);
/// Errors: NotFound, Unreadable.
Result<std::string> text_of(const FileOptions& options);
/// What errors call the file.
std::string name_of(const FileOptions& options);

/// Reads a forecast file. Errors: as home::forecast_from.
Result<std::vector<home::KeptForecast>> forecast_of(const FileOptions& options, calendar::Date issued);

/// What may be kept was made by today. Errors: OutOfRange for one of a day to come.
Result<void> were_made_by(calendar::Date today, const std::vector<home::KeptForecast>& forecasts);

/// `--sky` and `--wind`.
struct WeatherOptions {
    std::string sky;
    std::string wind;
};
void add_weather_options(CLI::App& command, WeatherOptions& options);
climate::NightWeather weather_of(const WeatherOptions& options);

/// Errors: OutOfRange outside -90 to 60 degrees, naming the option.
Result<Celsius> logged_temperature(const std::string& option, double degrees);
/// A flag that takes a low as it is. Errors of not_a_slip name it.
void add_sure_flag(CLI::App& command, bool& sure);
/// Errors: OutOfRange for a low that home::is_slip_of_low; `usual` is what such a night has.
Result<void> not_a_slip(Celsius low, Celsius usual, calendar::Date night, words::UnitSystem units);
/// The date of an option, else `otherwise`. Errors: as parse_date.
Result<calendar::Date> date_of(const std::string& text, calendar::Date otherwise);
/// As date_of, of what has happened: today where nothing is said. Errors: OutOfRange for a day to come, with the reason.
Result<calendar::Date> past_date_of(const std::string& option, const std::string& text, calendar::Date today,
                                    std::string_view because = {});

} // namespace lathhouse::cli
