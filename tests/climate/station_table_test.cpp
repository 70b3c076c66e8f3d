#include "core/climate/station_table.h"

#include "core/base/csv.h"
#include "core/climate/station_checks.h"
#include "core/climate/station_rows.h"
#include "tests/climate/shipped_stations.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>
#include <set>

namespace lathhouse::climate {
namespace {

using testing::HasSubstr;

const std::filesystem::path kShipped = std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data/stations.csv";

TEST(ShippedStations, EveryRowIsWithinItsRanges)
{
    EXPECT_GT(shipped().size(), 3500U);
    std::set<std::string> ids;
    for (const auto& station : shipped()) {
        EXPECT_TRUE(ids.insert(station.id).second) << station.id << " stands twice";
        EXPECT_EQ(range_fault(station), std::nullopt) << station.id;
        EXPECT_FALSE(station.id.empty());
        EXPECT_FALSE(station.name.empty()) << station.id;
        EXPECT_LE(station.base.first_year, station.base.last_year) << station.id;
        for (std::size_t m = 0; m < 12; ++m) {
            // Cherrapunji's wettest months are near 3,000 mm.
            EXPECT_TRUE(!station.rain[m] || station.rain[m]->millimetres() < 3500.0) << station.id;
        }
        for (const auto& dates : station.dates) {
            EXPECT_GE(dates.first.years.value_or(0), 10) << station.id;
        }
        if (station.source == StationSource::UsDaily) {
            EXPECT_TRUE(station.monthly.low_spread && station.monthly.mean_spread) << station.id;
            EXPECT_TRUE(station.persistence && *station.persistence > 0.2 && *station.persistence < 0.95)
                << station.id << " " << *station.persistence;
        }
    }
}

TEST(ShippedStations, NoneIsAtOddsWithItsNeighbours)
{
    const auto faults = neighbour_faults(shipped());
    for (std::size_t i = 0; i < faults.size(); ++i) {
        EXPECT_EQ(faults[i], std::nullopt) << shipped()[i].id;
    }
}

TEST(ShippedStations, RowsComeBackAsTheyWereWritten)
{
    const auto text = read_text_file(kShipped);
    ASSERT_TRUE(text);
    EXPECT_EQ(station_rows_text(shipped()), *text);
}

TEST(StationTable, PackedFileHoldsTheRows)
{
    const auto file = StationTable::find();
    ASSERT_TRUE(file) << file.error().message;
    const auto start = std::chrono::steady_clock::now();
    const auto table = StationTable::load(*file);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    ASSERT_TRUE(table) << table.error().message;
    RecordProperty("load_ms", std::to_string(took.count()));
    ASSERT_EQ(table->stations().size(), shipped().size());
    // The rows' text holds all that a station has, so equal text is an equal station.
    EXPECT_EQ(station_rows_text(table->stations()), station_rows_text(shipped()));
    EXPECT_EQ(table->by_id(shipped().back().id)->name, shipped().back().name);
    EXPECT_EQ(table->by_id("no such station"), nullptr);
}

std::string packed_three()
{
    return pack_stations(std::span{shipped()}.first(3));
}

TEST(StationTable, CutAnywhereIsDamaged)
{
    const auto bytes = packed_three();
    ASSERT_TRUE(StationTable::unpack(bytes, "x"));
    for (std::size_t length = 0; length < bytes.size(); ++length) {
        const auto table = StationTable::unpack(std::string_view{bytes}.substr(0, length), "x");
        ASSERT_FALSE(table) << length;
        ASSERT_EQ(table.error().code, ErrorCode::Damaged) << length;
    }
}

TEST(StationTable, AnyChangedByteIsNoticed)
{
    const auto bytes = packed_three();
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        auto changed = bytes;
        changed[at] = static_cast<char>(changed[at] ^ 0x10);
        ASSERT_FALSE(StationTable::unpack(changed, "x")) << at;
    }
}

TEST(StationTable, NewerFormIsTooNew)
{
    auto bytes = packed_three();
    bytes[8] = 3;
    EXPECT_EQ(StationTable::unpack(bytes, "x").error().code, ErrorCode::TooNew);
}

TEST(StationTable, OlderFormAsksToBeMadeAgain)
{
    auto bytes = packed_three();
    bytes[8] = 1;
    EXPECT_EQ(StationTable::unpack(bytes, "x").error().code, ErrorCode::Damaged);
}

TEST(StationTable, MissingFileAndFolderAreNamed)
{
    EXPECT_EQ(StationTable::load("/nowhere/stations.bin").error().code, ErrorCode::NotFound);
    EXPECT_EQ(StationTable::load(LATHHOUSE_SOURCE).error().code, ErrorCode::Unreadable);
}

TEST(StationRows, FaultsAreNamedWithTheirLine)
{
    const auto head_and_row = station_rows_text(std::span{shipped()}.first(1));
    auto bad = head_and_row;
    bad.replace(bad.find(",us_daily,"), 10, ",elsewhere,");
    const auto rows = parse_station_rows(bad, "stations.csv");
    ASSERT_FALSE(rows);
    EXPECT_THAT(rows.error().message, HasSubstr("stations.csv, line 2: "));
    EXPECT_EQ(parse_station_rows("id,name\n1,2\n", "x").error().code, ErrorCode::Malformed);
}

// --- The checks, on made stations.

Station made(double latitude, double height, double mean_low)
{
    const auto low = Celsius::from_degrees(mean_low);
    const auto high = Celsius::from_degrees(mean_low + 10.0);
    Station station = shipped().front();
    station.position = {*Latitude::from_degrees(latitude), Longitude::literal(10.0)};
    station.elevation = Metres::from_metres(height);
    station.monthly.low.fill(low);
    station.monthly.high.fill(high);
    station.monthly.lowest.fill(std::nullopt);
    return station;
}

TEST(StationChecks, HighBelowLowIsImpossible)
{
    auto station = made(50.0, 100.0, 5.0);
    EXPECT_EQ(range_fault(station), std::nullopt);
    station.monthly.high[3] = Celsius::from_degrees(4.9);
    EXPECT_THAT(range_fault(station).value_or(""), HasSubstr("month 4"));
}

TEST(StationChecks, AStationFarFromItsNeighboursIsFoundAndTheyAreNotBlamed)
{
    std::vector<Station> stations;
    for (int k = 0; k < 6; ++k) {
        stations.push_back(made(50.0 + 0.2 * k, 100.0 + 50.0 * k, 5.0 - 0.275 * k));
    }
    stations.push_back(made(50.5, 200.0, 16.0));
    const auto faults = neighbour_faults(stations);
    for (std::size_t k = 0; k < 6; ++k) {
        EXPECT_EQ(faults[k], std::nullopt);
    }
    EXPECT_TRUE(faults[6]);
}

TEST(StationChecks, AloneAStationIsNotJudged)
{
    EXPECT_EQ(neighbour_faults(std::vector{made(50.0, 100.0, 5.0), made(50.1, 100.0, 25.0)}),
              (std::vector<std::optional<std::string>>{std::nullopt, std::nullopt}));
}

} // namespace
} // namespace lathhouse::climate
