// The coast in the expected error, judged at stations left out.

#include "core/climate/coast_error.h"

#include "core/climate/leave_one_out.h"
#include "core/climate/station_rows.h"
#include "tests/climate/shipped_stations.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>

namespace lathhouse::climate {
namespace {

const geodesy::CoastLines& coast()
{
    static const auto lines =
        geodesy::CoastLines::load(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data/coast.txt").value();
    return lines;
}

PlaceClimate place_at(double latitude, double longitude, double metres)
{
    return climate_among(
               std::span{shipped()},
               Position{Latitude::from_degrees(latitude).value(), Longitude::from_degrees(longitude).value()},
               Metres::from_metres(metres))
        .value();
}

TEST(CoastError, IsTrueAtStationsLeftOutThatLieOtherwiseToTheSea)
{
    // The two numbers were fitted to the even places of the leave-one-out rows; of the odd ones those that
    // lie e times nearer to the sea than their neighbours or farther. Every fifth is enough.
    std::vector<const Station*> monthly;
    for (const Station& station : shipped()) {
        if (station.source == StationSource::WorldMonthly) {
            monthly.push_back(&station);
        }
    }
    double said_without = 0.0;
    double said = 0.0;
    double happened = 0.0;
    int count = 0;
    for (std::size_t at = 1; at < monthly.size(); at += 10) {
        const Station& station = *monthly[at];
        const auto place = climate_among(monthly, station.position, station.elevation, &station);
        if (!place) {
            continue;
        }
        const auto signs = coast_signs(*place, coast()).value();
        if (signs.apart < 1.0) {
            continue;
        }
        double error = 0.0;
        for (std::size_t m = 0; m < 12; ++m) {
            error += std::abs((place->monthly.low[m] - station.monthly.low[m]).kelvins()) / 12.0;
        }
        said_without += place->expected_error.kelvins();
        said += error_with_coast(place->expected_error, signs.apart, station.source).kelvins();
        happened += error;
        ++count;
    }
    ASSERT_GT(count, 20);
    std::printf("%d stations: said without the coast %.2f, with it %.2f, happened %.2f K\n", count,
                said_without / count, said / count, happened / count);
    EXPECT_GT(said, said_without);
    EXPECT_NEAR(said / happened, 1.0, 0.25);
}

TEST(CoastError, GrowsWithTheDifferenceAlone)
{
    const auto plain = KelvinDelta::from_kelvins(0.8);
    for (const auto source : {StationSource::UsDaily, StationSource::WorldMonthly}) {
        EXPECT_LT(error_with_coast(plain, 0.0, source), plain);
        EXPECT_GT(error_with_coast(plain, 1.0, source), plain);
        EXPECT_GT(error_with_coast(plain, 2.0, source), error_with_coast(plain, 1.0, source));
    }
}

TEST(CoastError, IsSaidWhereThePlaceLiesMuchNearerToTheSea)
{
    // An inland station speaks for a place on the shore.
    Station inland = *std::ranges::find(shipped(), StationSource::UsDaily, &Station::source);
    inland.position = {Latitude::literal(44.0), Longitude::literal(-123.1)}; // 80 km from the Pacific.
    inland.elevation = Metres::from_metres(50.0);
    const std::vector<Station> stations{inland};
    auto shore = climate_among(stations, {Latitude::literal(44.0), Longitude::literal(-124.1)},
                               Metres::from_metres(20.0))
                     .value();
    const auto before = shore;
    ASSERT_TRUE(count_coast_in(shore, coast()).has_value());
    EXPECT_GT(shore.expected_error, before.expected_error);
    EXPECT_GT(shore.expected_error_days, before.expected_error_days);
    EXPECT_GT(shore.expected_error_days_carried, before.expected_error_days_carried);
    ASSERT_EQ(shore.warnings.size(), before.warnings.size() + 1);
    EXPECT_THAT(shore.warnings.back(), testing::HasSubstr("milder"));
}

TEST(CoastError, SaysNothingFarInland)
{
    auto place = place_at(41.6, -93.6, 290.0);
    const auto before = place;
    ASSERT_TRUE(count_coast_in(place, coast()).has_value());
    EXPECT_EQ(place.warnings, before.warnings);
    EXPECT_LT(place.expected_error, before.expected_error);
}

TEST(CoastError, NeedsCoastLines)
{
    auto place = place_at(41.6, -93.6, 290.0);
    const auto before = place.expected_error;
    EXPECT_FALSE(count_coast_in(place, geodesy::CoastLines::of({})).has_value());
    EXPECT_EQ(place.expected_error, before);
}

} // namespace
} // namespace lathhouse::climate
