#include "core/climate/station_map.h"

#include "tests/climate/sample_figures.h"
#include "tests/climate/position_at.h"

#include <gtest/gtest.h>

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
