#include "app/clock.h"
#include "app/cli/all_commands.h"
#include "app/cli/members.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/seed_options.h"
#include "app/cli/log_event.h"
#include "app/cli/photo_options.h"
#include "app/cli/log_measurement.h"
#include "app/cli/subcommand.h"
#include "core/home/night_log_file.h"
#include "core/journal/household_store.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct ReadingOptions {
    std::string spot;
    double low = 0.0;
    std::optional<double> high;
    std::optional<double> station;
    std::string date;
    WeatherOptions weather;
    std::string note;
    bool sure = false;
};

/// Errors: as not_a_slip, of the first that is one. A place without stations has no usual low, and all is taken.
Result<void> none_a_slip(const home::Household& household, const std::vector<home::Reading>& readings,
                         words::UnitSystem units)
{
    const auto climate = climate_of(household);
    if (!climate) {
        return {};
    }
    for (const auto& reading : readings) {
        const auto usual = home::of_night(home::usual_lows(*household.spot(reading.spot), climate->monthly.low), reading.night);
        if (auto fits = not_a_slip(reading.low, usual, reading.night, units); !fits) {
            return fits;
        }
    }
    return {};
}

Result<Answer> log_readings(const Globals& globals, const std::vector<home::Reading>& readings)
{
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    if (const auto logged = store->record(std::span{readings}); !logged) {
        return logged.error();
    }
    const auto count = readings.size();
    return Answer{{{"logged", count}},
                  count == 1 ? "Logged one night.\n" : "Logged " + std::to_string(count) + " nights.\n",
                  {}};
}

Result<Answer> log_reading(const Globals& globals, const ReadingOptions& options)
{
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    const auto spot = spot_called(home->as_told, options.spot);
    if (!spot) {
        return spot.error();
    }
    const auto night = past_date_of("--date", options.date, globals.today, "a night is logged when it is over");
    if (!night) {
        return night.error();
    }
    const auto low = logged_temperature("--low", options.low);
    if (!low) {
        return low.error();
    }
    home::Reading reading{(*spot)->id, *night, *low,        {}, weather_of(options.weather),
                          {},          now(),  options.note};
    const auto set = [](const char* option, const std::optional<double>& given,
                        std::optional<Celsius>& target) -> Result<void> {
        if (given) {
            const auto value = logged_temperature(option, *given);
            if (!value) {
                return value.error();
            }
            target = *value;
        }
        return {};
    };
    if (const auto done = set("--high", options.high, reading.high); !done) {
        return done.error();
    }
    if (const auto done = set("--station", options.station, reading.station_low); !done) {
        return done.error();
    }
    if (reading.high && *reading.high < reading.low) {
        return Error{ErrorCode::WrongUsage, "--high is below --low; exchange them"};
    }
    if (const auto fits = options.sure ? Result<void>{} : none_a_slip(home->as_told, {reading}, globals.units); !fits) {
        return fits.error();
    }
    return log_readings(globals, {reading});
}

struct ReadingsOptions {
    FileOptions file;
    std::string spot;
    bool sure = false;
};

Result<Answer> log_readings_file(const Globals& globals, const ReadingsOptions& options)
{
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    std::optional<home::SpotId> spot;
    if (!options.spot.empty()) {
        const auto found = spot_called(home->as_told, options.spot);
        if (!found) {
            return found.error();
        }
        spot = (*found)->id;
    }
    std::vector<ColumnName> names;
    if (!options.file.columns.empty()) {
        const auto parsed = parse_column_names(options.file.columns, home::kReadingColumns);
        if (!parsed) {
            return Error{parsed.error().code, "--columns: " + parsed.error().message};
        }
        names = *parsed;
    }
    const auto text = text_of(options.file);
    if (!text) {
        return text.error();
    }
    const auto readings = NamedRows::parse(*text, name_of(options.file), home::kReadingColumns, names)
                              .and_then([&](const NamedRows& rows) {
                                  return home::readings_from(rows, home->as_told, spot, globals.today, now());
                              });
    if (!readings) {
        return readings.error();
    }
    if (const auto fits = options.sure ? Result<void>{} : none_a_slip(home->as_told, *readings, globals.units); !fits) {
        return Error{fits.error().code, name_of(options.file) + ": " + fits.error().message};
    }
    return log_readings(globals, *readings);
}

struct ForecastOptions {
    FileOptions file;
    std::string issued;
};

Result<Answer> log_forecast(const Globals& globals, const ForecastOptions& options)
{
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    const auto issued = date_of(options.issued, globals.today);
    if (!issued) {
        return issued.error();
    }
    const auto forecasts = forecast_of(options.file, *issued);
    if (!forecasts) {
        return forecasts.error();
    }
    if (const auto made = were_made_by(globals.today, *forecasts); !made) {
        return made.error();
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    if (const auto kept = store->record(std::span{*forecasts}); !kept) {
        return kept.error();
    }
    return Answer{{{"logged", forecasts->size()}},
                  "Kept the forecast of " + std::to_string(forecasts->size()) +
                      (forecasts->size() == 1 ? " night.\n" : " nights.\n"),
                  {}};
}

void add_reading(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ReadingOptions>();
    CLI::App& command = add_subcommand(group, "reading", "What a minimum thermometer said of one night",
                                 "lathhouse log reading --spot 5 --low 3.5 --sky clear --wind calm");
    command.add_option("--spot", options->spot, "Spot by id or name")->required()->type_name("ID");
    command.add_option("--low", options->low, "Lowest of the night, degrees Celsius")
        ->required()
        ->type_name("C");
    command.add_option("--high", options->high, "Highest since the last reading")->type_name("C");
    command
        .add_option("--station", options->station,
                    "What a station near by, in the open, had that same night, degrees Celsius")
        ->type_name("C");
    command.add_option("--date", options->date, "The morning on which the night ended (default: today)")
        ->type_name("YYYY-MM-DD");
    add_weather_options(command, options->weather);
    command.add_option("--note", options->note, "Anything worth keeping");
    add_sure_flag(command, options->sure);
    commands.on_run(command, [options](const Globals& globals) { return log_reading(globals, *options); });
}

void add_readings(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ReadingsOptions>();
    CLI::App& command = add_subcommand(group, "readings", "A file of thermometer readings, CSV or JSON",
                                 "lathhouse log readings porch.csv --spot 5 --columns date=Day,low_c=Min");
    command
        .add_option(
            "file", options->file.file,
            "Columns date, low_c (or low_f) and, where known, spot, high_c, station_low_c, sky, wind, note")
        ->required()
        ->type_name("FILE");
    command.add_option("--spot", options->spot, "Spot of the rows that name none")->type_name("ID");
    add_columns_option(command, options->file, "date=Day,low_c=Min");
    add_sure_flag(command, options->sure);
    commands.on_run(command,
                    [options](const Globals& globals) { return log_readings_file(globals, *options); });
}

void add_forecast(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ForecastOptions>();
    CLI::App& command = add_subcommand(group, "forecast", "Keeps a forecast, so that its errors here are learned",
                                 "lathhouse log forecast lows.csv");
    command.add_option("file", options->file.file, "The forms that tonight --forecast reads")
        ->required()
        ->type_name("FILE");
    command.add_option("--issued", options->issued, "Day on which the forecast was made (default: today)")
        ->type_name("YYYY-MM-DD");
    add_columns_option(command, options->file, "date=day,low_f=Tmin");
    commands.on_run(command, [options](const Globals& globals) { return log_forecast(globals, *options); });
}

} // namespace

void add_log(Commands& commands)
{
    CLI::App& group = commands.add("log", "Writes into the household what was seen",
                                   "lathhouse log reading --spot 5 --low 3.5");
    group.require_subcommand(1);
    add_reading(commands, group);
    add_readings(commands, group);
    add_forecast(commands, group);
    add_seed_logs(commands, group);
    add_photo_log(commands, group);
    add_measurement_logs(commands, group);
    add_log_event(commands, group);
    add_member_log(commands, group);
}

} // namespace lathhouse::cli
