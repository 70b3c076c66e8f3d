#include "core/geodesy/azimuthal_map.h"

#include "core/geodesy/geodesic.h"
#include "tests/geodesy/position_at.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace lathhouse::geodesy {
namespace {

TEST(AzimuthalMap, KeepsDistanceAndDirectionFromItsMiddle)
{
    std::mt19937 random{11};
    std::uniform_real_distribution<double> any{-1.0, 1.0};
    for (const auto home : {at(48.2, 20.5), at(-33.9, 151.2), at(0.0, 0.0), at(90.0, 0.0), at(-90.0, 0.0),
                            at(64.0, -180.0), at(89.9, 12.0)}) {
        const auto map = AzimuthalMap::around(home);
        ASSERT_TRUE(map) << map.error().message;
        for (int round = 0; round < 200; ++round) {
            const auto there = at(90.0 * any(random), 180.0 * any(random));
            const auto line = geodesic(home, there);
            const auto point = map->point(there);
            ASSERT_TRUE(point);
            EXPECT_NEAR(point->from_middle().metres(), line.length.metres(), 0.01);
            const double drawn = std::atan2(point->east.metres(), point->north.metres());
            // At a pole every direction is south (or north): the drawing's own, not the library's, is meant.
            if (std::abs(home.latitude.degrees()) < 90.0) {
                EXPECT_NEAR(std::remainder(drawn - line.azimuth.radians(), 2.0 * M_PI), 0.0, 1e-8);
            }
        }
    }
}
TEST(AzimuthalMap, HasItsMiddleAtTheMiddle)
{
    const auto map = AzimuthalMap::around(at(12.0, 34.0));
    ASSERT_TRUE(map);
    EXPECT_NEAR(map->point(at(12.0, 34.0))->from_middle().metres(), 0.0, 1e-6);
}

TEST(MapLines, AreCutAtTheCircle)
{
    const auto map = AzimuthalMap::around(at(0.0, 0.0));
    ASSERT_TRUE(map);
    // Right through the middle from far outside: enters and leaves at the rim.
    const std::vector<std::vector<Position>> through{{at(0.0, -5.0), at(0.0, 5.0)}};
    const auto strokes = map->lines_within(through, Metres::from_kilometres(100.0));
    ASSERT_EQ(strokes.size(), 1U);
    ASSERT_EQ(strokes[0].size(), 2U);
    EXPECT_NEAR(strokes[0][0].east.kilometres(), -100.0, 1e-6);
    EXPECT_NEAR(strokes[0][1].east.kilometres(), 100.0, 1e-6);
    // Out and in again: two strokes.
    const std::vector<std::vector<Position>> loop{{at(0.0, 0.0), at(0.0, 2.0), at(0.2, 2.0), at(0.2, 0.0)}};
    const auto parts = map->lines_within(loop, Metres::from_kilometres(100.0));
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_NEAR(parts[0].back().from_middle().kilometres(), 100.0, 1e-6);
    EXPECT_NEAR(parts[1].front().from_middle().kilometres(), 100.0, 1e-6);
    // All within: untouched. All outside: nothing.
    const std::vector<std::vector<Position>> within{{at(0.1, 0.1), at(0.2, 0.2), at(0.3, 0.1)}};
    ASSERT_EQ(map->lines_within(within, Metres::from_kilometres(100.0)).size(), 1U);
    EXPECT_EQ(map->lines_within(within, Metres::from_kilometres(100.0))[0].size(), 3U);
    const std::vector<std::vector<Position>> outside{{at(10.0, 10.0), at(11.0, 10.0)}};
    EXPECT_TRUE(map->lines_within(outside, Metres::from_kilometres(100.0)).empty());
}
TEST(MapLines, CrossTheDateLine)
{
    const auto map = AzimuthalMap::around(at(0.0, 179.9));
    ASSERT_TRUE(map);
    const std::vector<std::vector<Position>> line{{at(0.0, 179.8), at(0.0, -179.8)}};
    const auto strokes = map->lines_within(line, Metres::from_kilometres(200.0));
    ASSERT_EQ(strokes.size(), 1U);
    EXPECT_NEAR(strokes[0][0].east.kilometres(), -11.13, 0.01);
    EXPECT_NEAR(strokes[0][1].east.kilometres(), 33.40, 0.01);
}

TEST(RingRadii, AreRoundAndWithinTheMap)
{
    for (double kilometres = 1.0; kilometres < 15000.0; kilometres *= 1.13) {
        const auto rings = ring_radii(Metres::from_kilometres(kilometres), 1000.0);
        EXPECT_GE(rings.size(), 2U) << kilometres;
        EXPECT_LE(rings.size(), 6U) << kilometres;
        EXPECT_LE(rings.back().kilometres(), kilometres * (1.0 + 1e-9));
    }
    const auto rings = ring_radii(Metres::from_kilometres(130.0), 1000.0);
    EXPECT_NEAR(rings.front().kilometres(), 25.0, 1e-9);
}

} // namespace
} // namespace lathhouse::geodesy
