#include "core/climate/monthly_form.h"

#include <gtest/gtest.h>

namespace lathhouse::climate {
namespace {

std::string months(const std::string& stem)
{
    std::string text;
    for (int m = 1; m <= 12; ++m) {
        text += "," + stem + (m < 10 ? "_0" : "_") + std::to_string(m);
    }
    return text;
}
std::string twelve(const std::string& value)
{
    std::string text;
    for (int m = 0; m < 12; ++m) {
        text += "," + value;
    }
    return text;
}

Result<std::vector<MonthlyPlace>> read(const std::string& text)
{
    return read_monthly_form(CsvTable::parse(text, "form.csv").value());
}

const std::string kHead = "station,name,latitude,longitude,elevation_m" + months("low") + months("high");

TEST(MonthlyForm, ReadsTheLeastThatIsNeeded)
{
    const auto places = read(kHead + "\nA1,Valley,46.5,7.25,420" + twelve("4.5") + twelve("12") + "\n");
    ASSERT_TRUE(places.has_value()) << places.error().message;
    ASSERT_EQ(places->size(), 1U);
    const MonthlyPlace& place = places->front();
    EXPECT_EQ(place.name, "Valley");
    EXPECT_EQ(place.position.latitude.degrees(), 46.5);
    EXPECT_EQ(place.elevation->metres(), 420.0);
    EXPECT_EQ(place.figures.low[11].degrees(), 4.5);
    EXPECT_FALSE(place.figures.low_spread.has_value());
    EXPECT_EQ(place.figures.reading_step.kelvins(), 0.1);
}

TEST(MonthlyForm, ReadsTheOptionalColumns)
{
    const auto places =
        read(kHead + months("low_sd") + months("mean_sd") + months("lowest") + months("frost_days") +
             ",years,reading_step_c\nA1,,46.5,7.25," + twelve("4.5") + twelve("12") + twelve("") +
             twelve("3.5") + twelve("-9") + twelve("") + ",20,0.5556\n");
    ASSERT_TRUE(places.has_value()) << places.error().message;
    const MonthlyFigures& figures = places->front().figures;
    EXPECT_FALSE(places->front().elevation.has_value());
    EXPECT_FALSE(figures.low_spread.has_value());
    EXPECT_EQ((*figures.mean_spread)[4].kelvins(), 3.5);
    EXPECT_EQ(figures.lowest[0]->degrees(), -9.0);
    EXPECT_FALSE(figures.frost_days[0].has_value());
    EXPECT_EQ(figures.years, 20);
    EXPECT_EQ(figures.reading_step.kelvins(), 0.5556);
}

TEST(MonthlyForm, ReadsNightsCountedAtLines)
{
    const auto places = read(kHead + months("nights_32f") + months("nights_-5c") + months("nights_50f") +
                             months("nights_of_snow") + "\nA1,,46.5,7.25,420" + twelve("4.5") + twelve("12") +
                             twelve("9.1") + twelve("2") + twelve("") + twelve("many") + "\n");
    ASSERT_TRUE(places.has_value()) << places.error().message;
    const auto& counted = places->front().counted;
    ASSERT_EQ(counted.size(), 2U);
    EXPECT_EQ(counted[0].line.degrees(), -5.0);
    EXPECT_EQ(counted[0].nights[6], 2.0);
    EXPECT_NEAR(counted[1].line.degrees(), 0.0, 1e-12);
    EXPECT_EQ(counted[1].nights[11], 9.1);
}

struct BadForm {
    const char* name;
    std::string text;
    const char* says;
};
void PrintTo(const BadForm& bad, std::ostream* out)
{
    *out << bad.name;
}
class MonthlyFormErrors : public testing::TestWithParam<BadForm> {};

TEST_P(MonthlyFormErrors, AreNamedWithTheirPlace)
{
    const auto places = read(GetParam().text);
    ASSERT_FALSE(places.has_value());
    EXPECT_EQ(places.error().code, ErrorCode::Malformed);
    EXPECT_NE(places.error().message.find(GetParam().says), std::string::npos) << places.error().message;
}

INSTANTIATE_TEST_SUITE_P(
    Forms, MonthlyFormErrors,
    testing::Values(
        BadForm{"NoRows", kHead + "\n", "no rows"},
        BadForm{"NoHighColumns", "station,latitude,longitude" + months("low") + "\n", "high_01"},
        BadForm{"BlankLow", kHead + "\nA,,46,7,1" + twelve("") + twelve("9") + "\n", "line 2"},
        BadForm{"NotANumber", kHead + "\nA,,46,7,1" + twelve("mild") + twelve("9") + "\n", "low_01"},
        BadForm{"TooHot", kHead + "\nA,,46,7,1" + twelve("4") + twelve("99") + "\n", "high_01"},
        BadForm{"LowAboveHigh", kHead + "\nA,,46,7,1" + twelve("12") + twelve("9") + "\n", "above"},
        BadForm{"LatitudeBeyondThePole", kHead + "\nA,,91,7,1" + twelve("4") + twelve("9") + "\n",
                "latitude"},
        BadForm{"SpreadOfNought",
                kHead + months("low_sd") + "\nA,,46,7,1" + twelve("4") + twelve("9") + twelve("0") + "\n",
                "low_sd_01"},
        BadForm{"SpreadOfSomeMonths",
                kHead + months("low_sd") + "\nA,,46,7,1" + twelve("4") + twelve("9") + ",3" +
                    twelve("").substr(1) + "\n",
                "all twelve"},
        BadForm{"CountsOfElevenMonths",
                kHead + months("nights_20f").substr(14) + "\nA,,46,7,1" + twelve("4") + twelve("9") +
                    twelve("1").substr(2) + "\n",
                "nights_20f_01"},
        BadForm{"MoreNightsThanDays",
                kHead + months("nights_20f") + "\nA,,46,7,1" + twelve("4") + twelve("9") + twelve("31") +
                    "\n",
                "nights_20f_02"},
        BadForm{"MoreNightsAtAColderLine",
                kHead + months("nights_32f") + months("nights_20f") + "\nA,,46,7,1" + twelve("4") +
                    twelve("9") + twelve("3") + twelve("5") + "\n",
                "nights_32f_01 has fewer"},
        BadForm{"CountsOfSomeMonths",
                kHead + months("nights_32f") + "\nA,,46,7,1" + twelve("4") + twelve("9") + ",3" +
                    twelve("").substr(1) + "\n",
                "all twelve"},
        BadForm{"MoreFrostDaysThanDays",
                kHead + months("frost_days") + "\nA,,46,7,1" + twelve("-4") + twelve("9") + twelve("31") +
                    "\n",
                "frost_days_02"}),
    [](const auto& row) { return std::string{row.param.name}; });

} // namespace
} // namespace lathhouse::climate
