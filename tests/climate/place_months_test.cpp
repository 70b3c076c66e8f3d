#include "core/climate/place_months.h"

#include "tests/climate/plain_place.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <numbers>

namespace lathhouse::climate {
namespace {

constexpr Metres kPot = Metres::from_metres(0.3);

TEST(PlaceMonths, WhatAPotDrinksInAYearIsTheReferenceEvapotranspirationOnItsTop)
{
    const auto months = PlaceMonths::of(plain_place(47.9, 120.0, inland_figures()), kPot);
    // The months of the calendar year in the mean of the Gregorian calendar: 365.2425 days.
    constexpr std::array<double, 12> kDays = {31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    double litres = 0.0;
    double millimetres = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        litres += months.pot_water[m] * kDays[m];
        millimetres += months.light[m].reference_evapotranspiration.millimetres();
    }
    EXPECT_NEAR(litres, millimetres * std::numbers::pi * 0.15 * 0.15, 1e-9);
    // The CGIAR-CSI maps of reference evapotranspiration (Trabucco and Zomer 2019) have 700 to 1,000 mm a year for the
    // plains along the middle Danube (from memory).
    EXPECT_GT(millimetres, 700.0);
    EXPECT_LT(millimetres, 1100.0);
}

TEST(PlaceMonths, DeeperGroundSwingsLessAndWarmthIsCountedAboveTenDegrees)
{
    const auto months = PlaceMonths::of(plain_place(47.9, 120.0, inland_figures()), kPot);
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_LT(months.soil_at_10[m].high.degrees() - months.soil_at_10[m].low.degrees(),
                  months.soil_at_5[m].high.degrees() - months.soil_at_5[m].low.degrees())
            << "month " << m + 1;
    }
    EXPECT_GT(months.degree_days[6], 300.0) << "July of 22.7 degrees: about 12.7 a day above 10";
    EXPECT_LT(months.degree_days[6], 480.0);
    EXPECT_LT(months.degree_days[0], 5.0) << "January of -3.5 degrees: a mild day now and then";
    // Above 10 degrees for a shorter time than above 5.
    EXPECT_LT(months.seasons[1].days, months.seasons[0].days);
}

TEST(PlaceMonths, TheYearHasNoRainWhereAMonthHasNone)
{
    auto place = plain_place(47.9, 120.0, inland_figures());
    EXPECT_FALSE(PlaceMonths::of(place, kPot).rain);
    for (auto& month : place.rain) {
        month = Millimetres::from_millimetres(50.0);
    }
    EXPECT_DOUBLE_EQ(PlaceMonths::of(place, kPot).rain->millimetres(), 600.0);
    place.rain[4] = std::nullopt;
    EXPECT_FALSE(PlaceMonths::of(place, kPot).rain);
}

TEST(PlaceMonths, TheLowestOfAllIsKnownWhereEveryMonthHasOne)
{
    auto place = plain_place(47.9, 120.0, inland_figures());
    EXPECT_FALSE(PlaceMonths::of(place, kPot).lowest);
    for (std::size_t m = 0; m < 12; ++m) {
        place.monthly.lowest[m] = Celsius::from_degrees(m == 1 ? -24.5 : 3.0);
    }
    EXPECT_DOUBLE_EQ(PlaceMonths::of(place, kPot).lowest->degrees(), -24.5);
}

} // namespace
} // namespace lathhouse::climate
