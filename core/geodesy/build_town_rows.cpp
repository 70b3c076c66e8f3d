#include "core/geodesy/town_rows.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/geodesy/place_name.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace lathhouse::geodesy {
namespace {

// Columns of the gazetteer's table, from 0.
enum Column : std::size_t {
    kId = 0,
    kName = 1,
    kOtherNames = 3,
    kLatitude = 4,
    kLongitude = 5,
    kFeature = 7,
    kCountry = 8,
    kDivision = 10,
    kPopulation = 14,
    kTerrain = 16,
    kZone = 17,
    kColumns = 19
};

bool is_chosen(std::string_view feature, std::uint32_t population, const TownChoice& choice)
{
    // Historical, abandoned and destroyed places.
    if (feature == "PPLH" || feature == "PPLCH" || feature == "PPLQ" || feature == "PPLW") {
        return false;
    }
    if (feature == "PPLC" || feature == "PPLA") {
        return true;
    }
    return population >= (feature == "PPLX" ? choice.least_population_of_part : choice.least_population);
}

/// How many bytes of other names a town keeps.
std::size_t room_for_names(std::string_view feature, std::uint32_t population)
{
    const bool is_seat = feature == "PPLC" || feature == "PPLA";
    if (population >= 300000) {
        return 260;
    }
    if (is_seat && population >= 40000) {
        return 150;
    }
    return population >= 100000 ? 30 : 0;
}

/// Airport codes and other abbreviations stand among the names: "MUC".
bool is_abbreviation(std::string_view name)
{
    return name.size() <= 4 && std::ranges::all_of(name, [](char letter) {
               return (letter >= 'A' && letter <= 'Z') || letter == '.' || letter == ' ';
           });
}

/// The gazetteer writes transliterations made by machine in small letters: "mwinhen". The names that they
/// were made from stand beside them.
bool is_transliteration(std::string_view name)
{
    return name.front() >= 'a' && name.front() <= 'z';
}

std::vector<std::string> other_keys(std::string_view names, const std::string& main_key, std::size_t room)
{
    struct Count {
        std::string key;
        int writings;
    };
    std::vector<Count> counts;
    if (room == 0 || names.empty()) {
        return {};
    }
    for (const auto name : split(names, ',')) {
        if (name.empty() || is_abbreviation(name) || is_transliteration(name)) {
            continue;
        }
        auto key = name_key(name);
        if (key.size() < 2 || key == main_key) {
            continue;
        }
        const auto found = std::ranges::find(counts, key, &Count::key);
        if (found != counts.end()) {
            ++found->writings;
        } else {
            counts.push_back({std::move(key), 1});
        }
    }
    std::ranges::stable_sort(counts, std::ranges::greater{}, &Count::writings);
    std::vector<std::string> keys;
    std::size_t used = 0;
    for (auto& [key, writings] : counts) {
        if (used + key.size() + 1 <= room) {
            used += key.size() + 1;
            keys.push_back(std::move(key));
        }
    }
    return keys;
}

Result<std::map<std::string, std::string>> read_divisions(const std::filesystem::path& file)
{
    const auto text = read_text_file(file);
    if (!text) {
        return text.error();
    }
    const auto list = nlohmann::json::parse(*text, nullptr, false);
    std::map<std::string, std::string> names;
    const Error wrong{ErrorCode::Malformed,
                      file.string() + " is no list of divisions; each needs a \"code\" and a \"name\""};
    if (!list.is_array()) {
        return wrong;
    }
    for (const auto& entry : list) {
        if (!entry.is_object() || !entry.contains("code") || !entry.contains("name") ||
            !entry["code"].is_string() || !entry["name"].is_string()) {
            return wrong;
        }
        names[entry["code"].get<std::string>()] = entry["name"].get<std::string>();
    }
    return names;
}

Result<std::optional<TownRow>> town_of_line(std::string_view line, const TownChoice& choice)
{
    const auto cells = split(line, '\t');
    if (cells.size() != kColumns) {
        return Error{ErrorCode::Malformed, "has " + std::to_string(cells.size()) + " columns, needs 19"};
    }
    const auto id = parse_integer(cells[kId]);
    const auto latitude = parse_number(cells[kLatitude]);
    const auto longitude = parse_number(cells[kLongitude]);
    const auto population = parse_number(cells[kPopulation]);
    if (!id || *id <= 0 || !latitude || !longitude || !population || *population < 0 || *population > 4e9) {
        return Error{ErrorCode::Malformed, "has an id, a position or a population that is no number"};
    }
    const auto people = static_cast<std::uint32_t>(*population);
    if (!is_chosen(cells[kFeature], people, choice) || cells[kZone].empty() || cells[kCountry].size() != 2) {
        return std::optional<TownRow>{};
    }
    const auto north = Latitude::from_degrees(*latitude);
    const auto east = Longitude::from_degrees(*longitude);
    if (!north || !east) {
        return Error{ErrorCode::Malformed, "has a position that is not on the globe"};
    }
    constexpr int kLowest = -450; // The Dead Sea's shore lies near -430 m; -9999 stands for no figure.
    const auto terrain = parse_integer(cells[kTerrain]);
    return std::optional{TownRow{
        static_cast<std::uint32_t>(*id),
        std::string{cells[kName]},
        other_keys(cells[kOtherNames], name_key(cells[kName]), room_for_names(cells[kFeature], people)),
        std::string{cells[kCountry]},
        std::string{cells[kDivision]},
        {*north, *east},
        terrain && *terrain > kLowest ? std::optional{Metres::from_metres(static_cast<double>(*terrain))}
                                      : std::nullopt,
        people,
        std::string{cells[kZone]}}};
}

} // namespace

Result<TownRows> build_town_rows(const std::filesystem::path& places, const std::filesystem::path& divisions,
                                 TownChoice choice)
{
    const auto names = read_divisions(divisions);
    if (!names) {
        return names.error();
    }
    const auto text = read_text_file(places);
    if (!text) {
        return text.error();
    }
    TownRows rows;
    std::map<std::pair<std::string, std::string>, std::map<std::string, int>> zones;
    std::size_t number = 0;
    for (const auto line : split(*text, '\n')) {
        ++number;
        if (trimmed(line).empty()) {
            continue;
        }
        auto town = town_of_line(line, choice);
        if (!town) {
            return Error{town.error().code,
                         places.string() + ", line " + std::to_string(number) + ": " + town.error().message};
        }
        if (*town) {
            ++zones[{(**town).country, (**town).region}][(**town).zone];
            rows.towns.push_back(**std::move(town));
        }
    }
    std::ranges::sort(rows.towns, {}, [](const TownRow& town) {
        return std::tuple{std::string_view{town.country}, std::string_view{town.region}, town.id};
    });
    for (const auto& [key, counts] : zones) {
        const auto most =
            std::ranges::max_element(counts, {}, [](const auto& count) { return count.second; });
        const auto name = names->find(key.first + "." + key.second);
        rows.regions.push_back(
            {key.first, key.second, name == names->end() ? std::string{} : name->second, most->first});
    }
    return rows;
}

} // namespace lathhouse::geodesy
