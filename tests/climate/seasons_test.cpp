#include "core/climate/seasons.h"

#include "core/climate/koppen.h"
#include "core/climate/place_climate.h"
#include "core/climate/thermal_season.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

namespace lathhouse::climate {
namespace {

Monthly<Millimetres> rain_of(const Monthly<double>& v)
{
    const auto r = [&v](std::size_t m) { return Millimetres::from_millimetres(v[m]); };
    return {r(0), r(1), r(2), r(3), r(4), r(5), r(6), r(7), r(8), r(9), r(10), r(11)};
}

struct ClassCase {
    const char* name;
    double latitude;
    double longitude;
    double metres;
    std::vector<std::string> published; ///< Classes that published maps and tables give the city.
    TemperatureSeasons temperature;
    std::size_t coldest_month; ///< Lies among the three coldest, from 1; 0 where none is claimed.
};
void PrintTo(const ClassCase& row, std::ostream* out)
{
    *out << row.name;
}

/// Classes of well known cities as the map of Peel et al. (2007) and common tables have them (from memory).
/// Where the city lies near a limit, and the years 2003-2021 are warmer than those of the map, both
/// neighbours are given.
class KnownCity : public testing::TestWithParam<ClassCase> {
protected:
    static const StationTable& table()
    {
        static const StationTable loaded = StationTable::load(StationTable::find().value()).value();
        return loaded;
    }
    static PlaceClimate climate()
    {
        const auto& city = GetParam();
        return climate_at(table(),
                          {Latitude::from_degrees(city.latitude).value(),
                           Longitude::from_degrees(city.longitude).value()},
                          Metres::from_metres(city.metres))
            .value();
    }
};

TEST_P(KnownCity, HasItsPublishedClassAndSeasons)
{
    const auto place = climate();
    const auto seasons = seasons_of(place.monthly, place.rain);
    ASSERT_TRUE(seasons.koppen.has_value());
    EXPECT_NE(std::ranges::find(GetParam().published, *seasons.koppen), GetParam().published.end())
        << *seasons.koppen;
    EXPECT_EQ(seasons.temperature, GetParam().temperature);
    if (GetParam().coldest_month != 0) {
        EXPECT_LT((GetParam().coldest_month - 1 + 12 - seasons.coldest_from) % 12, 3U)
            << "coldest from month " << seasons.coldest_from + 1;
    }
}

INSTANTIATE_TEST_SUITE_P(
    World, KnownCity,
    testing::Values(
        ClassCase{"Quito", -0.18, -78.49, 2812, {"Cfb"}, TemperatureSeasons::None, 0},
        ClassCase{"Darwin", -12.42, 130.89, 30, {"Aw"}, TemperatureSeasons::None, 7},
        ClassCase{"Miami", 25.79, -80.29, 3, {"Am", "Aw", "Af"}, TemperatureSeasons::CoolSeason, 1},
        ClassCase{"Lagos", 6.58, 3.33, 40, {"Aw", "Am"}, TemperatureSeasons::None, 0},
        ClassCase{"Sydney", -33.86, 151.21, 39, {"Cfa"}, TemperatureSeasons::Winter, 7},
        ClassCase{"Yakutsk", 62.02, 129.72, 101, {"Dfd", "Dfc", "Dwd", "Dwc"}, TemperatureSeasons::Winter, 1},
        ClassCase{"Singapore", 1.37, 103.98, 16, {"Af"}, TemperatureSeasons::None, 0},
        ClassCase{"Lisbon", 38.77, -9.13, 104, {"Csa", "Csb"}, TemperatureSeasons::Winter, 1},
        ClassCase{"Phoenix", 33.43, -112.0, 337, {"BWh"}, TemperatureSeasons::Winter, 1},
        ClassCase{"Berlin", 52.47, 13.40, 48, {"Cfb", "Dfb"}, TemperatureSeasons::Winter, 1},
        ClassCase{"Barrow", 71.29, -156.78, 11, {"ET"}, TemperatureSeasons::Winter, 2},
        ClassCase{"NewDelhi", 28.58, 77.21, 216, {"Cwa", "BSh"}, TemperatureSeasons::Winter, 1}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(KoppenClass, KeepsTheLimitsOfTheTropics)
{
    // Peel et al. (2007), table 1: Am where the driest month has 100 - (year's rain) / 25 or more.
    const auto warm = celsius_of({25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25});
    EXPECT_EQ(koppen_class(warm, rain_of({60, 200, 200, 200, 200, 200, 200, 200, 200, 200, 200, 200})), "Af");
    EXPECT_EQ(koppen_class(warm, rain_of({20, 200, 200, 200, 200, 200, 200, 200, 200, 200, 200, 200})), "Am");
    EXPECT_EQ(koppen_class(warm, rain_of({5, 150, 150, 150, 150, 150, 150, 150, 150, 150, 150, 150})), "Aw");
}

TEST(KoppenClass, KeepsTheLimitsOfDryAndPolarClimates)
{
    const auto warm = celsius_of({25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25});
    // Even rain: the limit is 10 x (2 x 25 + 14) = 640 mm, half of it for the desert.
    EXPECT_EQ(koppen_class(warm, rain_of({26, 26, 26, 26, 26, 26, 26, 26, 26, 26, 26, 26})), "BWh");
    EXPECT_EQ(koppen_class(warm, rain_of({53, 53, 53, 53, 53, 53, 53, 53, 53, 53, 53, 53})), "BSh");
    const auto cold = celsius_of({-20, -20, -15, -8, -2, 3, 9, 7, 2, -5, -12, -18});
    const auto rain = rain_of({30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30});
    EXPECT_EQ(koppen_class(cold, rain), "ET");
    EXPECT_EQ(koppen_class(celsius_of({-40, -40, -40, -40, -30, -20, -10, -20, -30, -40, -40, -40}), rain),
              "EF");
}

TEST(Seasons, WithoutAllMonthsOfRainSayNothingOfIt)
{
    Monthly<std::optional<Millimetres>> rain{};
    rain.fill(Millimetres::from_millimetres(80.0));
    rain[4].reset();
    const auto seasons = seasons_of(inland_figures(), rain);
    EXPECT_EQ(seasons.rain, RainSeasons::Unknown);
    EXPECT_FALSE(seasons.koppen.has_value());
    EXPECT_EQ(seasons.coldest_from, 11U); // December to February.
    EXPECT_EQ(seasons.warmest_from, 5U);
}

TEST(ThermalSeason, IsTheSameHalfAYearLaterBelowTheEquator)
{
    const auto north = thermal_season(inland_figures(), Celsius::from_degrees(10.0));
    const auto south = thermal_season(turned_half_a_year(inland_figures()), Celsius::from_degrees(10.0));
    EXPECT_NEAR(north.days, south.days, 3.0);
    EXPECT_EQ(north.from->month(), 4);
    EXPECT_EQ(south.from->month(), 10);
    EXPECT_EQ(south.to->month(), 4);
}

TEST(ThermalSeason, MayBeTheWholeYearOrNever)
{
    const auto always = thermal_season(tropical_figures(), Celsius::from_degrees(5.0));
    EXPECT_DOUBLE_EQ(always.days, 365.25);
    EXPECT_FALSE(always.from.has_value());
    EXPECT_DOUBLE_EQ(thermal_season(tropical_figures(), Celsius::from_degrees(40.0)).days, 0.0);
}

/// Twelve years whose mean is 10 C but from 1 April to 30 September 0 C (or the other way round).
DailyRecord two_halves(double first, double second)
{
    DailyRecord record{"HALVES"};
    for (int year = 2001; year <= 2012; ++year) {
        for (int month = 1; month <= 12; ++month) {
            auto& readings = record.month_to_write(year, month);
            const int days =
                calendar::days_in_month_of_leap_year(month) - (month == 2 && year % 4 != 0 ? 1 : 0);
            for (int day = 0; day < days; ++day) {
                const double value = month >= 4 && month <= 9 ? second : first;
                readings.low[static_cast<std::size_t>(day)] =
                    *DailyReading::from_tenths(static_cast<int>(value * 10.0) - 50);
                readings.high[static_cast<std::size_t>(day)] =
                    *DailyReading::from_tenths(static_cast<int>(value * 10.0) + 50);
            }
        }
    }
    return record;
}

TEST(GrowingSeasonLength, CountsFromTheFirstWarmRunToTheFirstColdOne)
{
    // Warm from 1 April to 30 September: 183 days.
    const auto length = growing_season_length(two_halves(0.0, 10.0), {2001, 2012}, Latitude::literal(45.0),
                                              Celsius::from_degrees(5.0));
    ASSERT_TRUE(length.has_value());
    EXPECT_DOUBLE_EQ(*length, 183.0);
}

TEST(GrowingSeasonLength, RunsFromJulyInTheSouth)
{
    // Warm from 1 October to 31 March: 182 days, 183 in the three leap years of the eleven whole seasons.
    const auto length = growing_season_length(two_halves(10.0, 0.0), {2001, 2012}, Latitude::literal(-35.0),
                                              Celsius::from_degrees(5.0));
    ASSERT_TRUE(length.has_value());
    EXPECT_NEAR(*length, 182.0 + 3.0 / 11.0, 1e-9);
}

TEST(GrowingSeasonLength, NeedsTenYears)
{
    EXPECT_FALSE(growing_season_length(two_halves(0.0, 10.0), {2001, 2009}, Latitude::literal(45.0),
                                       Celsius::from_degrees(5.0))
                     .has_value());
}

} // namespace
} // namespace lathhouse::climate
