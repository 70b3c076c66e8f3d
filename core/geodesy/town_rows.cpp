#include "core/geodesy/town_rows.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <utility>

namespace lathhouse::geodesy {
namespace {

constexpr std::string_view kTownsHead =
    "id,name,other_keys,country,region,latitude,longitude,elevation_m,population,zone\n";
constexpr std::string_view kRegionsHead = "country,code,name,zone\n";

using RegionKey = std::pair<std::string, std::string>;

std::string thousandths(double degrees)
{
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.3f", degrees);
    return text.data();
}

template <std::size_t N>
Result<std::array<std::size_t, N>> columns_of(const CsvTable& table, const std::array<const char*, N>& names)
{
    std::array<std::size_t, N> columns{};
    for (std::size_t i = 0; i < N; ++i) {
        const auto column = table.require_column(names[i]);
        if (!column) {
            return column.error();
        }
        columns[i] = *column;
    }
    return columns;
}

Result<std::vector<RegionRow>> read_regions(const std::filesystem::path& file)
{
    const auto table = CsvTable::read(file);
    if (!table) {
        return table.error();
    }
    const auto columns = columns_of<4>(*table, {"country", "code", "name", "zone"});
    if (!columns) {
        return columns.error();
    }
    std::vector<RegionRow> regions;
    regions.reserve(table->row_count());
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto cell = [&](std::size_t i) { return table->at(row, (*columns)[i]); };
        regions.push_back({cell(0), cell(1), cell(2), cell(3)});
        if (cell(0).size() != 2 || cell(3).empty()) {
            return table->error_at(row, said("a region needs a country of two letters and a zone"));
        }
    }
    return regions;
}

Result<TownRow> town_of(const CsvTable& table, std::size_t row, const std::array<std::size_t, 10>& columns,
                        const std::map<RegionKey, std::string>& zones)
{
    const auto cell = [&](std::size_t i) -> const std::string& { return table.at(row, columns[i]); };
    std::array<std::optional<double>, 10> numbers;
    for (const std::size_t i : {0, 5, 6, 7, 8}) {
        const auto number = table.number(row, columns[i]);
        if (!number) {
            return number.error();
        }
        numbers[i] = *number;
    }
    if (!numbers[0] || !numbers[5] || !numbers[6] || !numbers[8] || cell(1).empty() || cell(3).size() != 2) {
        return table.error_at(
            row, said("a town needs an id, a name, a country of two letters, a position and a population"));
    }
    if (!(*numbers[0] >= 1 && *numbers[0] < 4e9) || !(*numbers[8] >= 0 && *numbers[8] < 4e9)) {
        return table.error_at(row, said("an id or a population is out of range"));
    }
    const auto latitude = Latitude::from_degrees(*numbers[5]);
    const auto longitude = Longitude::from_degrees(*numbers[6]);
    if (!latitude || !longitude) {
        return table.error_at(row, Said{latitude ? longitude.error() : latitude.error()});
    }
    const auto region = zones.find({cell(3), cell(4)});
    if (region == zones.end()) {
        return table.error_at(row, said("a town needs a region of regions.csv"));
    }
    std::vector<std::string> keys;
    if (!cell(2).empty()) {
        for (const auto key : split(cell(2), '|')) {
            keys.emplace_back(key);
        }
    }
    return TownRow{static_cast<std::uint32_t>(*numbers[0]),
                   cell(1),
                   std::move(keys),
                   cell(3),
                   cell(4),
                   {*latitude, *longitude},
                   numbers[7] ? std::optional{Metres::from_metres(*numbers[7])} : std::nullopt,
                   static_cast<std::uint32_t>(*numbers[8]),
                   cell(9).empty() ? region->second : cell(9)};
}

} // namespace

Result<TownRows> read_town_rows(const std::filesystem::path& folder)
{
    TownRows rows;
    auto regions = read_regions(folder / "regions.csv");
    if (!regions) {
        return regions.error();
    }
    rows.regions = *std::move(regions);
    std::map<RegionKey, std::string> zones;
    for (const auto& region : rows.regions) {
        zones[{region.country, region.code}] = region.zone;
    }
    const auto table = CsvTable::read(folder / "towns.csv");
    if (!table) {
        return table.error();
    }
    const auto columns = columns_of<10>(*table, {"id", "name", "other_keys", "country", "region", "latitude",
                                                 "longitude", "elevation_m", "population", "zone"});
    if (!columns) {
        return columns.error();
    }
    rows.towns.reserve(table->row_count());
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        auto town = town_of(*table, row, *columns, zones);
        if (!town) {
            return town.error();
        }
        rows.towns.push_back(*std::move(town));
    }
    return rows;
}

std::string towns_text(const TownRows& rows)
{
    std::map<RegionKey, std::string_view> zones;
    for (const auto& region : rows.regions) {
        zones[{region.country, region.code}] = region.zone;
    }
    std::string text{kTownsHead};
    for (const auto& town : rows.towns) {
        std::string keys;
        for (const auto& key : town.other_keys) {
            keys += (keys.empty() ? "" : "|") + key;
        }
        const auto usual = zones.find({town.country, town.region});
        const bool is_usual = usual != zones.end() && usual->second == town.zone;
        text += std::to_string(town.id) + ',' + csv_field(town.name) + ',' + keys + ',' + town.country + ',' +
                town.region + ',' + thousandths(town.position.latitude.degrees()) + ',' +
                thousandths(town.position.longitude.degrees()) + ',' +
                (town.elevation ? std::to_string(std::lround(town.elevation->metres())) : "") + ',' +
                std::to_string(town.population) + ',' + (is_usual ? "" : town.zone) + '\n';
    }
    return text;
}

std::string regions_text(const TownRows& rows)
{
    std::string text{kRegionsHead};
    for (const auto& region : rows.regions) {
        text += region.country + ',' + csv_field(region.code) + ',' + csv_field(region.name) + ',' +
                region.zone + '\n';
    }
    return text;
}

} // namespace lathhouse::geodesy
