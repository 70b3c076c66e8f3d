#include "core/geodesy/geodesic.h"

#include "core/base/csv.h"
#include "tests/geodesy/position_at.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::geodesy {
namespace {

TEST(Geodesic, IsThatOfKarneysTestSet)
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/geodesy/geodesics.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 100U);
    constexpr double kTolerance = 15e-9; // Metres.
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto number = [&](std::size_t column) { return table->number(row, column).value().value(); };
        const auto line = geodesic(at(number(0), number(1)), at(number(3), number(4)));
        EXPECT_NEAR(line.length.metres(), number(6), kTolerance) << "row " << row;
        // An error of the azimuth moves the far end by the reduced length times it.
        const double turned = std::remainder(line.azimuth.degrees() - number(2), 360.0);
        EXPECT_LT(std::abs(Angle::from_degrees(turned).radians() * number(8)), 2.0 * kTolerance)
            << "row " << row;
    }
}
TEST(Geodesic, IsZeroLongToItself)
{
    EXPECT_EQ(distance(at(48.2, 16.4), at(48.2, 16.4)).metres(), 0.0);
}
TEST(Geodesic, CrossesTheDateLine)
{
    EXPECT_NEAR(distance(at(0.0, 179.5), at(0.0, -179.5)).kilometres(), 111.3195, 0.0001);
    EXPECT_EQ(distance(at(10.0, 180.0), at(10.0, -180.0)).metres(), 0.0);
    EXPECT_NEAR(azimuth(at(0.0, 179.5), at(0.0, -179.5)).degrees(), 90.0, 1e-9);
}
TEST(Geodesic, IsTheSameBothWays)
{
    const auto one = at(-33.87, 151.21);
    const auto other = at(51.5, -0.1);
    EXPECT_NEAR(distance(one, other).metres(), distance(other, one).metres(), 15e-9);
}
TEST(Distances, AreThoseOfEachPoint)
{
    const std::vector<Position> points{at(0.0, 0.0), at(90.0, 0.0), at(-45.0, 170.0)};
    const auto lengths = distances(at(10.0, 20.0), points);
    ASSERT_EQ(lengths.size(), 3U);
    for (std::size_t i = 0; i < points.size(); ++i) {
        EXPECT_EQ(lengths[i].metres(), distance(at(10.0, 20.0), points[i]).metres());
    }
}
TEST(RoughDistance, IsWithinSixThousandths)
{
    for (double latitude = -90.0; latitude <= 90.0; latitude += 15.0) {
        for (double longitude = -180.0; longitude <= 180.0; longitude += 15.0) {
            const auto exact = distance(at(41.0, 2.0), at(latitude, longitude)).metres();
            EXPECT_NEAR(rough_distance(at(41.0, 2.0), at(latitude, longitude)).metres(), exact,
                        0.006 * exact);
        }
    }
}

} // namespace
} // namespace lathhouse::geodesy
