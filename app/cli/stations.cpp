#include "app/cli/all_commands.h"

#include "core/climate/leave_one_out.h"
#include "core/geodesy/geodesic.h"
#include "core/geodesy/read_position.h"

#include <algorithm>
#include <memory>
#include <numeric>

namespace lathhouse::cli {
namespace {

struct StationsOptions {
    std::string near;
    int count = 10;
    bool leave_one_out = false;
    std::string within;
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
    return Answer{{{"count", result->count},
                   {"low_mae_c", json_number(result->low_error.kelvins())},
                   {"low_bias_c", json_number(result->low_bias.kelvins())},
                   {"high_mae_c", json_number(result->high_error.kelvins())}},
                  std::to_string(result->count) + " stations left out in turn: mean low right to " +
                      words::number(result->low_error.kelvins(), 2) + " K, mean high to " +
                      words::number(result->high_error.kelvins(), 2) + " K.\n",
                  {}};
}

std::string base_text(const climate::BasePeriod& base)
{
    return std::to_string(base.first_year) + "-" + std::to_string(base.last_year);
}

Result<Answer> run_stations(const Globals& globals, const StationsOptions& options)
{
    if (options.leave_one_out) {
        return run_leave_one_out(options);
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

    Answer answer;
    Json list = Json::array();
    bool from_dwd = false;
    for (const auto i : order) {
        const auto& station = all[i];
        list.push_back({{"id", station.id},
                        {"name", station.name},
                        {"distance_km", json_number(distances[i].kilometres())},
                        {"elevation_m", json_number(station.elevation.metres())},
                        {"weight", nullptr},
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
    commands.on_run(command, [options](const Globals& globals) { return run_stations(globals, *options); });
}

} // namespace lathhouse::cli
