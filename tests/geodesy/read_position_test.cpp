#include "core/geodesy/read_position.h"

#include "core/geodesy/geodesic.h"

#include <gtest/gtest.h>

namespace lathhouse::geodesy {
namespace {

struct Written {
    const char* name;
    const char* text;
    double latitude, longitude;
};
void PrintTo(const Written& row, std::ostream* out)
{
    *out << row.text;
}
class ReadPosition : public testing::TestWithParam<Written> {};
TEST_P(ReadPosition, ReadsTheForm)
{
    const auto place = read_position(GetParam().text);
    ASSERT_TRUE(place) << place.error().message;
    EXPECT_NEAR(place->latitude.degrees(), GetParam().latitude, 1e-9);
    EXPECT_NEAR(place->longitude.degrees(), GetParam().longitude, 1e-9);
}
constexpr double kLatitude = 48.0 + 12.0 / 60.0 + 30.0 / 3600.0;
constexpr double kLongitude = 16.0 + 22.0 / 60.0;
INSTANTIATE_TEST_SUITE_P(
    Forms, ReadPosition,
    testing::Values(
        Written{"Decimal", "48.2,16.4", 48.2, 16.4}, Written{"Blank", " 48.2, 16.4 ", 48.2, 16.4},
        Written{"BlankOnly", "-33.87 151.21", -33.87, 151.21}, Written{"Plus", "+48.2,+16.4", 48.2, 16.4},
        Written{"Negative", "-48.2,-16.4", -48.2, -16.4},
        Written{"TrueMinus", "\u221248.2,16.4", -48.2, 16.4}, Written{"Semicolon", "48.2;16.4", 48.2, 16.4},
        Written{"Marks", "48°12'30\"N, 16°22'E", kLatitude, kLongitude},
        Written{"MarksClose", "48°12'30\"N16°22'E", kLatitude, kLongitude},
        Written{"Primes", "48°12′30″N 16°22′0″E", kLatitude, kLongitude},
        Written{"Typographic", "48°12’30”N 16°22’E", kLatitude, kLongitude},
        Written{"TwoApostrophes", "48°12'30''S 16°22'W", -kLatitude, -kLongitude},
        Written{"NoMarks", "48 12 30 N 16 22 0 E", kLatitude, kLongitude},
        Written{"DecimalMinutes", "48 12.5 N 16 22 E", kLatitude, kLongitude},
        Written{"LetterFirst", "N48.2 E16.4", 48.2, 16.4},
        Written{"LetterFirstParts", "N 48 12 30 E 16 22", kLatitude, kLongitude},
        Written{"Lower", "48.2s, 16.4w", -48.2, -16.4}, Written{"EastFirst", "16.4E 48.2N", 48.2, 16.4},
        Written{"OneLetter", "16.4E, 48.2", 48.2, 16.4},
        Written{"MarksAndSign", "-48°12'30\", 16°22'", -kLatitude, kLongitude},
        Written{"MarksWithoutComma", "-48°12'30\" 16°22'", -kLatitude, kLongitude},
        Written{"MinusZero", "-0°30', 10°", -0.5, 10.0},
        Written{"PartsByComma", "48 12 30, 16 22 0", kLatitude, kLongitude},
        Written{"Edges", "-90,-180", -90.0, -180.0}, Written{"OtherEdges", "90,180", 90.0, 180.0},
        Written{"WholeNumbers", "0,0", 0.0, 0.0}),
    [](const auto& row) { return std::string{row.param.name}; });

struct Wrong {
    const char* name;
    const char* text;
    ErrorCode code;
    const char* says;
};
void PrintTo(const Wrong& row, std::ostream* out)
{
    *out << row.text;
}
class RefusePosition : public testing::TestWithParam<Wrong> {};
TEST_P(RefusePosition, SaysWhy)
{
    testing::internal::CaptureStderr();
    const auto place = read_position(GetParam().text);
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
    ASSERT_FALSE(place) << place->latitude.degrees() << ' ' << place->longitude.degrees();
    EXPECT_EQ(place.error().code, GetParam().code) << place.error().message;
    EXPECT_NE(place.error().message.find(GetParam().says), std::string::npos) << place.error().message;
}
INSTANTIATE_TEST_SUITE_P(
    Forms, RefusePosition,
    testing::Values(Wrong{"Empty", "", ErrorCode::Malformed, "no place"},
                    Wrong{"Word", "here", ErrorCode::Malformed, "no place"},
                    Wrong{"One", "48.2", ErrorCode::Malformed, "latitude and a longitude"},
                    Wrong{"Three", "48.2,16.4,3", ErrorCode::Malformed, "latitude and a longitude"},
                    Wrong{"DecimalComma", "48,2,16,4", ErrorCode::Malformed, "decimal point"},
                    Wrong{"Hole", "48.2,", ErrorCode::Malformed, "no number"},
                    Wrong{"NotANumber", "nan,nan", ErrorCode::Malformed, "neither a number"},
                    Wrong{"TwoPoints", "48.2.1,16", ErrorCode::Malformed, "neither a number"},
                    Wrong{"Latitude91", "91,16.4", ErrorCode::OutOfRange, "latitude 91"},
                    Wrong{"Swapped", "151.21,-33.87", ErrorCode::OutOfRange, "latitude comes first"},
                    Wrong{"Longitude181", "48,181", ErrorCode::OutOfRange, "longitude 181"},
                    Wrong{"Latitude91WithLetter", "91N 16E", ErrorCode::OutOfRange, "latitude 91"},
                    Wrong{"SignAndLetter", "-48.2S, 16E", ErrorCode::Malformed, "both a sign"},
                    Wrong{"TwoLatitudes", "48N 16S", ErrorCode::Malformed, "two latitudes"},
                    Wrong{"Minutes60", "48 60 N 16 0 E", ErrorCode::OutOfRange, "below 60"},
                    Wrong{"Order", "48'12°N 16°E", ErrorCode::Malformed, "order"},
                    Wrong{"DecimalsThenMinutes", "48.5 30 N 16 E", ErrorCode::Malformed, "order"},
                    Wrong{"FourParts", "48 1 2 3 N 16 E", ErrorCode::Malformed, "order"},
                    Wrong{"EpsgForm", "EPSG:32633", ErrorCode::Malformed, "EPSG:code:easting,northing"},
                    Wrong{"EpsgNumbers", "EPSG:32633:a,b", ErrorCode::Malformed,
                          "EPSG:code:easting,northing"},
                    Wrong{"EpsgUnknown", "EPSG:999999:1,2", ErrorCode::NotFound, "EPSG:999999"},
                    Wrong{"EpsgHeight", "EPSG:5773:1,2", ErrorCode::Malformed, "EPSG:5773"},
                    Wrong{"EpsgCentre", "EPSG:4978:1,2", ErrorCode::Malformed, "EPSG:4978"},
                    Wrong{"EpsgOutside", "EPSG:32633:5340000,601000", ErrorCode::OutOfRange, "EPSG:32633"},
                    Wrong{"EpsgFarOutside", "EPSG:27700:1e12,1e12", ErrorCode::OutOfRange, "EPSG:27700"}),
    [](const auto& row) { return std::string{row.param.name}; });

/// Distance of a read place from a published one, in metres.
double miss(std::string_view text, double latitude, double longitude)
{
    const auto place = read_position(text);
    if (!place) {
        ADD_FAILURE() << place.error().message;
        return 1e9;
    }
    return distance(*place,
                    {Latitude::from_degrees(latitude).value(), Longitude::from_degrees(longitude).value()})
        .metres();
}
TEST(ReadEpsg, KnowsTheUniversalTransverseMercatorGrid)
{
    // On the zone's meridian and the equator by definition: 500,000 m east, 0 m north (10,000,000 in the
    // south).
    EXPECT_LT(miss("EPSG:32633:500000,0", 0.0, 15.0), 0.001);
    EXPECT_LT(miss("epsg:32733:500000,10000000", 0.0, 15.0), 0.001);
}
TEST(ReadEpsg, IsThatOfTheBritishNationalGridsWorkedExample)
{
    // EPSG Guidance Note 7-2 (transverse Mercator): 577274.99 E, 69740.50 N is 50.5 N, 0.5 E on OSGB 1936. On
    // WGS 84 the same point lies some 110 m away; the datum shifts that PROJ may choose from agree to 5 m or
    // so.
    EXPECT_NEAR(miss("EPSG:27700:577274.99,69740.50", 50.5, 0.5), 110.0, 30.0);
}
TEST(ReadEpsg, TakesTheEastingFirstWhateverTheSystemsOwnOrder)
{
    EXPECT_LT(miss("EPSG:4326:16.4,48.2", 48.2, 16.4), 0.001);
    EXPECT_LT(miss("EPSG:3857:0,0", 0.0, 0.0), 0.001);
    // Its own order is northing first: the false origin 4,321,000 E, 3,210,000 N is 52 N, 10 E.
    EXPECT_LT(miss("EPSG:3035:4321000,3210000", 52.0, 10.0), 0.01);
}
TEST(ReadEpsg, WorksAcrossTheDateLine)
{
    // The New Zealand grid's area crosses it; 1,600,000 E is 173 E and 10,000,000 N the equator's.
    const auto place = read_position("EPSG:2193:1600000,5200000");
    ASSERT_TRUE(place) << place.error().message;
    EXPECT_NEAR(place->longitude.degrees(), 173.0, 0.001);
}

} // namespace
} // namespace lathhouse::geodesy
