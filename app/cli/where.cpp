#include "app/cli/all_commands.h"

#include "app/words/place_words.h"
#include "core/climate/place_climate.h"
#include "core/geodesy/coast_lines.h"
#include "core/geodesy/geodesic.h"
#include "core/geodesy/nearest_towns.h"
#include "core/geodesy/place_name.h"
#include "core/geodesy/read_position.h"
#include "core/geodesy/town_table.h"

#include <algorithm>
#include <memory>

namespace lathhouse::cli {
namespace {

struct WhereOptions {
    std::vector<std::string> words;
    std::string country;
    int count = 5;
};

/// A place found, with what the program can say of it.
struct Found {
    const geodesy::Town* town; ///< nullptr for a place given by its coordinates.
    Position position;
    std::vector<climate::StationInUse> stations; ///< Nearest first; weights are not meant.
    std::vector<geodesy::TownNear> nearest;
    std::optional<geodesy::ZoneProposal> zone;
    std::optional<Metres> coast;
};

std::vector<climate::StationInUse> nearest_stations(const climate::StationTable& table, Position position)
{
    constexpr std::size_t kShown = 3;
    std::vector<climate::StationInUse> near;
    for (const auto& station : table.stations()) {
        near.push_back({&station, geodesy::distance(position, station.position), 0.0});
    }
    const auto shown = std::min(near.size(), kShown);
    std::ranges::partial_sort(near, near.begin() + static_cast<std::ptrdiff_t>(shown), {},
                              &climate::StationInUse::distance);
    near.erase(near.begin() + static_cast<std::ptrdiff_t>(shown), near.end());
    return near;
}

Json json_height(const geodesy::Town& town)
{
    return town.elevation ? json_number(town.elevation->metres()) : Json(nullptr);
}

Json json_of(const Found& found)
{
    const auto* town = found.town;
    Json stations = Json::array();
    for (const auto& use : found.stations) {
        stations.push_back({{"id", use.station->id},
                            {"name", use.station->name},
                            {"distance_km", json_number(use.distance.kilometres())},
                            {"elevation_m", json_number(use.station->elevation.metres())}});
    }
    const auto& nearest = found.nearest.front();
    return {{"name", town != nullptr ? Json(town->name) : Json(nullptr)},
            {"region", town != nullptr && !town->region.empty() ? Json(town->region) : Json(nullptr)},
            {"country", town != nullptr ? Json(town->country) : Json(nullptr)},
            {"country_name", town != nullptr ? Json(geodesy::country_name(town->country)) : Json(nullptr)},
            {"population", town != nullptr ? Json(town->population) : Json(nullptr)},
            {"latitude", json_number(found.position.latitude.degrees())},
            {"longitude", json_number(found.position.longitude.degrees())},
            {"elevation_m", town != nullptr ? json_height(*town) : Json(nullptr)},
            {"zone", town != nullptr ? Json(town->zone)
                     : found.zone    ? Json(found.zone->zone)
                                     : Json(nullptr)},
            {"other_zones", found.zone ? Json(found.zone->others) : Json::array()},
            {"nearest_town",
             {{"name", nearest.town->name},
              {"country", nearest.town->country},
              {"distance_km", json_number(nearest.distance.kilometres())},
              {"elevation_m", json_height(*nearest.town)}}},
            {"coast_km", found.coast ? json_number(found.coast->kilometres()) : Json(nullptr)},
            {"stations", stations}};
}

std::string zone_sentence(const Found& found, words::UnitSystem units)
{
    if (found.town != nullptr) {
        return "Time zone " + std::string{found.town->zone} + ".";
    }
    if (!found.zone) {
        return "No town is near enough to propose a time zone; name one yourself.";
    }
    std::string text = "Time zone proposed: " + found.zone->zone + ", that of " +
                       std::string{found.zone->from.town->name} + ", " +
                       words::distance(found.zone->from.distance, units) + " away";
    for (const auto& other : found.zone->others) {
        text += "; towns with " + other + " are near too";
    }
    return text + (found.zone->is_plain() ? "." : ". Please check it.");
}

std::string text_of(const Found& found, words::UnitSystem units)
{
    std::string text;
    if (found.town != nullptr) {
        text += geodesy::full_name(*found.town) + "\n";
    }
    text += "  " + words::position(found.position);
    if (found.town != nullptr) {
        text += (found.town->elevation ? ", " + words::height(*found.town->elevation, units) : "") +
                (found.town->population > 0 ? ", " + std::to_string(found.town->population) + " people" : "");
    } else {
        const auto& nearest = found.nearest.front();
        text += "\n  Nearest town: " + geodesy::full_name(*nearest.town) + ", " +
                words::distance(nearest.distance, units) + " away" +
                (nearest.town->elevation ? ", at " + words::height(*nearest.town->elevation, units) : "");
    }
    text += "\n  " + zone_sentence(found, units) + "\n";
    if (found.coast) {
        text += "  Nearest coast: " + words::distance(*found.coast, units) + ".\n";
    }
    text += "  Nearest climate stations: ";
    for (std::size_t i = 0; i < found.stations.size(); ++i) {
        const auto& use = found.stations[i];
        text += (i == 0 ? "" : "; ") + use.station->name + ", " + words::distance(use.distance, units) +
                ", at " + words::height(use.station->elevation, units);
    }
    return text + ".\n";
}

/// Coordinates hold a digit; so do a few towns, which is tried where the coordinates cannot be read.
bool may_be_coordinates(const std::string& text)
{
    return text.find_first_of("0123456789") != std::string::npos;
}

Result<Answer> run_where(const Globals& globals, const WhereOptions& options)
{
    constexpr int kMost = 100;
    if (options.count < 1 || options.count > kMost) {
        return Error{ErrorCode::OutOfRange, "--count must lie within 1 and 100"};
    }
    std::string text;
    for (const auto& word : options.words) {
        text += (text.empty() ? "" : " ") + word;
    }
    const auto table = geodesy::TownTable::shipped();
    if (!table) {
        return table.error();
    }
    const auto station_table = stations();
    if (!station_table) {
        return station_table.error();
    }
    const auto coast = geodesy::CoastLines::shipped();
    Answer answer;
    if (!coast) {
        answer.warnings.push_back(coast.error().message);
    }
    const auto found_at = [&](const geodesy::Town* town, Position position) {
        Found found{town,
                    position,
                    nearest_stations(**station_table, position),
                    geodesy::nearest_towns((*table)->towns(), position, 1),
                    geodesy::propose_zone((*table)->towns(), position),
                    std::nullopt};
        if (coast) {
            if (const auto distance = (*coast)->distance_to_coast(position)) {
                found.coast = *distance;
            }
        }
        return found;
    };

    std::vector<Found> places;
    const auto position = may_be_coordinates(text) ? geodesy::read_position(text)
                                                   : Result<Position>{Error{ErrorCode::Malformed, ""}};
    if (position) {
        places.push_back(found_at(nullptr, *position));
    } else if (may_be_coordinates(text) && position.error().code != ErrorCode::Malformed) {
        return position.error();
    } else {
        const auto found = (*table)->search(text, options.country, static_cast<std::size_t>(options.count));
        if (!found) {
            return may_be_coordinates(text) ? position.error() : found.error();
        }
        for (const auto& one : *found) {
            if (one.match != geodesy::NameMatch::NearMiss) {
                places.push_back(found_at(one.town, one.town->position));
            }
        }
        if (places.empty()) {
            return may_be_coordinates(text) ? position.error() : geodesy::unknown_town(text, *found);
        }
    }
    Json list = Json::array();
    for (const auto& place : places) {
        list.push_back(json_of(place));
        answer.text += text_of(place, globals.units);
    }
    answer.json = {{"places", std::move(list)}};
    answer.text += "Towns: GeoNames (CC BY 4.0). Coast lines: Natural Earth (public domain). Stations: "
                   "GHCN-Daily, NOAA NCEI; Deutscher Wetterdienst (CC BY 4.0).\n";
    return answer;
}

} // namespace

void add_where(Commands& commands)
{
    auto options = std::make_shared<WhereOptions>();
    CLI::App& command = commands.add("where", "Finds a place by the name of a town or by coordinates",
                                     "lathhouse where \"Springfield, Missouri\"");
    command
        .add_option("place", options->words,
                    "A town's name (region or country after a comma), LAT,LON, or EPSG:code:easting,northing")
        ->required()
        ->type_name("NAME|LAT,LON");
    command.add_option("--country", options->country, "Towns of one country alone, by its two letters")
        ->type_name("CC");
    command.add_option("--count", options->count, "How many towns at most (default 5)")->type_name("N");
    commands.on_run(command, [options](const Globals& globals) { return run_where(globals, *options); });
}

} // namespace lathhouse::cli
