#include "core/climate/build_station_table.h"

#include "core/base/csv.h"
#include "core/climate/daily_records.h"
#include "core/climate/normals_with_dates.h"
#include "core/climate/rain_checks.h"
#include "core/climate/station_checks.h"
#include "core/climate/station_rows.h"

#include <algorithm>
#include <map>

namespace lathhouse::climate {
namespace {

struct Place {
    std::string name;
    Position position;
    Metres elevation;
};
using Places = std::map<std::string, Place>;

Result<Places> read_places(const std::filesystem::path& file)
{
    const auto table = CsvTable::read(file);
    if (!table) {
        return table.error();
    }
    std::array<std::size_t, 5> columns{};
    constexpr std::array kNames = {"station", "name", "latitude", "longitude", "elevation_m"};
    for (std::size_t k = 0; k < columns.size(); ++k) {
        const auto column = table->require_column(kNames[k]);
        if (!column) {
            return column.error();
        }
        columns[k] = *column;
    }
    Places places;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        std::array<std::optional<double>, 3> numbers{};
        for (std::size_t k = 0; k < numbers.size(); ++k) {
            const auto number = table->number(row, columns[k + 2]);
            if (!number) {
                return number.error();
            }
            numbers[k] = *number;
        }
        if (!numbers[0] || !numbers[1] || !numbers[2]) {
            continue; // Such stations are left out later, as without a position.
        }
        const auto latitude = Latitude::from_degrees(*numbers[0]);
        const auto longitude = Longitude::from_degrees(*numbers[1]);
        if (!latitude || !longitude) {
            return table->error_at(row, Said{latitude ? longitude.error() : latitude.error()});
        }
        places.emplace(
            table->at(row, columns[0]),
            Place{table->at(row, columns[1]), {*latitude, *longitude}, Metres::from_metres(*numbers[2])});
    }
    return places;
}

Station station_of(RecordNormals normals, const Place& place)
{
    // The first two letters of a GHCN-Daily id are the country's FIPS code; we only know our own source's.
    const bool in_us = normals.station.starts_with("US");
    return {.id = normals.station,
            .name = place.name,
            .country = in_us ? "United States of America" : "",
            .position = place.position,
            .elevation = place.elevation,
            .base = {normals.first_year, normals.last_year},
            .source = in_us ? StationSource::UsDaily : StationSource::Own,
            .monthly = normals.monthly,
            .rain = normals.rain,
            .lowest_of_season = normals.lowest_of_season,
            .dates = std::move(normals.dates),
            .persistence = normals.persistence,
            .trend = normals.trend,
            .completeness = normals.completeness};
}

} // namespace

Result<BuiltTable> build_station_table(const TableSources& sources)
{
    BuiltTable built;
    Places places;
    if (sources.places) {
        auto read = read_places(*sources.places);
        if (!read) {
            return read.error();
        }
        places = *std::move(read);
    }
    for (const auto& path : sources.records) {
        const auto file = DailyFile::open(path);
        if (!file) {
            return file.error();
        }
        struct Named {
            std::string station;
            Result<RecordNormals> normals;
        };
        const auto percents = station_row_percents();
        auto all = for_stations_of(*file, [&](const DailyRecord& record) {
            return Named{record.station(), normals_with_dates(record, sources.base, station_row_lines(),
                                                              {percents.begin(), percents.end()})};
        });
        if (!all) {
            return all.error();
        }
        for (auto& [id, normals] : *all) {
            const auto place = places.find(id);
            const auto name = place != places.end() ? place->second.name : std::string{};
            if (!normals) {
                built.left_out.push_back({id, name, StationSource::UsDaily, normals.error().message});
                continue;
            }
            if (sources.places && place == places.end()) {
                built.left_out.push_back({id, name, StationSource::UsDaily, "no position"});
                continue;
            }
            const Place nowhere{
                "", {Latitude::literal(0.0), Longitude::literal(0.0)}, Metres::from_metres(0.0)};
            auto station = station_of(*std::move(normals), place != places.end() ? place->second : nowhere);
            if (!sources.places) {
                built.unplaced.insert(id);
            } else if (auto fault = range_fault(station)) {
                built.left_out.push_back({id, name, station.source, *std::move(fault)});
                continue;
            }
            built.stations.push_back(std::move(station));
        }
    }
    if (sources.world) {
        auto world = read_world_rows(*sources.world, sources.world_base);
        if (!world) {
            return world.error();
        }
        std::ranges::move(world->stations, std::back_inserter(built.stations));
        std::ranges::move(world->left_out, std::back_inserter(built.left_out));
    }
    if (built.unplaced.empty()) {
        const auto faults = neighbour_faults(built.stations);
        std::vector<Station> kept;
        for (std::size_t i = 0; i < built.stations.size(); ++i) {
            auto& station = built.stations[i];
            if (faults[i]) {
                built.left_out.push_back({station.id, station.name, station.source, *faults[i]});
            } else {
                kept.push_back(std::move(station));
            }
        }
        built.stations = std::move(kept);
        // A month left out may be the one that hid another, so the check goes on until it finds none.
        for (auto wet = rain_faults(built.stations); !wet.empty(); wet = rain_faults(built.stations)) {
            for (const RainFault& fault : wet) {
                Station& station = built.stations[fault.station];
                for (std::size_t m = 0; m < 12; ++m) {
                    if (fault.months[m]) {
                        station.rain[m].reset();
                    }
                }
                built.left_out.push_back({station.id, station.name, station.source, fault.reason});
            }
        }
    }
    const auto by_source_and_id = [](const auto& a, const auto& b) {
        return std::tie(a.source, a.id) < std::tie(b.source, b.id);
    };
    std::ranges::sort(built.stations, by_source_and_id);
    std::ranges::sort(built.left_out, by_source_and_id);
    return built;
}

std::string left_out_text(const std::vector<LeftOut>& left_out)
{
    std::string text = "id,name,source,reason\n";
    for (const auto& station : left_out) {
        text += csv_field(station.id) + "," + csv_field(station.name) + "," +
                (station.source == StationSource::WorldMonthly ? "world_monthly" : "us_daily") + "," +
                csv_field(station.reason) + "\n";
    }
    return text;
}

} // namespace lathhouse::climate
