#include "core/sky/radiation.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/calendar/date.h"

#include <gtest/gtest.h>

#include <cstdio>

namespace lathhouse::sky {
namespace {

// Worked examples of Allen et al., FAO Irrigation and Drainage Paper 56 (1998), as printed; tolerances are
// half of the last printed digit, a little more where the book rounds on the way.

TEST(Fao56Sun, IsThatOfExample8)
{
    const auto sun = fao56_sun(Latitude::literal(-20.0), 246);
    EXPECT_NEAR(sun.inverse_relative_distance, 0.985, 0.0005);
    EXPECT_NEAR(sun.declination.radians(), 0.120, 0.0005);
    EXPECT_NEAR(sun.sunset_hour_angle.radians(), 1.527, 0.0005);
}

struct DayCase {
    const char* name;
    double latitude;
    int ordinal;
    double radiation; // MJ per square metre and day.
    double hours;
    double hours_tolerance;
};
void PrintTo(const DayCase& row, std::ostream* out)
{
    *out << row.name;
}
class Fao56Example : public testing::TestWithParam<DayCase> {
protected:
    Latitude latitude() const { return Latitude::from_degrees(GetParam().latitude).value(); }
};
TEST_P(Fao56Example, RadiationAboveTheAir)
{
    EXPECT_NEAR(extraterrestrial_radiation(latitude(), GetParam().ordinal).megajoules(), GetParam().radiation,
                GetParam().radiation == 32.2 || GetParam().radiation == 25.1 ? 0.05 : 0.006);
}
TEST_P(Fao56Example, DaylightHours)
{
    EXPECT_NEAR(daylight_hours(latitude(), GetParam().ordinal), GetParam().hours, GetParam().hours_tolerance);
}
INSTANTIATE_TEST_SUITE_P(Book, Fao56Example,
                         testing::Values(DayCase{"Example8And9", -20.0, 246, 32.2, 11.7, 0.05},
                                         DayCase{"Example10", -22.9, 135, 25.1, 10.9, 0.05},
                                         DayCase{"Example17Bangkok", 13.0 + 44.0 / 60.0, 105, 38.06, 12.31,
                                                 0.005},
                                         DayCase{"Example18Uccle", 50.8, 187, 41.09, 16.1, 0.05}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(RadiationFromSunshine, IsThatOfTheBook)
{
    const auto ra = extraterrestrial_radiation(Latitude::literal(-22.9), 135);
    EXPECT_NEAR(radiation_from_sunshine(ra, 220.0 / 31.0, 10.9).megajoules(), 14.5, 0.05); // Example 10.
    const auto uccle = extraterrestrial_radiation(Latitude::literal(50.8), 187);
    EXPECT_NEAR(radiation_from_sunshine(uccle, 9.25, 16.1).megajoules(), 22.07, 0.01); // Example 18.
}
TEST(RadiationFromSunshine, IsNothingInThePolarNight)
{
    const auto none = extraterrestrial_radiation(Latitude::literal(80.0), 355);
    EXPECT_EQ(none.megajoules(), 0.0);
    EXPECT_EQ(radiation_from_sunshine(none, 0.0, 0.0).megajoules(), 0.0);
}
TEST(ClearSkyRadiation, IsThatOfTheBook)
{
    const auto uccle = extraterrestrial_radiation(Latitude::literal(50.8), 187);
    EXPECT_NEAR(clear_sky_radiation(uccle, Metres::from_metres(100.0)).megajoules(), 30.90, 0.006);
    const auto ra = extraterrestrial_radiation(Latitude::literal(-22.9), 135);
    EXPECT_NEAR(clear_sky_radiation(ra, Metres::from_metres(0.0)).megajoules(), 18.8, 0.05); // Example 11.
}
TEST(RadiationFromTemperatureRange, IsThatOfExamples15And20)
{
    const auto low = Celsius::from_degrees(14.8);
    const auto high = Celsius::from_degrees(26.6);
    const auto height = Metres::from_metres(200.0);
    EXPECT_NEAR(radiation_from_temperature_range(DailyRadiation::from_megajoules(40.6), low, high,
                                                 Setting::Inland, height)
                    .megajoules(),
                22.3, 0.05);
    const auto lyon = extraterrestrial_radiation(Latitude::from_degrees(45.0 + 43.0 / 60.0).value(), 196);
    EXPECT_NEAR(lyon.megajoules(), 40.55, 0.006);
    EXPECT_NEAR(radiation_from_temperature_range(lyon, low, high, Setting::Inland, height).megajoules(),
                22.29, 0.006);
}
TEST(RadiationFromTemperatureRange, IsCappedByTheClearSky)
{
    const auto ra = DailyRadiation::from_megajoules(40.0);
    EXPECT_DOUBLE_EQ(radiation_from_temperature_range(ra, Celsius::from_degrees(0.0),
                                                      Celsius::from_degrees(30.0), Setting::Coast,
                                                      Metres::from_metres(0.0))
                         .megajoules(),
                     30.0);
}
TEST(RadiationFromTemperatureRange, TakesAHighBelowTheLowForNoRange)
{
    EXPECT_EQ(radiation_from_temperature_range(DailyRadiation::from_megajoules(40.0),
                                               Celsius::from_degrees(5.0), Celsius::from_degrees(4.0),
                                               Setting::Inland, Metres::from_metres(0.0))
                  .megajoules(),
              0.0);
}
TEST(DailyLightOfRadiation, IsTwoMolesAMegajoule)
{
    EXPECT_NEAR(daily_light(DailyRadiation::from_megajoules(3.6)).moles(), 7.265, 0.001); // 1 kWh.
}

TEST(Fao56Tables, AreMetAtTheFifteenth)
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/sky/fao56_tables.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 18U);
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto latitude = Latitude::from_degrees(parse_number(table->at(row, 1)).value()).value();
        for (int month = 1; month <= 12; ++month) {
            const int ordinal = calendar::ordinal_of_year(calendar::make_date(2027, month, 15).value());
            const double printed =
                parse_number(table->at(row, static_cast<std::size_t>(month) + 1)).value();
            if (table->at(row, 0) == "Ra") {
                EXPECT_NEAR(extraterrestrial_radiation(latitude, ordinal).megajoules(), printed, 0.15)
                    << latitude.degrees() << " month " << month;
            } else {
                EXPECT_NEAR(daylight_hours(latitude, ordinal), printed, 0.07)
                    << latitude.degrees() << " month " << month;
            }
        }
    }
}

TEST(ExtraterrestrialRadiation, IsThereAtThePoles)
{
    EXPECT_EQ(extraterrestrial_radiation(Latitude::literal(90.0), 1).megajoules(), 0.0);
    EXPECT_GT(extraterrestrial_radiation(Latitude::literal(-90.0), 1).megajoules(), 40.0);
    EXPECT_DOUBLE_EQ(daylight_hours(Latitude::literal(-90.0), 1), 24.0);
}

} // namespace
} // namespace lathhouse::sky
