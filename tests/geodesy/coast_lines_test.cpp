#include "core/geodesy/coast_lines.h"

#include "core/base/csv.h"
#include "core/geodesy/geodesic.h"
#include "tests/geodesy/position_at.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <iostream>
#include <random>

namespace lathhouse::geodesy {
namespace {

const CoastLines& shipped_lines()
{
    static const auto coast = CoastLines::load(LATHHOUSE_SOURCE "/climate-data/coast.txt");
    if (!coast) {
        throw std::runtime_error(coast.error().message);
    }
    return *coast;
}

TEST(CoastLinesFile, IsSmall)
{
    EXPECT_LT(std::filesystem::file_size(LATHHOUSE_SOURCE "/climate-data/coast.txt"), 400000U);
}
TEST(CoastLinesFile, HasNoSeamsForCoasts)
{
    for (const auto& line : shipped_lines().lines()) {
        for (std::size_t i = 1; i < line.size(); ++i) {
            EXPECT_LT(rough_distance(line[i - 1], line[i]).kilometres(), 500.0)
                << line[i].latitude.degrees() << ' ' << line[i].longitude.degrees();
            EXPECT_GT(line[i].latitude.degrees(), -89.0);
        }
    }
}
TEST(CoastLinesFile, IsLoadedOnceForAll)
{
    const auto shipped = CoastLines::shipped();
    ASSERT_TRUE(shipped) << shipped.error().message;
    EXPECT_EQ((*shipped)->lines().size(), shipped_lines().lines().size());
    EXPECT_EQ(*CoastLines::shipped(), *shipped);
}

TEST(CoastLinesText, IsReadStepByStepAndAcrossTheDateLine)
{
    const auto coast = CoastLines::parse("# a comment\n17990 1000 20 5 -40 0\r\n\n0 0 1 1\n", "here");
    ASSERT_TRUE(coast) << coast.error().message;
    ASSERT_EQ(coast->lines().size(), 2U);
    const auto& line = coast->lines()[0];
    ASSERT_EQ(line.size(), 3U);
    EXPECT_NEAR(line[1].longitude.degrees(), -179.9, 1e-9);
    EXPECT_NEAR(line[1].latitude.degrees(), 10.05, 1e-9);
    EXPECT_NEAR(line[2].longitude.degrees(), 179.7, 1e-9);
}
TEST(CoastLinesText, ThatIsBrokenIsRefusedWithItsLine)
{
    for (const char* text :
         {"0 0 1 1\n0 0 1\n", "0 0 1 1\n0 0\n", "0 0 1 1\n0 0 x 1\n", "0 0 1 1\n0 9100 1 1\n",
          "0 0 1 1\n0 0 1 1.5\n", "0 0 1 1\n0 0 99999999999 1\n"}) {
        const auto coast = CoastLines::parse(text, "here");
        ASSERT_FALSE(coast) << text;
        EXPECT_EQ(coast.error().code, ErrorCode::Malformed);
        EXPECT_THAT(coast.error().message, testing::HasSubstr("here, line 2"));
    }
    EXPECT_FALSE(CoastLines::parse("# nothing\n", "here"));
}

TEST(DistanceToCoast, IsThatOfPublishedPlaces)
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/geodesy/coast_distances.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 7U);
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto number = [&](std::size_t column) { return table->number(row, column).value().value(); };
        const auto distance = shipped_lines().distance_to_coast(at(number(1), number(2)));
        ASSERT_TRUE(distance);
        std::cout << "[   figures] " << table->at(row, 0) << ": " << distance->kilometres()
                  << " km, published " << number(3) << '\n';
        EXPECT_NEAR(distance->kilometres(), number(3), number(4) * number(3)) << table->at(row, 0);
    }
}
TEST(DistanceToCoast, OfAMeridianIsKnownByTheEllipsoid)
{
    // From the equator 1 degree beside a coast along a meridian: along the equator, 111.3195 km (WGS 84:
    // 6378.137 km x pi / 180).
    const auto coast = CoastLines::of({{at(-3.0, 0.0), at(-1.0, 0.0), at(1.0, 0.0), at(3.0, 0.0)}});
    EXPECT_NEAR(coast.distance_to_coast(at(0.0, 1.0))->kilometres(), 111.3195, 0.001);
    EXPECT_NEAR(coast.distance_to_coast(at(0.0, -1.0))->kilometres(), 111.3195, 0.001);
    EXPECT_LT(coast.distance_to_coast(at(0.5, 0.0))->metres(), 1.0);
}
TEST(DistanceToCoast, IsThatOfTryingEveryPoint)
{
    // Against the plain way: the least geodesic distance to points along every line, 2 km apart. The chords
    // here are short, so that straight in degrees and straight on the globe differ by metres.
    const std::vector<CoastLine> lines{{at(60.0, 179.5), at(60.4, -179.8), at(61.0, -179.0)},
                                       {at(-33.0, 151.0), at(-34.0, 151.2), at(-34.5, 150.4)},
                                       {at(89.0, 0.0), at(89.0, 5.0)}};
    const auto coast = CoastLines::of(lines);
    std::mt19937 random{7};
    std::uniform_real_distribution<double> any{-1.0, 1.0};
    for (int round = 0; round < 200; ++round) {
        const auto here = at(90.0 * any(random), 180.0 * any(random));
        double least = 1e9;
        for (const auto& line : lines) {
            for (std::size_t i = 1; i < line.size(); ++i) {
                const double from = line[i - 1].longitude.degrees();
                const double step = std::remainder(line[i].longitude.degrees() - from, 360.0);
                for (int k = 0; k <= 60; ++k) {
                    const double share = k / 60.0;
                    const double latitude =
                        line[i - 1].latitude.degrees() +
                        share * (line[i].latitude.degrees() - line[i - 1].latitude.degrees());
                    const auto point = at(latitude, std::remainder(from + share * step, 360.0));
                    least = std::min(least, distance(here, point).kilometres());
                }
            }
        }
        EXPECT_NEAR(coast.distance_to_coast(here)->kilometres(), least, 3.0)
            << here.latitude.degrees() << ' ' << here.longitude.degrees();
    }
}
TEST(DistanceToCoast, NeedsACoast)
{
    const auto none = CoastLines::of({}).distance_to_coast(at(0.0, 0.0));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::NotFound);
}

TEST(BuiltCoast, LeavesOutSeamsAndKeepsTheShape)
{
    // A square from 170 E over the 180th meridian, cut there as areas are, and a triangle at the South Pole.
    const auto file = std::filesystem::path{testing::TempDir()} / "lathhouse-land.json";
    const char* topology =
        R"({"type":"Topology","objects":{"land":{}},"transform":{"scale":[1,1],"translate":[0,0]},
        "arcs":[[[170,10],[5,0],[5,0],[0,10],[-10,0],[0,-10]],[[0,-80],[10,0],[0,-10],[-10,0],[0,10]]]})";
    ASSERT_TRUE(write_file_whole(file, topology));
    const auto text = build_coast_text(file, 0.01);
    std::filesystem::remove(file);
    ASSERT_TRUE(text) << text.error().message;
    const auto coast = CoastLines::parse(*text, "built");
    ASSERT_TRUE(coast) << coast.error().message;
    ASSERT_EQ(coast->lines().size(), 3U);
    EXPECT_EQ(coast->lines()[0].front(), at(10.0, 170.0));
    EXPECT_EQ(coast->lines()[0].back(), at(10.0, 180.0));
    EXPECT_EQ(coast->lines()[1].front(), at(20.0, 180.0));
    EXPECT_EQ(coast->lines()[1].back(), at(10.0, 170.0));
    EXPECT_EQ(coast->lines()[2].size(), 2U);
}
TEST(BuiltCoast, RefusesWhatIsNoTopology)
{
    const auto file = std::filesystem::path{testing::TempDir()} / "lathhouse-no-land.json";
    for (
        const char* text :
        {"", "[]", "{}", R"({"type":"Topology","arcs":[],"objects":{}})",
         R"({"type":"Topology","arcs":[[1]],"objects":{"land":{}},"transform":{"scale":[1,1],"translate":[0,0]}})",
         R"({"type":"Topology","arcs":[],"objects":{"land":{}},"transform":7})",
         R"({"type":"Topology","arcs":[],"objects":{"land":{}},"transform":{"scale":[1,1]}})",
         R"({"type":7,"arcs":[],"objects":{"land":{}},"transform":{"scale":[1,1],"translate":[0,0]}})"}) {
        ASSERT_TRUE(write_file_whole(file, text));
        const auto built = build_coast_text(file, 0.01);
        EXPECT_FALSE(built) << text;
    }
    std::filesystem::remove(file);
    EXPECT_EQ(build_coast_text(file, 0.01).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace lathhouse::geodesy
