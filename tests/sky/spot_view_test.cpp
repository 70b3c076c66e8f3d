#include "core/sky/spot_view.h"

#include "core/sky/direct_sun.h"
#include "core/sky/glazing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lathhouse::sky {
namespace {

constexpr Latitude kNorthern = Latitude::literal(48.2);
constexpr Angle kNorth = Angle::from_degrees(0.0);
constexpr Angle kEast = Angle::from_degrees(90.0);
constexpr Angle kSouth = Angle::from_degrees(180.0);
Metres metres(double value)
{
    return Metres::from_metres(value);
}
MeanDay day(int ordinal, double megajoules)
{
    return {kNorthern, ordinal, DailyRadiation::from_megajoules(megajoules)};
}
/// Mean days of a continental town at 48 degrees north.
MeanDay june()
{
    return day(172, 21.5);
}
MeanDay december()
{
    return day(355, 3.2);
}
LightAtSpot light(const SpotFigures& figures, const MeanDay& at)
{
    return SpotOptics{SpotView::of(figures).value()}.on(at);
}
SpotFigures sill(Angle facing)
{
    SpotFigures figures;
    figures.facing = facing;
    figures.panes = 2;
    figures.passes = 0.9;
    return figures;
}
SpotFigures open_sky()
{
    SpotFigures figures;
    figures.shelter = Shelter::OpenSky;
    return figures;
}
Direction towards(double azimuth, double elevation)
{
    const double flat = std::cos(Angle::from_degrees(elevation).radians());
    const auto level = level_direction(Angle::from_degrees(azimuth));
    return {level.east * flat, level.north * flat, std::sin(Angle::from_degrees(elevation).radians())};
}

TEST(OpenSky, GivesALevelLeafAllTheLight)
{
    const auto at = june();
    const auto got = light(open_sky(), at);
    EXPECT_NEAR(got.level.megajoules() / 21.5, 1.0, 0.01);
    EXPECT_NEAR(got.facing.megajoules(), radiation_on_wall(at, kSouth).megajoules(), 1e-9);
    EXPECT_NEAR(got.sun_hours, at.hours(), 0.35);
}
TEST(OpenSky, BeforeAWallLosesWhatTheWallHides)
{
    auto figures = open_sky();
    figures.facing = kNorth;
    figures.behind = Angle::from_degrees(60.0);
    EXPECT_LT(light(figures, june()).level, light(open_sky(), june()).level);
    // In December the Sun stands below the wall's edge in the south all day.
    EXPECT_EQ(light(figures, december()).sun_hours, 0.0);
}
TEST(OpenSky, UnderOvercastIsTheShareOfSkyLeftAndWhatTheWallsThrowBack)
{
    auto figures = open_sky();
    figures.opposite = Angle::from_degrees(60.0);
    const auto overcast = MeanDay{kNorthern, 172, DailyRadiation::from_megajoules(1e-6)};
    // A strip without end up to 60 degrees takes (1 - cos 60) / 2 = 1/4; it shows 0.3 x (0.5 + 0.5 x 0.2).
    EXPECT_NEAR(light(figures, overcast).level / overcast.diffuse(), 0.75 + 0.25 * 0.3 * 0.6, 1e-4);
}
TEST(OpenSky, UnderGlassLosesByThePane)
{
    auto figures = open_sky();
    figures.panes = 1;
    EXPECT_NEAR(light(figures, june()).level / light(open_sky(), june()).level, glass_transmittance_of_sky(1),
                1e-9);
}

TEST(Window, SeesWhatLiesWithinItsFrame)
{
    const auto view = SpotView::of(sill(kSouth)).value(); // 0.6 m to either side and 1.2 m up, 0.2 m away.
    EXPECT_TRUE(view.sees(towards(180.0, 45.0)));
    EXPECT_TRUE(view.sees(towards(180.0, 80.0)));
    EXPECT_FALSE(view.sees(towards(180.0, 81.0))); // arctan(1.2 / 0.2) is 80.5 degrees.
    EXPECT_TRUE(view.sees(towards(180.0 + 71.0, 10.0)));
    EXPECT_FALSE(view.sees(towards(180.0 + 72.0, 10.0))); // arctan(0.6 / 0.2) is 71.6 degrees.
    EXPECT_FALSE(view.sees(towards(0.0, 45.0)));
    EXPECT_FALSE(view.sees(towards(180.0, -1.0)));
}
TEST(Window, ShiftedToTheRightShowsMoreOfTheRight)
{
    auto figures = sill(kSouth);
    figures.sideways = metres(0.5); // Looking south, the right hand is west.
    const auto view = SpotView::of(figures).value();
    EXPECT_TRUE(view.sees(towards(255.0, 10.0)));
    EXPECT_FALSE(view.sees(towards(145.0, 10.0)));
}
TEST(Window, BehindABuildingHasNoSunBelowItsRoof)
{
    auto figures = sill(kSouth);
    figures.opposite = Angle::from_degrees(30.0);
    const auto view = SpotView::of(figures).value();
    EXPECT_FALSE(view.sees(towards(180.0, 29.0)));
    EXPECT_TRUE(view.sees(towards(180.0, 31.0)));
    EXPECT_LT(light(figures, december()).level, light(sill(kSouth), december()).level);
    EXPECT_EQ(light(figures, december()).sun_hours, 0.0); // At noon 18 degrees high.
}
TEST(Window, UnderAnOverhangKeepsTheWinterSunAndLosesTheSummers)
{
    auto figures = sill(kSouth);
    figures.overhang = metres(1.0);
    const double left_in_june = light(figures, june()).level / light(sill(kSouth), june()).level;
    const double left_in_december = light(figures, december()).level / light(sill(kSouth), december()).level;
    EXPECT_LT(left_in_june, 0.65);
    EXPECT_GT(left_in_december, 0.75);
    EXPECT_LT(light(figures, june()).sun_hours, light(sill(kSouth), june()).sun_hours);
    EXPECT_EQ(light(figures, december()).sun_hours, light(sill(kSouth), december()).sun_hours);
}
TEST(Window, TurnedSouthKeepsMoreOfTheWintersLightThanOfTheSummers)
{
    // The low Sun of December shines straight in: an upright leaf gets a larger share of the outdoor light
    // than in June.
    const double in_june = light(sill(kSouth), june()).facing.megajoules() / 21.5;
    const double in_december = light(sill(kSouth), december()).facing.megajoules() / 3.2;
    EXPECT_GT(in_december, 2.0 * in_june);
}
TEST(Window, TurnedNorthIsDimmerThanEastAndEastThanSouth)
{
    const auto at = december();
    EXPECT_LT(light(sill(kNorth), at).level, light(sill(kEast), at).level);
    EXPECT_LT(light(sill(kEast), at).level, light(sill(kSouth), at).level);
    EXPECT_EQ(light(sill(kNorth), at).sun_hours, 0.0);
}
TEST(Window, GivesLessTheFartherInAndNeverNothing)
{
    double last = 1e9;
    for (const double distance : {0.1, 0.3, 0.6, 1.0, 2.0, 4.0, 8.0}) {
        auto figures = sill(kSouth);
        figures.distance = metres(distance);
        const double moles = light(figures, day(100, 15.0)).level.megajoules();
        EXPECT_LT(moles, last) << distance;
        EXPECT_GT(moles, 0.01) << distance;
        last = moles;
    }
}
TEST(Window, GivesLessWithEachPaneAndWithCurtains)
{
    auto figures = sill(kSouth);
    const auto two = light(figures, june()).level;
    figures.panes = 3;
    EXPECT_LT(light(figures, june()).level, two);
    figures.panes = 2;
    figures.passes = 0.45;
    EXPECT_NEAR(light(figures, june()).level / two, 0.5, 1e-9);
    figures.passes = 0.0;
    EXPECT_EQ(light(figures, june()).level.megajoules(), 0.0);
}
TEST(Window, BelowTheLeavesGivesOnlyWhatTheRoomThrowsBack)
{
    // The split flux formula of BRE Digest 310 by hand: transmittance x window / (area (1 - mean
    // reflectance)) x (sky on the window x lower reflectance + ground on the window x upper reflectance),
    // here under an even sky, which lays 0.5 on an upright window where the digest's overcast sky lays 0.39.
    auto figures = sill(kSouth);
    figures.panes = 1;
    figures.passes = 1.0;
    figures.width = metres(2.0);
    figures.height = metres(1.0);
    figures.sill = metres(-3.0);
    const auto overcast = MeanDay{kNorthern, 172, DailyRadiation::from_megajoules(1e-6)};
    const double area = 2.0 * 20.0 + 2.0 * 9.0 * 2.5;
    const double mean = (20.0 * 0.7 + 20.0 * 0.2 + 43.0 * 0.5 + 2.0 * 0.15) / area;
    const double lower = (20.0 * 0.2 + 17.5 * 0.5) / 37.5;
    const double upper = (20.0 * 0.7 + 17.5 * 0.5) / 37.5;
    const double expected =
        glass_transmittance_of_sky(1) * 2.0 / (area * (1.0 - mean)) * (0.5 * lower + 0.5 * 0.2 * upper);
    EXPECT_NEAR(light(figures, overcast).level / overcast.global(), expected, 1e-5);
}
TEST(Porch, OfEndlessWidthAndHeightWithoutDepthIsHalfTheSkyAndMore)
{
    SpotFigures figures;
    figures.width = metres(30.0);
    figures.height = metres(30.0);
    figures.sill = metres(0.0);
    figures.distance = metres(0.05);
    const auto overcast = MeanDay{kNorthern, 172, DailyRadiation::from_megajoules(1e-6)};
    EXPECT_GT(light(figures, overcast).level / overcast.global(), 0.499);
}
TEST(Porch, IsBrighterThanAWindowOfItsSize)
{
    SpotFigures porch;
    porch.width = metres(4.0);
    porch.height = metres(2.0);
    porch.distance = metres(1.0);
    auto window = porch;
    window.panes = 2;
    EXPECT_GT(light(porch, june()).level, light(window, june()).level);
    EXPECT_LT(light(porch, june()).level, light(open_sky(), june()).level);
}
TEST(Spot, IsDarkInThePolarNight)
{
    const MeanDay night{Latitude::literal(80.0), 355, DailyRadiation::from_megajoules(0.0)};
    EXPECT_EQ(light(sill(kSouth), night).level.megajoules(), 0.0);
    EXPECT_EQ(light(open_sky(), night).facing.megajoules(), 0.0);
}

struct WrongFigure {
    const char* name;
    void (*spoil)(SpotFigures&);
    const char* says;
};
void PrintTo(const WrongFigure& row, std::ostream* out)
{
    *out << row.name;
}
class SpotFiguresLimits : public testing::TestWithParam<WrongFigure> {};
TEST_P(SpotFiguresLimits, AreKept)
{
    SpotFigures figures;
    ASSERT_TRUE(SpotView::of(figures));
    GetParam().spoil(figures);
    const auto view = SpotView::of(figures);
    ASSERT_FALSE(view);
    EXPECT_EQ(view.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(view.error().message.find(GetParam().says), std::string::npos) << view.error().message;
}
INSTANTIATE_TEST_SUITE_P(
    Wrong, SpotFiguresLimits,
    testing::Values(
        WrongFigure{"NoWidth", [](SpotFigures& f) { f.width = metres(0.0); },
                    "the width of a window or opening must lie within 0.05 and 30 m, not 0"},
        WrongFigure{"NegativeHeight", [](SpotFigures& f) { f.height = metres(-1.0); }, "height"},
        WrongFigure{"OnTheGlass", [](SpotFigures& f) { f.distance = metres(0.0); }, "distance"},
        WrongFigure{"DeepSill", [](SpotFigures& f) { f.sill = metres(-21.0); }, "sill"},
        WrongFigure{"FarSideways", [](SpotFigures& f) { f.sideways = metres(21.0); }, "sideways"},
        WrongFigure{"NegativeOverhang", [](SpotFigures& f) { f.overhang = metres(-0.1); }, "overhang"},
        WrongFigure{"BuildingOverhead", [](SpotFigures& f) { f.opposite = Angle::from_degrees(90.0); },
                    "opposite"},
        WrongFigure{"WallOverhead", [](SpotFigures& f) { f.behind = Angle::from_degrees(90.0); }, "behind"},
        WrongFigure{"FivePanes", [](SpotFigures& f) { f.panes = 5; }, "panes"},
        WrongFigure{"MoreThanAll", [](SpotFigures& f) { f.passes = 1.1; }, "let through"},
        WrongFigure{
            "NoNumber",
            [](SpotFigures& f) { f.facing = Angle::from_degrees(std::numeric_limits<double>::quiet_NaN()); },
            "faces"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(Shelter, HasItsWord)
{
    EXPECT_EQ(shelter_of("opening"), Shelter::Opening);
    EXPECT_EQ(shelter_of("open_sky"), Shelter::OpenSky);
    EXPECT_FALSE(shelter_of("cave"));
}

// --- Direct sun of a date ---------------------------------------------------------------------------------

const Position kTown{kNorthern, Longitude::literal(0.0)};

TEST(DirectSun, UnderAFreeSkyIsTheTimeAboveTheHorizon)
{
    const calendar::Date date{2027, 3, 20};
    const SolarEphemeris ephemeris{date, date};
    const auto spells = direct_sun(SpotView::of(open_sky()).value(), ephemeris, kTown, date);
    ASSERT_EQ(spells.size(), 1U);
    // At the equinox twelve hours, without refraction and the Sun's size.
    EXPECT_NEAR(hours_of(spells), 12.0, 0.05);
}
TEST(DirectSun, ComesToAnEastWindowInTheMorning)
{
    const calendar::Date date{2027, 6, 21};
    const SolarEphemeris ephemeris{date, date};
    const auto spells = direct_sun(SpotView::of(sill(kEast)).value(), ephemeris, kTown, date);
    ASSERT_EQ(spells.size(), 1U);
    EXPECT_LT(spells[0].to, calendar::start_of_day_utc(date) + std::chrono::hours{12});
}
TEST(DirectSun, ComesToANorthWindowMorningAndEveningInJuneAndNeverInDecember)
{
    auto figures = sill(kNorth);
    figures.distance = metres(0.05);
    const auto view = SpotView::of(figures).value();
    const calendar::Date summer{2027, 6, 21};
    const calendar::Date winter{2027, 12, 21};
    const SolarEphemeris ephemeris{summer, winter};
    const auto spells = direct_sun(view, ephemeris, kTown, summer);
    ASSERT_EQ(spells.size(), 2U);
    EXPECT_LT(spells[0].to, spells[1].from);
    EXPECT_TRUE(direct_sun(view, ephemeris, kTown, winter).empty());
}

} // namespace
} // namespace lathhouse::sky
