#include "core/home/light_spread.h"

#include "core/home/shelter.h"
#include "core/sky/daily_clearness.h"
#include "core/sky/radiation.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::home {
namespace {

constexpr Latitude kSpreadTown = Latitude::literal(48.2);

/// Radiation of a continental town, MJ.
climate::Monthly<DailyRadiation> radiation_of_town()
{
    auto months = climate::in_every_month(DailyRadiation::from_megajoules(0.0));
    const double figures[]{3.7, 6.4, 10.7, 15.6, 19.5, 21.0, 21.2, 18.5, 13.0, 8.0, 4.2, 3.0};
    for (std::size_t m = 0; m < months.size(); ++m) {
        months[m] = DailyRadiation::from_megajoules(figures[m]);
    }
    return months;
}
YearOfSky town()
{
    return {kSpreadTown, radiation_of_town()};
}
Spot told_spot(double summer, double winter)
{
    return {.id = 1,
            .name = "Spot",
            .short_name = "Spot",
            .kind = SpotKind::Indoors,
            .offset = prior_offset(SpotKind::Indoors),
            .winter = std::nullopt,
            .summer = std::nullopt,
            .light_in_summer = DailyLight::from_moles(summer),
            .light_in_winter = DailyLight::from_moles(winter),
            .capacity = 4,
            .in_reach = false,
            .walking_order = 1};
}
sky::SpotView usual_spot(SpotKind kind, double facing)
{
    return sky::SpotView::of(usual_view(kind, Angle::from_degrees(facing))).value();
}
sky::SpotView away_from_walls()
{
    return sky::SpotView::of(usual_view(SpotKind::Open, std::nullopt)).value();
}

TEST(LightSpread, OfTheOpenIsThatOfTheClearness)
{
    const auto year = town();
    const auto days = days_at(away_from_walls(), year);
    const auto mean = months_at(away_from_walls(), year);
    for (std::size_t m = 0; m < days.size(); ++m) {
        const int ordinal = static_cast<int>(30.5 * static_cast<double>(m)) + 15;
        const double above = sky::extraterrestrial_radiation(kSpreadTown, ordinal).megajoules();
        const sky::DailyClearness clouds{radiation_of_town()[m].megajoules() / above};
        const auto share = [&](DailyLight light) { return light.moles() / mean[m].level.moles(); };
        const auto expected = [&](double of) { return clouds.at(Probability::clamped(of)) / clouds.mean(); };
        // The month's days are also of different length: a little more at both ends.
        EXPECT_NEAR(share(days[m].dark), expected(0.05), 0.04) << m + 1;
        EXPECT_NEAR(share(days[m].middle), expected(0.5), 0.05) << m + 1;
        EXPECT_NEAR(share(days[m].bright), expected(0.95), 0.18) << m + 1;
        EXPECT_GE(share(days[m].bright), expected(0.95) - 0.03) << m + 1;
    }
}
TEST(LightSpread, LiesRoundTheMonthsMeanAtEverySpot)
{
    const auto year = town();
    for (const auto kind :
         {SpotKind::Indoors, SpotKind::Open, SpotKind::Roofed, SpotKind::Screened, SpotKind::Glazed}) {
        for (const double facing : {0.0, 90.0, 180.0, 270.0}) {
            const auto view = usual_spot(kind, facing);
            const auto days = days_at(view, year);
            const auto mean = months_at(view, year);
            for (std::size_t m = 0; m < days.size(); ++m) {
                EXPECT_GT(days[m].dark.moles(), 0.0);
                EXPECT_LT(days[m].dark, days[m].middle);
                EXPECT_LT(days[m].middle, days[m].bright);
                EXPECT_LT(days[m].dark, mean[m].level);
                EXPECT_GT(days[m].bright, mean[m].level);
            }
        }
    }
}
TEST(LightSpread, IsSmallerWhereTheSunDoesNotReach)
{
    const auto year = town();
    const auto north = days_at(usual_spot(SpotKind::Indoors, 0.0), year);
    const auto south = days_at(usual_spot(SpotKind::Indoors, 180.0), year);
    for (const std::size_t month : {std::size_t{0}, std::size_t{2}, std::size_t{9}}) {
        EXPECT_LT(north[month].bright.moles() / north[month].middle.moles(),
                  south[month].bright.moles() / south[month].middle.moles());
    }
}
TEST(LightSpread, OfTheGrowersFiguresIsThatOfTheOpen)
{
    const auto year = town();
    const auto spread = light_spread(told_spot(12.0, 2.0), year);
    ASSERT_TRUE(spread);
    const auto mean = spot_light(told_spot(12.0, 2.0), year);
    const auto open = days_at(away_from_walls(), year);
    const auto level = months_at(away_from_walls(), year);
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR((*spread)[m].dark.moles() / mean[m].moles(),
                    open[m].dark.moles() / level[m].level.moles(), 1e-9);
        EXPECT_NEAR((*spread)[m].bright.moles() / mean[m].moles(),
                    open[m].bright.moles() / level[m].level.moles(), 1e-9);
    }
}
TEST(LightSpread, IsNotToldUnderLamps)
{
    EXPECT_FALSE(light_spread(told_spot(9.0, 9.0), town()));
    EXPECT_FALSE(light_spread(told_spot(6.0, 9.0), town()));
}
TEST(LightSpread, ComesFromTheViewWhereThereIsOne)
{
    auto spot = told_spot(9.0, 9.0);
    spot.view = usual_spot(SpotKind::Indoors, 180.0);
    const auto spread = light_spread(spot, town());
    ASSERT_TRUE(spread);
    EXPECT_EQ((*spread)[5].dark, days_at(*spot.view, town())[5].dark);
}
TEST(LightSpread, IsNothingInThePolarNight)
{
    const YearOfSky polar{Latitude::literal(78.0), radiation_of_town()};
    const auto days = days_at(away_from_walls(), polar);
    EXPECT_EQ(days[11].dark.moles(), 0.0);
    EXPECT_EQ(days[11].bright.moles(), 0.0);
    const auto told = light_spread(told_spot(12.0, 2.0), polar);
    ASSERT_TRUE(told);
    EXPECT_EQ((*told)[11].dark, (*told)[11].bright);
    EXPECT_GT((*told)[11].dark.moles(), 0.0);
}

} // namespace
} // namespace lathhouse::home
