#include "core/home/spot_light.h"

#include "core/home/shelter.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

constexpr Latitude kNorthern = Latitude::literal(48.2);
constexpr Angle kSouth = Angle::from_degrees(180.0);

/// Radiation of a continental town, MJ.
climate::Monthly<DailyRadiation> radiation()
{
    auto months = climate::in_every_month(DailyRadiation::from_megajoules(0.0));
    const double figures[]{3.7, 6.4, 10.7, 15.6, 19.5, 21.0, 21.2, 18.5, 13.0, 8.0, 4.2, 3.0};
    for (std::size_t m = 0; m < months.size(); ++m) {
        months[m] = DailyRadiation::from_megajoules(figures[m]);
    }
    return months;
}
Spot spot_of(SpotKind kind)
{
    return {.id = 1,
            .name = "Spot",
            .short_name = "Spot",
            .kind = kind,
            .offset = prior_offset(kind),
            .winter = std::nullopt,
            .summer = std::nullopt,
            .light_in_summer = DailyLight::from_moles(12.0),
            .light_in_winter = DailyLight::from_moles(2.0),
            .capacity = 4,
            .in_reach = false,
            .walking_order = 1};
}
sky::SpotView usual(SpotKind kind, std::optional<Angle> facing)
{
    return sky::SpotView::of(usual_view(kind, facing)).value();
}

TEST(YearOfSky, GivesAnOpenSpotTheMonthsLight)
{
    const YearOfSky year{kNorthern, radiation()};
    const auto months = months_at(usual(SpotKind::Open, std::nullopt), year);
    for (std::size_t m = 0; m < months.size(); ++m) {
        // Three days stand for the month, and the lowest Sun's beam is cut: 3 %.
        EXPECT_NEAR(months[m].level.moles() / (2.018 * radiation()[m].megajoules()), 1.0, 0.03) << m + 1;
        EXPECT_LE(months[m].likely_sun_hours, months[m].direct_sun_hours);
    }
    // FAO-56 eq. 35 turned round: 21 MJ of 41.8 are 51 % of the day's hours.
    EXPECT_NEAR(months[5].likely_sun_hours / months[5].direct_sun_hours, 0.51, 0.02);
}
TEST(UsualView, IsPossibleForEveryKindAndDimmerUnderMoreCover)
{
    const YearOfSky year{kNorthern, radiation()};
    const auto june = [&](SpotKind kind, std::optional<Angle> facing) {
        return months_at(usual(kind, facing), year)[5].level.moles();
    };
    EXPECT_LT(june(SpotKind::Indoors, kSouth), june(SpotKind::Roofed, kSouth));
    EXPECT_LT(june(SpotKind::Screened, kSouth), june(SpotKind::Roofed, kSouth));
    EXPECT_LT(june(SpotKind::Roofed, kSouth), june(SpotKind::Open, std::nullopt));
    EXPECT_LT(june(SpotKind::Glazed, std::nullopt), june(SpotKind::Open, std::nullopt));
    EXPECT_LT(june(SpotKind::Open, kSouth), june(SpotKind::Open, std::nullopt));
}
TEST(SpotLight, ComesFromTheViewWhereThereIsOne)
{
    const YearOfSky year{kNorthern, radiation()};
    auto spot = spot_of(SpotKind::Indoors);
    spot.view = usual(SpotKind::Indoors, kSouth);
    const auto months = spot_light(spot, year);
    EXPECT_EQ(months[5], months_at(*spot.view, year)[5].level);
    EXPECT_GT(months[5], months[11]);
}
TEST(SpotLight, ComesFromTheGrowersFiguresElse)
{
    const YearOfSky north{kNorthern, radiation()};
    const auto months = spot_light(spot_of(SpotKind::Indoors), north);
    EXPECT_NEAR(months[5].moles(), 12.0, 0.1);
    EXPECT_NEAR(months[11].moles(), 2.0, 0.1);
    const YearOfSky south{Latitude::literal(-48.2), radiation()};
    EXPECT_NEAR(spot_light(spot_of(SpotKind::Indoors), south)[11].moles(), 12.0, 0.1);
}

} // namespace
} // namespace lathhouse::home
