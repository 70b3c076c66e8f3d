#include "app/cli/all_commands.h"

#include "core/base/csv.h"
#include "core/geodesy/coast_lines.h"
#include "core/geodesy/town_rows.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct TownsOptions {
    std::string build;
    std::string divisions;
    std::string out;
};

Result<Answer> build_towns(const TownsOptions& options)
{
    const auto rows = geodesy::build_town_rows(options.build, options.divisions);
    if (!rows) {
        return rows.error();
    }
    const std::filesystem::path folder = options.out;
    if (auto written = write_file_whole(folder / "regions.csv", geodesy::regions_text(*rows)); !written) {
        return written.error();
    }
    if (auto written = write_file_whole(folder / "towns.csv", geodesy::towns_text(*rows)); !written) {
        return written.error();
    }
    return Answer{
        {{"folder", folder.string()}, {"towns", rows->towns.size()}, {"regions", rows->regions.size()}},
        "Wrote " + std::to_string(rows->towns.size()) + " towns and " + std::to_string(rows->regions.size()) +
            " regions to towns.csv and regions.csv in " + folder.string() + ".\n",
        {}};
}

struct CoastOptions {
    PlaceOptions place;
    std::string build;
    double tolerance_degrees = 0.01;
    std::string out;
};

Result<Answer> build_coast(const CoastOptions& options)
{
    if (options.out.empty()) {
        return Error{ErrorCode::WrongUsage, "coast --build needs --out FILE for the lines"};
    }
    if (!(options.tolerance_degrees >= 0.0 && options.tolerance_degrees <= 1.0)) {
        return Error{ErrorCode::OutOfRange, "--tolerance must lie within 0 and 1 degrees"};
    }
    const auto text = geodesy::build_coast_text(options.build, options.tolerance_degrees);
    if (!text) {
        return text.error();
    }
    if (auto written = write_file_whole(options.out, *text); !written) {
        return written.error();
    }
    return Answer{{{"file", options.out}, {"bytes", text->size()}},
                  "Wrote the coast lines to " + options.out + ".\n",
                  {}};
}

Result<Answer> run_coast(const Globals& globals, const CoastOptions& options)
{
    if (!options.build.empty()) {
        return build_coast(options);
    }
    const auto position = position_of(options.place);
    if (!position) {
        return position.error();
    }
    const auto coast = geodesy::CoastLines::shipped();
    if (!coast) {
        return coast.error();
    }
    const auto distance = (*coast)->distance_to_coast(*position);
    if (!distance) {
        return distance.error();
    }
    return Answer{
        {{"distance_km", json_number(distance->kilometres())}},
        "The nearest coast is " + words::distance(*distance, globals.units) +
            " away, by coast lines drawn to some kilometres.\nCoast lines: Natural Earth (public domain).\n",
        {}};
}

} // namespace

void add_towns(Commands& commands)
{
    auto options = std::make_shared<TownsOptions>();
    CLI::App& command =
        commands.add("towns", "Makes the shipped table of towns anew",
                     "lathhouse towns --build cities500.txt --divisions admin1.json --out climate-data");
    command.add_option("--build", options->build, "GeoNames' table of populated places (19 columns, tabs)")
        ->required()
        ->type_name("FILE");
    command
        .add_option("--divisions", options->divisions, "Names of first divisions: JSON with code and name")
        ->required()
        ->type_name("FILE.json");
    command.add_option("--out", options->out, "Folder for towns.csv and regions.csv")
        ->required()
        ->type_name("DIR");
    commands.on_run(command, [options](const Globals&) { return build_towns(*options); });
}

void add_coast(Commands& commands)
{
    auto options = std::make_shared<CoastOptions>();
    CLI::App& command = commands.add("coast", "How far the sea is; makes the shipped coast lines anew",
                                     "lathhouse coast --at 48.21,16.37");
    add_position_options(command, options->place, false);
    command.add_option("--build", options->build, "Land areas as TopoJSON, to make the coast lines from")
        ->type_name("FILE.json");
    command
        .add_option("--tolerance", options->tolerance_degrees,
                    "With --build: how far a line may be off, in degrees (default 0.01)")
        ->type_name("DEGREES");
    command.add_option("--out", options->out, "With --build: file for the lines")->type_name("FILE.txt");
    commands.on_run(command, [options](const Globals& globals) { return run_coast(globals, *options); });
}

} // namespace lathhouse::cli
