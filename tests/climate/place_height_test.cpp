// The height of a place whose height nobody said.

#include "core/climate/place_height.h"

#include "tests/climate/position_at.h"
#include "tests/climate/shipped_stations.h"
#include "tests/climate/shipped_towns.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace lathhouse::climate {
namespace {

geodesy::Town town(double latitude, double longitude, std::optional<double> metres)
{
    return {.id = 1,
            .name = "A",
            .country = "US",
            .region_code = {},
            .region = {},
            .position = at(latitude, longitude),
            .elevation = metres ? std::optional{Metres::from_metres(*metres)} : std::nullopt,
            .population = 7000,
            .zone = {}};
}

std::vector<const Station*> of_source(StationSource source)
{
    std::vector<const Station*> found;
    for (const Station& station : shipped()) {
        if (station.source == source) {
            found.push_back(&station);
        }
    }
    return found;
}

TEST(HeightNear, IsThatOfTheNearestTownsTheNearerTheMore)
{
    // 0 and 11.1 km away: weights 1/4 and 1/172.
    const std::vector<geodesy::Town> towns{town(45.0, 7.0, 300.0), town(45.1, 7.0, 900.0)};
    const auto taken = height_near(towns, at(45.0, 7.0)).value();
    EXPECT_NEAR(taken.height.metres(), 300.0 + 600.0 * (1 / 171.8) / (1 / 4.0 + 1 / 171.8), 0.2);
    EXPECT_NEAR(taken.error.metres(), 10.0, 1e-6);
    EXPECT_NEAR(taken.nearest.metres(), 0.0, 1.0);
}

TEST(HeightNear, PassesOverTownsWithoutAHeight)
{
    const std::vector<geodesy::Town> towns{town(45.0, 7.0, std::nullopt), town(45.05, 7.0, 420.0)};
    EXPECT_NEAR(height_near(towns, at(45.0, 7.0))->height.metres(), 420.0, 1e-6);
}

TEST(HeightNear, IsNotKnownFarFromEverything)
{
    const std::vector<geodesy::Town> towns{town(45.0, 7.0, 300.0)};
    EXPECT_FALSE(height_near(towns, at(45.3, 7.0)).has_value()); // 33 km.
    EXPECT_FALSE(height_near({}, at(45.0, 7.0)).has_value());
}

TEST(ClimateAtHeightNear, IsThatOfTheHeightGivenButSaysWhereItIsFrom)
{
    const auto stations = of_source(StationSource::UsDaily);
    const auto denver = at(39.74, -104.99);
    const auto taken = height_near(shipped_towns(), denver).value();
    const auto ours = climate_at_height_near(stations, shipped_towns(), denver).value();
    const auto given = climate_among(stations, denver, taken.height).value();
    EXPECT_NEAR(taken.height.metres(), 1609.0, 60.0); // A mile high, as its name says.
    EXPECT_EQ(ours.monthly.low, given.monthly.low);
    EXPECT_FALSE(ours.elevation_given);
    EXPECT_GT(ours.expected_error, given.expected_error);
    EXPECT_GT(ours.expected_error_days, given.expected_error_days);
    ASSERT_FALSE(ours.warnings.empty());
    EXPECT_THAT(ours.warnings.front().text, testing::HasSubstr("as high as the towns near it lie"));
}

TEST(ClimateAtHeightNear, TakesTheStationsHeightWhereNothingElseIsNear)
{
    const auto stations = of_source(StationSource::WorldMonthly);
    const auto sahara = at(22.5, 12.5);
    const auto ours = climate_at_height_near(stations, shipped_towns(), sahara).value();
    const auto before = climate_among(stations, sahara, std::nullopt).value();
    EXPECT_EQ(ours.elevation, before.elevation);
    EXPECT_EQ(ours.expected_error, before.expected_error);
}

// Stations left out, their own height unknown: the height taken and the mean lows with it.
TEST(ClimateAtHeightNear, IsRighterThanTheStationsHeightAtStationsLeftOut)
{
    for (const auto source : {StationSource::UsDaily, StationSource::WorldMonthly}) {
        const auto stations = of_source(source);
        double by_towns = 0.0;
        double by_stations = 0.0;
        double height_error = 0.0;
        double height_said = 0.0;
        double said = 0.0;
        int count = 0;
        for (std::size_t which = 0; which < stations.size(); which += 6) {
            const Station& station = *stations[which];
            const auto taken = height_near(shipped_towns(), station.position);
            if (!taken) {
                continue;
            }
            const auto ours = climate_at_height_near(stations, shipped_towns(), station.position, &station);
            const auto before = climate_among(stations, station.position, std::nullopt, &station);
            if (!ours || !before) {
                continue;
            }
            for (std::size_t m = 0; m < 12; ++m) {
                by_towns += std::abs((ours->monthly.low[m] - station.monthly.low[m]).kelvins()) / 12.0;
                by_stations += std::abs((before->monthly.low[m] - station.monthly.low[m]).kelvins()) / 12.0;
            }
            height_error += std::abs((taken->height - station.elevation).metres());
            height_said += taken->error.metres();
            said += ours->expected_error.kelvins();
            ++count;
        }
        ASSERT_GT(count, 80);
        std::printf(
            "%s, %d stations: height off by %.0f m (said %.0f), mean low by %.2f K (said %.2f), with the "
            "stations' height %.2f K\n",
            std::string{to_string(source)}.c_str(), count, height_error / count, height_said / count,
            by_towns / count, said / count, by_stations / count);
        EXPECT_LT(by_towns, 0.95 * by_stations);
        EXPECT_NEAR(said / by_towns, 1.0, 0.2);
    }
}

} // namespace
} // namespace lathhouse::climate
