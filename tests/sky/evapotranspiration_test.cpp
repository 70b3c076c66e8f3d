#include "core/sky/evapotranspiration.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/calendar/date.h"
#include "core/sky/radiation.h"

#include <gtest/gtest.h>

namespace lathhouse::sky {
namespace {

// Worked examples of Allen et al., FAO Irrigation and Drainage Paper 56 (1998), as printed.

TEST(SaturationVapourPressure, IsThatOfTable23)
{
    const double temperatures[] = {1, 10, 20, 30, 40, 48.5};
    const double printed[] = {0.657, 1.228, 2.338, 4.243, 7.376, 11.447};
    for (int i = 0; i < 6; ++i) {
        EXPECT_NEAR(saturation_vapour_pressure_kpa(Celsius::from_degrees(temperatures[i])), printed[i],
                    0.001);
    }
}
TEST(WindAtTwoMetres, IsThatOfExamples14And18)
{
    EXPECT_NEAR(wind_at_two_metres(3.2, Metres::from_metres(10.0)), 2.4, 0.05);
    EXPECT_NEAR(wind_at_two_metres(10.0 / 3.6, Metres::from_metres(10.0)), 2.078, 0.001);
}
TEST(ReferenceEvapotranspiration, IsThatOfExample17Bangkok)
{
    const auto ra = extraterrestrial_radiation(Latitude::from_degrees(13.0 + 44.0 / 60.0).value(), 105);
    EvaporationWeather april{Celsius::from_degrees(25.6),
                             Celsius::from_degrees(34.8),
                             2.85,
                             2.0,
                             radiation_from_sunshine(ra, 8.5, 12.31),
                             ra,
                             Metres::from_metres(2.0)};
    april.into_ground = DailyRadiation::from_megajoules(0.14);
    EXPECT_NEAR(reference_evapotranspiration(april).millimetres(), 5.72, 0.01);
}
TEST(ReferenceEvapotranspiration, IsThatOfExample18Uccle)
{
    const auto ra = extraterrestrial_radiation(Latitude::literal(50.8), 187);
    const EvaporationWeather july{Celsius::from_degrees(12.3),
                                  Celsius::from_degrees(21.5),
                                  1.409,
                                  2.078,
                                  radiation_from_sunshine(ra, 9.25, 16.1),
                                  ra,
                                  Metres::from_metres(100.0)};
    EXPECT_NEAR(reference_evapotranspiration(july).millimetres(), 3.88, 0.01);
}
TEST(ReferenceEvapotranspiration, IsThatOfExample20LyonFromTemperaturesAlone)
{
    const auto ra = extraterrestrial_radiation(Latitude::from_degrees(45.0 + 43.0 / 60.0).value(), 196);
    EvaporationWeather july{Celsius::from_degrees(14.8),
                            Celsius::from_degrees(26.6),
                            std::nullopt,
                            std::nullopt,
                            DailyRadiation::from_megajoules(22.29),
                            ra,
                            Metres::from_metres(200.0)};
    EXPECT_NEAR(reference_evapotranspiration(july).millimetres(), 4.56, 0.01);
    july.wind_metres_per_second = 1.0;
    EXPECT_NEAR(reference_evapotranspiration(july).millimetres(), 4.2, 0.05);
    july.wind_metres_per_second = 3.0;
    EXPECT_NEAR(reference_evapotranspiration(july).millimetres(), 4.8, 0.05);
}
TEST(HargreavesEvapotranspiration, IsThatOfExample20Lyon)
{
    const auto ra = extraterrestrial_radiation(Latitude::from_degrees(45.0 + 43.0 / 60.0).value(), 196);
    EXPECT_NEAR(hargreaves_evapotranspiration(Celsius::from_degrees(14.8), Celsius::from_degrees(26.6), ra)
                    .millimetres(),
                5.0, 0.05);
}
TEST(HargreavesEvapotranspiration, IsNeverNegative)
{
    EXPECT_EQ(hargreaves_evapotranspiration(Celsius::from_degrees(-40.0), Celsius::from_degrees(-30.0),
                                            DailyRadiation::from_megajoules(5.0))
                  .millimetres(),
              0.0);
}
TEST(ReferenceEvapotranspiration, IsFiniteInThePolarNight)
{
    const auto dark = DailyRadiation::from_megajoules(0.0);
    const double water =
        reference_evapotranspiration({Celsius::from_degrees(-30.0), Celsius::from_degrees(-22.0),
                                      std::nullopt, std::nullopt, dark, dark, Metres::from_metres(10.0)})
            .millimetres();
    EXPECT_GE(water, 0.0);
    EXPECT_LT(water, 1.0);
}
TEST(ReferenceEvapotranspiration, IsThatOfTheYearAtCabinda)
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/sky/fao56_cabinda.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 12U);
    for (std::size_t month = 0; month < 12; ++month) {
        const auto number = [&](const char* name) {
            return parse_number(table->at(month, table->require_column(name).value())).value();
        };
        const int ordinal =
            calendar::ordinal_of_year(calendar::make_date(2027, static_cast<int>(month) + 1, 15).value());
        const auto latitude = Latitude::literal(-5.33);
        const auto ra = extraterrestrial_radiation(latitude, ordinal);
        const auto radiation =
            radiation_from_sunshine(ra, number("sunshine_h"), daylight_hours(latitude, ordinal));
        EXPECT_NEAR(radiation.megajoules(), number("rs_MJ"), 0.2) << "month " << month + 1;
        const auto low = Celsius::from_degrees(number("tmin_c"));
        const auto high = Celsius::from_degrees(number("tmax_c"));
        EXPECT_NEAR(
            reference_evapotranspiration(
                {low, high, vapour_pressure_from_mean_humidity_kpa(low, high, number("rhmean_pct") / 100.0),
                 number("wind_km_day") / 86.4, radiation, ra, Metres::from_metres(20.0)})
                .millimetres(),
            number("eto_mm"), 0.2)
            << "month " << month + 1;
    }
}

} // namespace
} // namespace lathhouse::sky
