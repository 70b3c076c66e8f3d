#include "app/cli/all_commands.h"
#include "app/cli/open_household.h"
#include "app/cli/place_report.h"
#include "core/base/parse.h"
#include "core/climate/own_record.h"
#include "core/climate/record_check.h"
#include "core/journal/household_store.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct ImportOptions {
    std::string file;
    std::string name;
    std::string station;
    PlaceOptions place;
    std::string columns;
    bool fahrenheit = false;
    bool replace = false;
    bool anyway = false;
};

/// "date=Day,low=Min,high=Max". Errors: WrongUsage.
Result<climate::DayTableColumns> columns_in(const std::string& text)
{
    climate::DayTableColumns columns;
    for (const auto piece : split(text, ',')) {
        const auto equals = piece.find('=');
        const auto key = lower_case(trimmed(piece.substr(0, equals)));
        const std::string name{equals == std::string_view::npos ? "" : trimmed(piece.substr(equals + 1))};
        if (name.empty() || (key != "date" && key != "low" && key != "high" && key != "rain")) {
            return Error{ErrorCode::WrongUsage,
                         "--columns: \"" + std::string{piece} +
                             "\" is not understood; write it as date=Day,low=Min,high=Max,rain=Rain"};
        }
        if (key == "rain") {
            columns.rain = name;
        } else {
            (key == "date" ? columns.date : key == "low" ? columns.low : columns.high) = name;
        }
    }
    return columns;
}

Result<climate::OwnRecord> read_record(const Globals& globals, const ImportOptions& options,
                                       const home::Place& place)
{
    climate::RecordFile asked{.file = options.file,
                              .station = {},
                              .columns = {},
                              .units =
                                  options.fahrenheit ? climate::TableUnits::Us : climate::TableUnits::Metric};
    if (!options.station.empty()) {
        asked.station = options.station;
    }
    if (!options.columns.empty()) {
        auto columns = columns_in(options.columns);
        if (!columns) {
            return columns.error();
        }
        asked.columns = *std::move(columns);
    }
    auto position = place.position;
    if (is_given(options.place)) {
        const auto given = position_of(options.place);
        if (!given) {
            return given.error();
        }
        position = *given;
    }
    const auto elevation = options.place.elevation_metres ? elevation_of(options.place) : place.elevation;
    if (!elevation) {
        return Error{
            ErrorCode::WrongUsage,
            "the height of the household's place is not known; give the record's own with --elevation M"};
    }
    if (!(elevation->metres() >= -500.0 && elevation->metres() <= 9000.0)) {
        return Error{ErrorCode::OutOfRange, "--elevation must lie within -500 and 9000 metres"};
    }
    auto days = climate::read_record_file(asked);
    if (!days) {
        return days.error();
    }
    if (!climate::summary_of(*days)) {
        return Error{ErrorCode::Malformed, options.file + " has no night's low in it; nothing was imported"};
    }
    const auto name = !options.name.empty() ? options.name : asked.file.stem().string();
    return climate::OwnRecord{.name = name,
                              .file = asked.file.filename().string(),
                              .position = position,
                              .elevation = *elevation,
                              .imported = globals.today,
                              .days = *std::move(days)};
}

Result<Answer> import_record(const Globals& globals, const ImportOptions& options)
{
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    auto household = store->load();
    if (!household) {
        return household.error();
    }
    if (household->own_record && !options.replace) {
        return Error{ErrorCode::WrongUsage, "the household has the record " + household->own_record->name +
                                                " already; add --replace to put this one in its place"};
    }
    auto record = read_record(globals, options, household->place);
    if (!record) {
        return record.error();
    }
    household->own_record = std::make_shared<const climate::OwnRecord>(*std::move(record));
    auto report = report_of(*household, globals.units);
    if (!report) {
        return report.error();
    }
    if (report->implausible && !options.anyway) {
        return Error{ErrorCode::Malformed, options.file +
                                               " is not plausible for this place: " + *report->implausible +
                                               ". Nothing was imported; --anyway imports it all the same"};
    }
    if (const auto kept = store->keep_own_record(*household->own_record); !kept) {
        return kept.error();
    }
    report->answer.text = "Imported.\n" + report->answer.text;
    return std::move(report->answer);
}

Result<Answer> show_record(const Globals& globals)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto household = store->load();
    if (!household) {
        return household.error();
    }
    auto report = report_of(*household, globals.units);
    if (!report) {
        return report.error();
    }
    return std::move(report->answer);
}

Result<Answer> remove_record(const Globals& globals)
{
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    if (const auto removed = store->remove_own_record(); !removed) {
        return removed.error();
    }
    return Answer{{{"removed", true}}, "Removed. The shipped stations answer again.\n", {}};
}

} // namespace

void add_place(Commands& commands)
{
    CLI::App& command =
        commands.add("place", "The household's own station record: shows it against the shipped table",
                     "lathhouse place import porch.csv --columns date=Day,low=Min,high=Max");
    command.require_subcommand(0, 1);

    auto options = std::make_shared<ImportOptions>();
    CLI::App& import = *command.add_subcommand(
        "import",
        "Checks a record of daily lows and highs and keeps it: it then answers before the shipped table");
    import.fallthrough();
    import.footer("Forms: GHCN-Daily (fixed width and comma-separated), or a table with a head line and the\n"
                  "columns date, low, high and, if it has one, rain.\nExample:\n"
                  "  lathhouse place import porch.csv --name Porch --fahrenheit");
    import.add_option("FILE", options->file, "File of daily records")->required();
    import.add_option("--name", options->name, "What to call the record (default: the file's name)");
    import.add_option("--station", options->station, "Which station of a file with several")->type_name("ID");
    import
        .add_option("--at,--position", options->place.at,
                    "Where it was kept (default: the household's place): LAT,LON in degrees, or as elsewhere")
        ->type_name("LAT,LON");
    import
        .add_option("--elevation", options->place.elevation_metres,
                    "Height where it was kept (default: the household's)")
        ->type_name("M");
    import
        .add_option("--columns", options->columns,
                    "Names of the table's columns: date=Day,low=Min,high=Max,rain=Rain")
        ->type_name("NAMES");
    import.add_flag("--fahrenheit", options->fahrenheit, "The table is in degrees Fahrenheit and inches");
    import.add_flag("--replace", options->replace, "Puts it in the place of the record there is");
    import.add_flag("--anyway", options->anyway, "Imports a record that is not plausible for the place");
    commands.on_run(import, [options](const Globals& globals) { return import_record(globals, *options); });

    CLI::App& remove = *command.add_subcommand("remove", "Takes the record out of the household");
    remove.fallthrough();
    commands.on_run(remove, remove_record);
    commands.on_run(command, show_record); // After its own commands, since it counts as called with them.
}

} // namespace lathhouse::cli
