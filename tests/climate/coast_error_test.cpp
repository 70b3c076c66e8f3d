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

struct JudgedCoast {
    double said_without = 0.0;
    double said = 0.0;
    double happened = 0.0;
    int count = 0;
    void add(const PlaceClimate& place, const CoastSigns& signs, const Station& truth)
    {
        said_without += place.expected_error.kelvins();
        said += error_with_coast(place.expected_error, signs, truth.source).kelvins();
        for (std::size_t m = 0; m < 12; ++m) {
            happened += std::abs((place.monthly.low[m] - truth.monthly.low[m]).kelvins()) / 12.0;
        }
        ++count;
    }
    void print(const char* what) const
    {
        std::printf("%s: %d stations, said without the coast %.2f, with it %.2f, happened %.2f K\n", what,
                    count, said_without / count, said / count, happened / count);
    }
};

TEST(CoastError, IsTrueAtStationsLeftOut)
{
    // Every third station of the world and all of the United States, where few lie on the coast, in classes
    // of how it lies to the sea. The table of all of them, each half judged by the other's numbers, is in
    // docs/methods/between-stations.md.
    for (const auto source : {StationSource::UsDaily, StationSource::WorldMonthly}) {
        std::vector<const Station*> of_source;
        for (const Station& station : shipped()) {
            if (station.source == source) {
                of_source.push_back(&station);
            }
        }
        JudgedCoast shore;
        JudgedCoast water_edge;
        JudgedCoast apart;
        JudgedCoast inland;
        const std::size_t step = source == StationSource::UsDaily ? 1 : 3;
        for (std::size_t at = 1; at < of_source.size(); at += step) {
            const Station& station = *of_source[at];
            const auto place = climate_among(of_source, station.position, station.elevation, &station);
            if (!place) {
                continue;
            }
            const auto signs = coast_signs(*place, coast()).value();
            if (signs.place.kilometres() < 40.0) {
                shore.add(*place, signs, station);
            } else if (signs.apart < 0.2) {
                inland.add(*place, signs, station);
            }
            if (signs.place.kilometres() < 3.0) {
                water_edge.add(*place, signs, station);
            }
            if (signs.apart > 0.7) {
                apart.add(*place, signs, station);
            }
        }
        shore.print("within 40 km of the sea");
        water_edge.print("within 3 km of it");
        apart.print("twice as near to it as the stations, or farther");
        inland.print("inland among inland stations");
        ASSERT_GT(shore.count, 30);
        ASSERT_GT(apart.count, 10);
        EXPECT_GT(apart.said, apart.said_without);
        // Two standard errors of what happened are 0.15 to 0.3 of it in these groups, 0.05 inland.
        EXPECT_NEAR(shore.said / shore.happened, 1.0, 0.25);
        EXPECT_NEAR(apart.said / apart.happened, 1.0, 0.3);
        EXPECT_NEAR(inland.said / inland.happened, 1.0, 0.1);
        // Two standard errors are 0.12 of it in the world and 0.28 in the United States.
        EXPECT_NEAR(water_edge.said / water_edge.happened, 1.0,
                    source == StationSource::UsDaily ? 0.28 : 0.12);
    }
}

TEST(CoastError, GrowsWithTheDifferenceAndBehindTheShore)
{
    const auto plain = KelvinDelta::from_kelvins(0.8);
    const auto with = [&](double kilometres, double apart, StationSource source) {
        return error_with_coast(
            plain, {Metres::from_kilometres(kilometres), Metres::from_kilometres(kilometres), apart}, source);
    };
    for (const auto source : {StationSource::UsDaily, StationSource::WorldMonthly}) {
        EXPECT_LT(with(500.0, 0.0, source), plain);
        EXPECT_LT(with(500.0, 0.0, source), with(500.0, 0.6, source));
        EXPECT_LT(with(500.0, 0.6, source), with(500.0, 1.2, source));
        EXPECT_EQ(with(500.0, 1.6, source), with(500.0, 2.5, source));
        EXPECT_LT(with(60.0, 0.0, source), with(10.0, 0.0, source));
        EXPECT_LT(with(1.0, 0.0, source), with(10.0, 0.0, source));
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
    EXPECT_THAT(shore.warnings.back().text, testing::HasSubstr("milder"));
}

TEST(CoastError, SaysNothingFarInland)
{
    auto place = place_at(41.6, -93.6, 290.0);
    const auto before = place;
    ASSERT_TRUE(count_coast_in(place, coast()).has_value());
    EXPECT_EQ(place.warnings.size(), before.warnings.size());
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
