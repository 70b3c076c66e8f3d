#include "core/climate/station_map.h"

#include "core/geodesy/town_rows.h"
#include "core/geodesy/town_table.h"
#include "tests/climate/position_at.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>

namespace lathhouse::climate {
namespace {

/// An invented station of the inland sample.
Station station(const char* id, Position position)
{
    MonthlyFigures figures = inland_figures();
    figures.mean_spread = figures.low_spread;
    Monthly<std::optional<Millimetres>> rain{};
    return {id,
            id,
            "",
            position,
            Metres::from_metres(100.0),
            {1991, 2018},
            StationSource::UsDaily,
            figures,
            rain,
            std::nullopt,
            {}};
}

class StationMapOfThree : public testing::Test {
protected:
    std::vector<Station> stations_{station("A", at(45.0, 11.2)), station("B", at(45.5, 10.5)),
                                   station("C", at(44.0, 11.0))};
    geodesy::CoastLines coast_ = geodesy::CoastLines::of({{at(45.0, 0.0), at(45.0, 11.5), at(50.0, 11.5)}});
    PlaceClimate place_ = climate_among(stations_, at(45.0, 11.0), Metres::from_metres(100.0)).value();
};

TEST_F(StationMapOfThree, ShowsAllInUseAtTheirDistances)
{
    const auto map = station_map(place_, coast_, nullptr, std::nullopt);
    ASSERT_TRUE(map) << map.error().message;
    ASSERT_EQ(map->stations.size(), place_.stations.size());
    EXPECT_EQ(map->stations_beyond, 0U);
    for (const auto& mark : map->stations) {
        EXPECT_NEAR(mark.at.from_middle().metres(), mark.use.distance.metres(), 0.01);
        EXPECT_LT(mark.use.distance, map->radius);
    }
    EXPECT_FALSE(map->coast.empty());
    EXPECT_TRUE(map->towns.empty());
}
TEST_F(StationMapOfThree, CountsThoseBeyondASmallMap)
{
    const auto map = station_map(place_, coast_, nullptr, Metres::from_kilometres(20.0));
    ASSERT_TRUE(map);
    EXPECT_EQ(map->stations.size() + map->stations_beyond, place_.stations.size());
    EXPECT_EQ(map->stations.size(), 1U);
}
TEST_F(StationMapOfThree, NamesAFewLargeTownsApartFromEachOther)
{
    const auto towns = geodesy::TownTable::unpack(
                           geodesy::pack_towns(geodesy::read_town_rows(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data").value()),
                           "towns")
                           .value();
    const auto radius = Metres::from_kilometres(300.0);
    const auto map = station_map(place_, coast_, &towns, radius);
    ASSERT_TRUE(map);
    ASSERT_GT(map->towns.size(), 2U);
    for (std::size_t a = 0; a < map->towns.size(); ++a) {
        EXPECT_LT(map->towns[a].at.from_middle(), radius);
        EXPECT_GT(map->towns[a].at.from_middle().metres(), 0.1 * radius.metres()); // Nothing is written over the place.
        for (std::size_t b = a + 1; b < map->towns.size(); ++b) {
            EXPECT_GE(map->towns[a].town->population, map->towns[b].town->population);
            EXPECT_GT(std::hypot(map->towns[a].at.east.metres() - map->towns[b].at.east.metres(),
                                 map->towns[a].at.north.metres() - map->towns[b].at.north.metres()),
                      0.1 * radius.metres());
        }
    }
}

TEST_F(StationMapOfThree, RefusesARadiusThatIsNone)
{
    for (const double kilometres : {0.0, -5.0, 20000.0, std::numeric_limits<double>::quiet_NaN()}) {
        const auto map = station_map(place_, coast_, nullptr, Metres::from_kilometres(kilometres));
        ASSERT_FALSE(map) << kilometres;
        EXPECT_EQ(map.error().code, ErrorCode::OutOfRange);
    }
}

} // namespace
} // namespace lathhouse::climate
