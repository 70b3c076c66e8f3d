#include "app/cli/frost.h"

#include "app/cli/all_commands.h"
#include "app/cli/household_options.h"

#include <memory>

namespace lathhouse::cli {

Result<std::vector<Celsius>> lines_of(const FrostOptions& options)
{
    if (options.thresholds.empty()) {
        return std::vector{Celsius::from_degrees(2.2), Celsius::from_degrees(0.0),
                           Celsius::from_degrees(-2.2)};
    }
    std::vector<Celsius> lines;
    for (const double degrees : options.thresholds) {
        if (!(degrees >= -90.0 && degrees <= 60.0)) {
            return Error{ErrorCode::OutOfRange, "--threshold must lie within -90 and 60 degrees Celsius"};
        }
        lines.push_back(Celsius::from_degrees(degrees));
    }
    return lines;
}

void add_frost(Commands& commands)
{
    auto options = std::make_shared<FrostOptions>();
    CLI::App& command = commands.add(
        "frost", "Last and first nights at or below a line: chances, not promises",
        "lathhouse frost --records USC00084731.dly --base 1991-2020 --threshold 0 --threshold -2.2");
    command
        .add_option("--records", options->records, "Files of daily records (GHCN-Daily, or its CSV forms)")
        ->type_name("FILE");
    command.add_option("--base", options->base, "First and last year to use")->type_name("Y-Y");
    add_numbers(command, "--threshold", options->thresholds, "Line in degrees Celsius; may be repeated");
    add_numbers(command, "--risk", options->risks,
                "Further percent chance to give dates for; may be repeated");
    command
        .add_option("--turn", options->turn, "Day that ends a cold season, instead of the one the lows give")
        ->type_name("MM-DD");
    command.add_option("--stations", options->stations, "Names and positions of the records' stations")
        ->type_name("FILE.csv");
    add_place_options(command, options->place, false);
    command.add_flag("--from-monthly", options->from_monthly,
                     "Use the model even where a station has counted dates");
    command.add_option("--monthly", options->monthly, "Table of monthly figures of your own places")
        ->type_name("FILE.csv");
    commands.on_run(command, [options](const Globals& globals) -> Result<Answer> {
        for (const double risk : options->risks) {
            if (!(risk > 0.0 && risk < 100.0)) {
                return Error{ErrorCode::OutOfRange, "--risk must lie between 0 and 100 percent"};
            }
        }
        if (!options->records.empty()) {
            return frost_from_records(globals, *options);
        }
        if (!options->monthly.empty()) {
            return frost_from_monthly(globals, *options);
        }
        if (is_given(options->place) || has_household(globals)) { // Without a place: the household's.
            return frost_of_place(globals, *options);
        }
        return Error{ErrorCode::WrongUsage, "frost needs --records FILE, --monthly FILE, --at LAT,LON or "
                                            "--place NAME; --help shows the options"};
    });
}

} // namespace lathhouse::cli
