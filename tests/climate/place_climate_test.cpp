#include "core/climate/place_climate.h"

#include "core/base/csv.h"
#include "core/climate/leave_one_out.h"
#include "core/climate/monthly_form.h"
#include "core/climate/station_weights.h"
#include "tests/climate/sample_figures.h"
#include "tests/climate/position_at.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <numeric>

namespace lathhouse::climate {
namespace {

/// An invented station: the inland sample, warmer or colder.
Station station(const char* id, Position position, double metres, double warmer = 0.0,
                StationSource source = StationSource::UsDaily)
{
    MonthlyFigures figures = inland_figures();
    figures.mean_spread = figures.low_spread;
    if (source == StationSource::WorldMonthly) {
        figures.low_spread.reset();
    }
    for (std::size_t m = 0; m < 12; ++m) {
        figures.low[m] = figures.low[m] + KelvinDelta::from_kelvins(warmer);
        figures.high[m] = figures.high[m] + KelvinDelta::from_kelvins(warmer);
        figures.lowest[m] = figures.low[m] - KelvinDelta::from_kelvins(18.0);
    }
    figures.years = 20;
    Monthly<std::optional<Millimetres>> rain{};
    rain.fill(Millimetres::from_millimetres(50.0));
    return {id,      id,   "",           position, Metres::from_metres(metres), {1991, 2018}, source,
            figures, rain, std::nullopt, {}};
}

std::vector<Station> four_corners()
{
    return {station("A", at(44.5, 10.5), 200), station("B", at(44.5, 11.5), 200),
            station("C", at(45.5, 10.5), 200), station("D", at(45.5, 11.5), 200)};
}

TEST(PlaceClimate, AmongEqualsIsTheSame)
{
    const auto stations = four_corners();
    const auto place = climate_among(stations, at(45, 11), Metres::from_metres(200));
    ASSERT_TRUE(place.has_value()) << place.error().message;
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(place->monthly.low[m].degrees(), inland_figures().low[m].degrees(), 1e-9);
        EXPECT_NEAR((*place->monthly.low_spread)[m].kelvins(), (*inland_figures().low_spread)[m].kelvins(),
                    1e-9);
        EXPECT_NEAR(place->rain[m]->millimetres(), 50.0, 1e-9);
        EXPECT_NEAR((place->monthly.low[m] - *place->monthly.lowest[m]).kelvins(), 18.0, 1e-9);
    }
    EXPECT_TRUE(place->warnings.empty()) << place->warnings.front().text;
}

TEST(PlaceClimate, WeightsSumToOneHeaviestFirst)
{
    auto stations = four_corners();
    stations.push_back(station("E", at(45.05, 11.05), 250));
    const auto place = climate_among(stations, at(45, 11), Metres::from_metres(200));
    ASSERT_TRUE(place.has_value());
    EXPECT_EQ(place->stations.front().station->id, "E");
    double sum = 0.0;
    double before = 1.0;
    for (const StationInUse& s : place->stations) {
        EXPECT_GE(s.weight, 0.0);
        EXPECT_LE(s.weight, before);
        before = s.weight;
        sum += s.weight;
    }
    EXPECT_NEAR(sum, 1.0, 1e-12);
}

TEST(PlaceClimate, HigherIsColderByTheLapse)
{
    const auto stations = four_corners();
    const auto low = climate_among(stations, at(45, 11), Metres::from_metres(200));
    const auto high = climate_among(stations, at(45, 11), Metres::from_metres(1200));
    ASSERT_TRUE(low && high);
    EXPECT_NEAR((low->monthly.low[0] - high->monthly.low[0]).kelvins(), Lapse::kLowPerKilometre, 1e-9);
    EXPECT_GT(high->expected_error, low->expected_error);
}

TEST(PlaceClimate, WithoutHeightTheStationsGiveIt)
{
    const auto stations = four_corners();
    const auto place = climate_among(stations, at(45, 11), std::nullopt);
    ASSERT_TRUE(place.has_value());
    EXPECT_FALSE(place->elevation_given);
    EXPECT_NEAR(place->elevation.metres(), 200.0, 1e-9);
    EXPECT_THAT(place->warnings, testing::ElementsAre(testing::Field(&Said::text, testing::HasSubstr("height"))));
    EXPECT_STREQ(place->warnings.front().sentence,
                 "the height of the place is not given; %1 m, the weighted height of its stations, is taken");
}

TEST(PlaceClimate, WithoutHeightTheErrorGrowsWithTheReliefAround)
{
    auto stations = four_corners();
    stations[0] = station("A", at(44.5, 10.5), 1200, -5.4);
    const auto given = climate_among(stations, at(45, 11), Metres::from_metres(450));
    const auto not_given = climate_among(stations, at(45, 11), std::nullopt);
    ASSERT_TRUE(given && not_given);
    EXPECT_GT(not_given->expected_error, given->expected_error);
    EXPECT_GT(not_given->expected_error_days, given->expected_error_days);
}

TEST(PlaceClimate, FarStationsAreSaidToBeFar)
{
    const auto stations = four_corners();
    const auto far = climate_among(stations, at(45, 14), Metres::from_metres(200));
    ASSERT_TRUE(far.has_value());
    EXPECT_THAT(far->warnings, testing::Contains(testing::Field(&Said::text, testing::HasSubstr("km away"))));
    const auto weak = climate_among(stations, at(45, 22), Metres::from_metres(200));
    ASSERT_TRUE(weak.has_value());
    EXPECT_THAT(weak->warnings, testing::Contains(testing::Field(&Said::text, testing::HasSubstr("weak"))));
    EXPECT_GT(weak->expected_error, far->expected_error);
}

TEST(PlaceClimate, NoStationNearIsAnError)
{
    const auto stations = four_corners();
    EXPECT_EQ(climate_among(stations, at(-45, 170), std::nullopt).error().code, ErrorCode::NoStation);
    EXPECT_EQ(climate_among(std::span<const Station>{}, at(45, 11), std::nullopt).error().code,
              ErrorCode::NoStation);
}

TEST(PlaceClimate, NoStationNearInHeightIsAnError)
{
    const auto stations = four_corners();
    EXPECT_EQ(climate_among(stations, at(45, 11), Metres::from_metres(2300)).error().code,
              ErrorCode::NoStation);
}

TEST(PlaceClimate, BasePeriodsAreNotMixed)
{
    std::vector<Station> stations = four_corners();
    stations.push_back(station("W", at(45, 11), 200, 3.0, StationSource::WorldMonthly));
    const auto place = climate_among(stations, at(45, 11), Metres::from_metres(200));
    ASSERT_TRUE(place.has_value());
    for (const StationInUse& s : place->stations) {
        EXPECT_EQ(s.station->source, place->stations.front().station->source);
    }
}

TEST(PlaceClimate, AcrossTheDateLineIsNear)
{
    const std::vector<Station> stations{station("A", at(50, 179.5), 10), station("B", at(50, -179.5), 10)};
    const auto place = climate_among(stations, at(50, 179.9), Metres::from_metres(10));
    ASSERT_TRUE(place.has_value());
    EXPECT_EQ(place->stations.size(), 2U);
    EXPECT_LT(place->stations.front().distance.kilometres(), 30.0);
}

TEST(PlaceClimate, AtAPoleThereIsAnAnswer)
{
    const std::vector<Station> stations{station("A", at(82, 10), 10), station("B", at(82, -170), 10)};
    EXPECT_TRUE(climate_among(stations, at(90, 0), Metres::from_metres(10)).has_value());
}

TEST(PlaceClimate, TwoStationsAtOnePointDoNotHurt)
{
    const std::vector<Station> stations{station("A", at(45, 11), 200), station("B", at(45, 11), 200, 1.0)};
    const auto place = climate_among(stations, at(45, 11), Metres::from_metres(200));
    ASSERT_TRUE(place.has_value());
    EXPECT_NEAR(place->monthly.low[0].degrees(), inland_figures().low[0].degrees() + 0.5, 1e-9);
}

TEST(PlaceClimate, LeavingOutEachUsStationErrsByLessThanTheBar)
{
    const std::filesystem::path checks = LATHHOUSE_CHECKS;
    if (checks.empty()) {
        GTEST_SKIP() << "needs the outside check values";
    }
    const auto places = read_monthly_form(CsvTable::read(checks / "monthly_1991_2018.csv").value());
    ASSERT_TRUE(places.has_value());
    std::vector<Station> stations;
    for (const MonthlyPlace& place : *places) {
        Station one = station(place.station.c_str(), place.position, place.elevation->metres());
        one.monthly = place.figures;
        stations.push_back(one);
    }
    const auto result = leave_one_out(stations, StationSource::UsDaily);
    ASSERT_TRUE(result.has_value());
    std::printf("leave one out, %d stations: low %.3f (%+.3f), high %.3f, said %.3f K\n", result->count,
                result->low_error.kelvins(), result->low_bias.kelvins(), result->high_error.kelvins(),
                result->expected_error.kelvins());
    EXPECT_LE(result->low_error.kelvins(), 0.85);
    EXPECT_LE(std::abs(result->low_bias.kelvins()), 0.1);
    // What the answers say of themselves is what they do, within a tenth.
    EXPECT_NEAR(result->expected_error / result->low_error, 1.0, 0.1);
}

struct TableBars {
    const char* name;
    StationSource source;
    double low, high;
};
void PrintTo(const TableBars& bars, std::ostream* out)
{
    *out << bars.name;
}
class LeaveOneOutOfTheShippedTable : public testing::TestWithParam<TableBars> {};

TEST_P(LeaveOneOutOfTheShippedTable, ErrsByLessThanTheBar)
{
    const auto table =
        StationTable::find().and_then([](const auto& file) { return StationTable::load(file); });
    ASSERT_TRUE(table.has_value()) << table.error().message;
    const auto result = leave_one_out(table->stations(), GetParam().source);
    ASSERT_TRUE(result.has_value()) << result.error().message;
    std::printf("leave one out, %s, %d stations: low %.3f (%+.3f), high %.3f, said %.3f K\n", GetParam().name,
                result->count, result->low_error.kelvins(), result->low_bias.kelvins(),
                result->high_error.kelvins(), result->expected_error.kelvins());
    EXPECT_GT(result->count, 1000);
    EXPECT_LE(result->low_error.kelvins(), GetParam().low);
    EXPECT_LE(result->high_error.kelvins(), GetParam().high);
    EXPECT_LE(std::abs(result->low_bias.kelvins()), 0.1);
    // What the answers say of themselves is what they do, within a tenth.
    EXPECT_NEAR(result->expected_error / result->low_error, 1.0, 0.1);
}

INSTANTIATE_TEST_SUITE_P(Sources, LeaveOneOutOfTheShippedTable,
                         testing::Values(TableBars{"UnitedStates", StationSource::UsDaily, 0.85, 0.65},
                                         TableBars{"World", StationSource::WorldMonthly, 1.15, 1.0}),
                         [](const auto& row) { return std::string{row.param.name}; });

} // namespace
} // namespace lathhouse::climate
