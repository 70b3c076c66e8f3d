#include "app/cli/all_commands.h"
#include "app/cli/shipped_climate.h"

#include "core/base/csv.h"
#include "core/climate/error_map.h"
#include "core/climate/leave_out_dates.h"
#include "core/climate/station_rows.h"
#include "core/geodesy/geodesic.h"
#include "core/geodesy/read_position.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

namespace lathhouse::cli {
namespace {

struct StationsOptions {
    std::string near;
    int count = 10;
    bool leave_one_out = false;
    std::string within;
    std::string out;
    std::string map;
    std::optional<double> dates_at;
};

/// The error of a place's climate at each station that is left out in turn.
Result<Answer> run_leave_one_out(const StationsOptions& options)
{
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    std::optional<climate::StationSource> within;
    if (!options.within.empty()) {
        within =
            options.within == "us" ? climate::StationSource::UsDaily : climate::StationSource::WorldMonthly;
    }
    const auto result = climate::leave_one_out((*table)->stations(), within);
    if (!result) {
        return result.error();
    }
    if (!options.out.empty()) {
        const auto written = write_file_whole(options.out, climate::leave_one_out_text(*result));
        if (!written) {
            return written.error();
        }
    }
    if (!options.map.empty()) {
        const auto written = write_file_whole(options.map, climate::error_map_svg(*result));
        if (!written) {
            return written.error();
        }
    }
    return Answer{{{"count", result->count},
                   {"low_mae_c", json_number(result->low_error.kelvins())},
                   {"low_bias_c", json_number(result->low_bias.kelvins())},
                   {"high_mae_c", json_number(result->high_error.kelvins())}},
                  std::to_string(result->count) + " stations left out in turn: mean low right to " +
                      words::number(result->low_error.kelvins(), 2) + " K, mean high to " +
                      words::number(result->high_error.kelvins(), 2) + " K.\n",
                  {}};
}

Json json_of(const std::map<double, climate::DateErrors>& errors, const char* name, std::string& text)
{
    Json json = Json::object();
    for (const auto& [percent, of] : errors) {
        json[words::number(percent, 0)] = {{"monthly_mae_days", json_number(of.from_model)},
                                           {"neighbours_mae_days", json_number(of.carried)},
                                           {"neighbours_bias_days", json_number(of.carried_bias)}};
        text += std::string{name} + " night, chance " + words::number(percent, 0) +
                " %: from monthly figures " + words::number(of.from_model, 1) +
                ", with the neighbours' counts " + words::number(of.carried, 1) + " days.\n";
    }
    return json;
}

/// The error of frost dates at each station with a daily record that is left out in turn.
Result<Answer> run_leave_out_dates(double line_degrees)
{
    const auto lines = climate::station_row_lines();
    if (std::ranges::none_of(lines,
                             [&](Celsius line) { return std::abs(line.degrees() - line_degrees) < 0.005; })) {
        return Error{ErrorCode::OutOfRange,
                     "--dates must be one of the table's lines: -5, -2.2, 0, 2.2, 5 or 10"};
    }
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    const auto result = climate::leave_out_dates((*table)->stations(), Celsius::from_degrees(line_degrees));
    if (!result) {
        return result.error();
    }
    std::string text =
        std::to_string(result->stations) + " stations left out in turn, mean absolute error:\n";
    Json last = json_of(result->last, "Last", text);
    Json first = json_of(result->first, "First", text);
    return Answer{{{"count", result->stations},
                   {"last", std::move(last)},
                   {"first", std::move(first)},
                   {"said_monthly_days", json_number(result->expected_from_model)},
                   {"said_neighbours_days", json_number(result->expected_carried)}},
                  text,
                  {}};
}

std::string base_text(const climate::BasePeriod& base)
{
    return std::to_string(base.first_year) + "-" + std::to_string(base.last_year);
}

Result<Answer> run_stations(const Globals& globals, const StationsOptions& options)
{
    if (!options.leave_one_out && (!options.out.empty() || !options.map.empty() || options.dates_at)) {
        return Error{ErrorCode::WrongUsage, "--out, --map and --dates need --leave-one-out"};
    }
    if (options.leave_one_out) {
        return options.dates_at ? run_leave_out_dates(*options.dates_at) : run_leave_one_out(options);
    }
    if (options.near.empty()) {
        return Error{ErrorCode::WrongUsage,
                     "stations needs --near LAT,LON or --leave-one-out; --help shows the options"};
    }
    const auto place = geodesy::read_position(options.near);
    if (!place) {
        return place.error();
    }
    if (options.count < 1) {
        return Error{ErrorCode::OutOfRange, "--count must be 1 or more"};
    }
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    const auto all = (*table)->stations();
    std::vector<Position> positions;
    positions.reserve(all.size());
    std::ranges::transform(all, std::back_inserter(positions), &climate::Station::position);
    const auto distances = geodesy::distances(*place, positions);
    std::vector<std::size_t> order(all.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto wanted = std::min(order.size(), static_cast<std::size_t>(options.count));
    std::ranges::partial_sort(order, order.begin() + static_cast<std::ptrdiff_t>(wanted), {},
                              [&](std::size_t i) { return distances[i]; });
    order.resize(wanted);

    const auto climate = shipped_climate(*place, std::nullopt);
    const auto weight_of = [&](const climate::Station& station) -> Json {
        if (!climate) {
            return nullptr; // No station is near enough to speak for the place.
        }
        const auto use = std::ranges::find(climate->stations, &station, &climate::StationInUse::station);
        return json_number(use != climate->stations.end() ? use->weight : 0.0);
    };
    Answer answer;
    if (!climate) {
        answer.warnings.push_back(climate.error().message);
    }
    Json list = Json::array();
    bool from_dwd = false;
    for (const auto i : order) {
        const auto& station = all[i];
        list.push_back({{"id", station.id},
                        {"name", station.name},
                        {"distance_km", json_number(distances[i].kilometres())},
                        {"elevation_m", json_number(station.elevation.metres())},
                        {"weight", weight_of(station)},
                        {"base", base_text(station.base)}});
        from_dwd |= station.source == climate::StationSource::WorldMonthly;
        answer.text += words::padded(station.id, 13) + words::padded(station.name, 34) +
                       words::right_aligned(words::distance(distances[i], globals.units), 10) +
                       words::right_aligned(words::height(station.elevation, globals.units), 10) + "  " +
                       base_text(station.base) + "\n";
    }
    answer.json = {{"stations", std::move(list)}};
    answer.text += "Records: GHCN-Daily, NOAA NCEI.";
    if (from_dwd) {
        answer.text += " 2003-2021 means: Deutscher Wetterdienst (CC BY 4.0).";
    }
    answer.text += "\n";
    return answer;
}

} // namespace

void add_stations(Commands& commands)
{
    auto options = std::make_shared<StationsOptions>();
    CLI::App& command = commands.add("stations", "Climate stations that the program knows near a place",
                                     "lathhouse stations --near 48.2,16.4 --count 5");
    command.add_option("--near", options->near, "Place, as --at of other commands")->type_name("LAT,LON");
    command.add_option("--count", options->count, "How many, the nearest first")->type_name("N");
    command.add_flag("--leave-one-out", options->leave_one_out,
                     "Measure the error of a place's climate at every station");
    command.add_option("--within", options->within, "With --leave-one-out: stations of one source alone")
        ->check(CLI::IsMember({"us", "world"}));
    command.add_option("--out", options->out, "With --leave-one-out: file for the errors, a row a station")
        ->type_name("FILE.csv");
    command
        .add_option("--map", options->map, "With --leave-one-out: a picture of the errors, a dot a station")
        ->type_name("FILE.svg");
    command
        .add_option("--dates", options->dates_at,
                    "With --leave-one-out: the errors of frost dates at that line instead (about a minute)")
        ->type_name("C");
    commands.on_run(command, [options](const Globals& globals) { return run_stations(globals, *options); });
}

} // namespace lathhouse::cli
