#include "tests/cli/run_command.h"

#include "core/base/csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;

TEST(Where, FindsATownByItsName)
{
    const auto ran = run_command({"--json", "where", "Wien"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto place = ran.json().at("places").at(0);
    EXPECT_EQ(place.at("name"), "Vienna");
    EXPECT_EQ(place.at("country"), "AT");
    EXPECT_EQ(place.at("zone"), "Europe/Vienna");
    EXPECT_NEAR(place.at("latitude").get<double>(), 48.21, 0.02);
    EXPECT_NEAR(place.at("elevation_m").get<double>(), 180.0, 40.0);
    ASSERT_EQ(place.at("stations").size(), 3U);
    EXPECT_LT(place.at("stations").at(0).at("distance_km").get<double>(), 50.0);
}
TEST(Where, TellsTownsOfOneNameApart)
{
    const auto ran = run_command({"where", "Springfield", "--country", "US"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Springfield (Missouri, United States)"));
    EXPECT_THAT(ran.out, HasSubstr("Springfield (Illinois, United States)"));
    EXPECT_THAT(ran.out, HasSubstr("GeoNames (CC BY 4.0)"));
}
TEST(Where, TakesANameOfSeveralWordsWithoutQuotes)
{
    const auto ran = run_command({"--json", "where", "new", "york", "--count", "1"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json().at("places").at(0).at("country"), "US");
}

struct Coordinates {
    const char* name;
    std::vector<std::string> words;
};
void PrintTo(const Coordinates& row, std::ostream* out)
{
    *out << row.name;
}
class WhereCoordinates : public testing::TestWithParam<Coordinates> {};
TEST_P(WhereCoordinates, AreReadInTheirForm)
{
    std::vector<std::string> arguments{"--json", "where"};
    arguments.insert(arguments.end(), GetParam().words.begin(), GetParam().words.end());
    const auto ran = run_command(arguments);
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto place = ran.json().at("places").at(0);
    EXPECT_NEAR(place.at("latitude").get<double>(), -33.87, 0.01);
    EXPECT_NEAR(place.at("longitude").get<double>(), 151.21, 0.01);
    EXPECT_EQ(place.at("name"), nullptr);
    EXPECT_EQ(place.at("elevation_m"), nullptr);
    EXPECT_EQ(place.at("zone"), "Australia/Sydney");
    EXPECT_LT(place.at("nearest_town").at("distance_km").get<double>(), 10.0);
    EXPECT_LT(place.at("coast_km").get<double>(), 20.0);
}
INSTANTIATE_TEST_SUITE_P(Forms, WhereCoordinates,
                         testing::Values(Coordinates{"Signed", {"--", "-33.87,151.21"}},
                                         Coordinates{"Letters", {"33.87S 151.21E"}},
                                         Coordinates{"Words", {"33.87S", "151.21E"}},
                                         Coordinates{"Marks", {"33°52'12\"S, 151°12'36\"E"}},
                                         Coordinates{"Grid", {"EPSG:32756:334400,6250930"}}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(Where, TakesASouthernLatitudeAsItStands)
{
    const auto ran = run_command({"--json", "where", "-33.87,151.21"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json().at("places").at(0).at("zone"), "Australia/Sydney");
}
TEST(Where, ProposesNoZoneFarOutAtSea)
{
    const auto ran = run_command({"--json", "where", "48.876S 123.393W"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json().at("places").at(0).at("zone"), nullptr);
}

struct Wrong {
    const char* name;
    std::vector<std::string> arguments;
    int status;
    const char* says;
};
void PrintTo(const Wrong& row, std::ostream* out)
{
    *out << row.name;
}
class WhereWrong : public testing::TestWithParam<Wrong> {};
TEST_P(WhereWrong, IsAnsweredInOneLine)
{
    const auto ran = run_command(GetParam().arguments);
    EXPECT_EQ(ran.status, GetParam().status) << ran.err;
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.out << ran.err;
    EXPECT_THAT(ran.err, HasSubstr(GetParam().says));
    EXPECT_LT(ran.err.size(), 600U);
    for (const char byte : ran.err) {
        EXPECT_TRUE(static_cast<unsigned char>(byte) >= 0x20 || byte == '\n');
    }
}
INSTANTIATE_TEST_SUITE_P(
    All, WhereWrong,
    testing::Values(
        Wrong{"NearMiss", {"where", "Sprignfield"}, 1, "did you mean Springfield"},
        Wrong{"Unknown", {"where", "Qwxyzzyplugh"}, 1, "Qwxyzzyplugh"},
        Wrong{"Empty", {"where", ""}, 2, "letter"}, Wrong{"Nothing", {"where"}, 2, "place"},
        Wrong{"Long", {"where", std::string(10000, 'a')}, 2, "longer"},
        Wrong{"LongDigits", {"where", std::string(10000, '1')}, 2, "no place"},
        Wrong{"Control", {"where", "Qwx\x1B[m\ayzzy"}, 1, "no town"},
        Wrong{"NoUtf8", {"where", "Qwx\xFF\xC3yzzyplugh"}, 1, "no town"},
        Wrong{"Injection", {"where", "x'; DROP TABLE towns; --<script>"}, 1, "no town"},
        Wrong{"UnknownCountry", {"where", "Paris", "--country", "ZZ"}, 1, "ZZ"},
        Wrong{"CountOfNone", {"where", "Paris", "--count", "0"}, 2, "--count"},
        Wrong{"LatitudeOf91", {"where", "91,10"}, 2, "latitude"},
        Wrong{"PlaceThatSeveralBear", {"climate", "--place", "Springfield"}, 2, "region"},
        Wrong{"PlaceUnknown", {"climate", "--place", "Qwxyzzyplugh"}, 1, "no town"},
        Wrong{"PlaceTwice", {"climate", "--place", "Vienna", "--at", "48,16"}, 2, "--place"},
        Wrong{"MapWithoutAFile", {"map", "--at", "48,16"}, 2, "--out"},
        Wrong{"MapTooWide", {"map", "--at", "48,16", "--radius", "20000", "--out", "x.svg"}, 2, "radius"},
        Wrong{
            "MapToNowhere", {"map", "--at", "48,16", "--out", "/no/such/folder/x.svg"}, 1, "/no/such/folder"},
        Wrong{"CoastWithoutAPlace", {"coast"}, 2, "--at"},
        Wrong{"CoastBuildWithoutAFile", {"coast", "--build", "x"}, 2, "--out"},
        Wrong{"CoastFromNothing", {"coast", "--build", "/no/such.json", "--out", "x"}, 1, "/no/such.json"},
        Wrong{"TownsFromNothing",
              {"towns", "--build", "/no/such.txt", "--divisions", "/no/such.json", "--out", "x"},
              1,
              "/no/such.json"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(PlaceByName, GivesTheClimateOfTheTownAtItsHeight)
{
    const auto by_name = run_command({"--json", "climate", "--place", "Wien"});
    ASSERT_EQ(by_name.status, 0) << by_name.err;
    const auto town = run_command({"--json", "where", "Wien", "--count", "1"}).json().at("places").at(0);
    const auto by_position = run_command({"--json", "climate", "--at",
                                          town.at("latitude").dump() + "," + town.at("longitude").dump(),
                                          "--elevation", town.at("elevation_m").dump()});
    EXPECT_EQ(by_name.out, by_position.out);
}
TEST(PlaceByName, GivesTheSunsTimes)
{
    const auto ran = run_command({"--json", "sun", "--place", "Wien", "--from", "2027-06-21"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json().at("days").size(), 1U);
}

TEST(Coast, SaysHowFarTheSeaIs)
{
    const auto ran = run_command({"--json", "coast", "--at", "5.65,26.17"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NEAR(ran.json().at("distance_km").get<double>(), 1814.0, 18.0);
}

TEST(Map, IsDrawnWithItsStationsAndCredits)
{
    const auto file = std::filesystem::path{testing::TempDir()} / "lathhouse-map-test.svg";
    const auto ran =
        run_command({"--json", "map", "--at", "48.2,16.4", "--elevation", "170", "--out", file.string()});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto stations = ran.json().at("stations");
    ASSERT_GE(stations.size(), 3U);
    double weights = 0.0;
    for (const auto& station : stations) {
        const double east = station.at("east_km");
        const double north = station.at("north_km");
        EXPECT_NEAR(std::hypot(east, north), station.at("distance_km").get<double>(), 1e-4);
        weights += station.at("weight").get<double>();
    }
    EXPECT_NEAR(weights, 1.0, 0.001);
    const auto picture = read_text_file(file);
    std::filesystem::remove(file);
    ASSERT_TRUE(picture);
    EXPECT_THAT(*picture, HasSubstr("<svg"));
    EXPECT_THAT(*picture, HasSubstr("Natural Earth"));
    EXPECT_THAT(*picture, HasSubstr("GeoNames"));
    EXPECT_THAT(*picture, HasSubstr("Deutscher Wetterdienst"));
}
TEST(Map, TakesANameIntoThePictureAsText)
{
    const auto file = std::filesystem::path{testing::TempDir()} / "lathhouse-map-name-test.svg";
    const auto ran = run_command({"map", "--place", "<Wien>&\"", "--radius", "300", "--out", file.string()});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto picture = read_text_file(file);
    std::filesystem::remove(file);
    ASSERT_TRUE(picture);
    EXPECT_THAT(*picture, HasSubstr("&lt;Wien&gt;&amp;&quot;"));
    EXPECT_THAT(*picture, testing::Not(HasSubstr("<Wien>")));
}

} // namespace
} // namespace lathhouse::cli
