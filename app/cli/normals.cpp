#include "app/cli/all_commands.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/climate/build_station_table.h"
#include "core/climate/station_rows.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct NormalsOptions {
    std::vector<std::string> records;
    std::string base = "1991-2020";
    std::string stations;
    std::string world;
    std::string world_base = "2003-2021";
    std::string out;
};

/// Rows as objects by column name; what is no number stays text, an empty field is null.
Result<Json> json_of_rows(const std::string& text)
{
    const auto table = CsvTable::parse(text, "the table");
    if (!table) {
        return table.error();
    }
    Json rows = Json::array();
    const auto& names = table->column_names();
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        Json object = Json::object();
        for (std::size_t column = 0; column < names.size(); ++column) {
            const auto& field = table->at(row, column);
            const auto number = column > 2 ? parse_number(field) : std::nullopt; // Ids and names are text.
            object[names[column]] = number                        ? json_number(*number)
                                    : column > 2 && field.empty() ? Json(nullptr)
                                                                  : Json(field);
        }
        rows.push_back(std::move(object));
    }
    return rows;
}

Result<Answer> run_normals(const NormalsOptions& options)
{
    climate::TableSources sources;
    sources.records.assign(options.records.begin(), options.records.end());
    const auto base = parse_base_period(options.base);
    if (!base) {
        return base.error();
    }
    sources.base = *base;
    const auto world_base = parse_base_period(options.world_base);
    if (!world_base) {
        return world_base.error();
    }
    sources.world_base = *world_base;
    if (!options.stations.empty()) {
        sources.places = options.stations;
    }
    if (!options.world.empty()) {
        if (options.stations.empty() && !options.records.empty()) {
            return Error{ErrorCode::WrongUsage,
                         "--world needs --stations FILE.csv with the records' positions"};
        }
        sources.world = options.world;
    }
    if (options.records.empty() && options.world.empty()) {
        return Error{ErrorCode::WrongUsage, "normals needs --records FILE; --help shows the options"};
    }
    const auto built = climate::build_station_table(sources);
    if (!built) {
        return built.error();
    }
    Answer answer;
    for (const auto& station : built->left_out) {
        if (options.out.empty()) {
            answer.warnings.push_back("station " + station.id + " is left out: " + station.reason);
        }
    }
    const auto text = climate::station_rows_text(built->stations, built->unplaced);
    if (options.out.empty()) {
        const auto rows = json_of_rows(text);
        if (!rows) {
            return rows.error();
        }
        answer.json = {{"stations", *rows}};
        answer.text = text;
        return answer;
    }
    const std::filesystem::path out = options.out;
    const auto left_out = out.parent_path() / "left_out.csv";
    if (const auto written = write_file_whole(out, text); !written) {
        return written.error();
    }
    if (const auto written = write_file_whole(left_out, climate::left_out_text(built->left_out)); !written) {
        return written.error();
    }
    answer.json = {
        {"file", out.string()}, {"stations", built->stations.size()}, {"left_out", built->left_out.size()}};
    answer.text = "Wrote " + std::to_string(built->stations.size()) + " stations to " + out.string() + "; " +
                  std::to_string(built->left_out.size()) + " are left out and named in " + left_out.string() +
                  ".\n";
    return answer;
}

} // namespace

void add_normals(Commands& commands)
{
    auto options = std::make_shared<NormalsOptions>();
    CLI::App& command =
        commands.add("normals", "Rows of the station table, computed from daily records",
                     "lathhouse normals --records USC00084731.dly --base 1991-2020 --out stations.csv");
    command
        .add_option("--records", options->records, "Files of daily records (GHCN-Daily, or its CSV forms)")
        ->type_name("FILE");
    command.add_option("--base", options->base, "First and last year to use")->type_name("Y-Y");
    command
        .add_option("--stations", options->stations,
                    "Names and positions: columns station, name, latitude, longitude, elevation_m")
        ->type_name("FILE.csv");
    command.add_option("--world", options->world, "Monthly means of the world's stations, to add")
        ->type_name("FILE.csv");
    command.add_option("--world-base", options->world_base, "Years behind the monthly means")
        ->type_name("Y-Y");
    command
        .add_option("--out", options->out,
                    "File for the rows; stations left out go to left_out.csv beside it")
        ->type_name("FILE.csv");
    commands.on_run(command, [options](const Globals&) { return run_normals(*options); });
}

} // namespace lathhouse::cli
