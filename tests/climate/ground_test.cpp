#include "core/climate/ground.h"

#include "core/climate/figures.h"
#include "core/climate/place_climate.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

namespace lathhouse::climate {
namespace {

MonthlyFigures same_all_year(double low, double high)
{
    auto figures = tropical_figures();
    figures.low.fill(Celsius::from_degrees(low));
    figures.high.fill(Celsius::from_degrees(high));
    return figures;
}

TEST(GroundTemperature, AtTheSurfaceIsTheAir)
{
    const auto figures = inland_figures();
    const auto ground = ground_temperature(figures, Metres::from_metres(0.0));
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(ground[m].low.degrees(), figures.low[m].degrees(), 0.7); // Three harmonics of the year.
        EXPECT_NEAR(ground[m].high.degrees(), figures.high[m].degrees(), 0.7);
    }
}

TEST(GroundTemperature, SwingsAsASolutionOfTheHeatEquation)
{
    // An explicit scheme of the heat equation, k = 5e-7 m2/s, cells of 1 cm, steps of 30 s, 40 days of a
    // surface that swings by 10 K a day about 20 C: the swing left at 5 and 10 cm.
    constexpr double kDiffusivity = 5e-7;
    constexpr double kCell = 0.01;
    constexpr double kStep = 30.0;
    constexpr int kDays = 40;
    std::vector<double> cells(200, 20.0);
    double warmest_at_5 = 0.0;
    double warmest_at_10 = 0.0;
    for (int step = 0; step < kDays * 2880; ++step) {
        const double time = step * kStep;
        auto next = cells;
        next[0] = 20.0 + 10.0 * std::sin(2.0 * std::numbers::pi * time / 86400.0);
        for (std::size_t i = 1; i + 1 < cells.size(); ++i) {
            next[i] +=
                kDiffusivity * kStep / (kCell * kCell) * (cells[i - 1] - 2.0 * cells[i] + cells[i + 1]);
        }
        next.back() = 20.0;
        cells = std::move(next);
        if (step >= (kDays - 1) * 2880) {
            warmest_at_5 = std::max(warmest_at_5, cells[5]);
            warmest_at_10 = std::max(warmest_at_10, cells[10]);
        }
    }
    const auto figures = same_all_year(10.0, 30.0);
    EXPECT_NEAR(ground_temperature(figures, Metres::from_metres(0.05))[0].high.degrees(), warmest_at_5, 0.1);
    EXPECT_NEAR(ground_temperature(figures, Metres::from_metres(0.10))[0].high.degrees(), warmest_at_10, 0.1);
}

TEST(GroundTemperature, AgreesWithADayInUtah)
{
    // A July day in Utah: air 60 to 97 F; at 2 cm at most 93 F, at 10 cm at most 85 F. Donahue, Miller,
    // Shickluna, Soils: An Introduction to Soils and Plant Growth, as quoted second hand.
    const auto figures =
        same_all_year(Celsius::from_fahrenheit(60.0).degrees(), Celsius::from_fahrenheit(97.0).degrees());
    EXPECT_NEAR(ground_temperature(figures, Metres::from_metres(0.02))[6].high.fahrenheit(), 93.0, 3.0);
    EXPECT_NEAR(ground_temperature(figures, Metres::from_metres(0.10))[6].high.fahrenheit(), 85.0, 3.0);
}

TEST(GroundTemperature, LagsAndSwingsLessWithDepth)
{
    const auto figures = inland_figures();
    const auto shallow = ground_temperature(figures, Metres::from_metres(0.05));
    const auto deep = ground_temperature(figures, Metres::from_metres(1.0));
    EXPECT_LT((deep[6].mean - deep[0].mean).kelvins(), (shallow[6].mean - shallow[0].mean).kelvins());
    EXPECT_LT((deep[6].high - deep[6].low).kelvins(), 0.1);
    EXPECT_GT(deep[9].mean, shallow[9].mean); // Autumn comes later down there.
    EXPECT_LT(deep[3].mean, shallow[3].mean);
}

TEST(PotTemperature, SmallPotsFollowTheAirAndLargeOnesLess)
{
    EXPECT_GT(pot_swing(Metres::from_metres(0.08)), 0.9);
    EXPECT_LT(pot_swing(Metres::from_metres(0.6)), pot_swing(Metres::from_metres(0.3)));
    const auto pot = pot_temperature(inland_figures(), Metres::from_metres(0.3));
    EXPECT_GT(pot[0].low, inland_figures().low[0]);
    EXPECT_LT(pot[0].high, inland_figures().high[0]);
}

TEST(PotTemperature, SwingsAsABodyWithOneTemperature)
{
    // Newton's law of cooling stepped through ten days for a 30 cm pot: lag 2.1e6 x 0.05 / 10 = 10,500 s.
    constexpr double kLag = 10500.0;
    double pot = 0.0;
    double warmest = 0.0;
    for (int second = 0; second < 10 * 86400; second += 10) {
        pot += 10.0 / kLag * (std::sin(2.0 * std::numbers::pi * second / 86400.0) - pot);
        warmest = second > 9 * 86400 ? std::max(warmest, pot) : 0.0;
    }
    EXPECT_NEAR(pot_swing(Metres::from_metres(0.3)), warmest, 0.005);
}

TEST(PotWater, OneMillimetreOnASquareMetreIsALitre)
{
    const auto width = Metres::from_metres(2.0 / std::sqrt(std::numbers::pi));
    EXPECT_NEAR(pot_water_litres(Millimetres::from_millimetres(5.0), width), 5.0, 1e-12);
}

TEST(PotWater, IsNearWhatABarePotLostInFlorida)
{
    // 0.16 L a day evaporated from containers of 11.4 L shaded with plastic foliage, whose tops measure
    // 0.0508 m2 (600 ml are 11.8 mm there): Beeson, HortScience 45 (2010) 1260-1264, Apopka, Florida. Within
    // a third.
    const auto file = StationTable::find();
    ASSERT_TRUE(file) << file.error().message;
    const auto table = StationTable::load(*file);
    ASSERT_TRUE(table) << table.error().message;
    const Position apopka{Latitude::literal(28.64), Longitude::literal(-81.55)};
    const auto place = climate_at(*table, apopka, Metres::from_metres(40.0));
    ASSERT_TRUE(place) << place.error().message;
    const auto width = Metres::from_metres(std::sqrt(0.0508 * 4.0 / std::numbers::pi));
    double litres = 0.0;
    for (const auto& month : months_of_light(place->monthly, apopka, Metres::from_metres(40.0))) {
        litres += pot_water_litres(month.reference_evapotranspiration, width) / 365.25;
    }
    EXPECT_NEAR(litres, 0.16, 0.16 / 3.0);
}

} // namespace
} // namespace lathhouse::climate
