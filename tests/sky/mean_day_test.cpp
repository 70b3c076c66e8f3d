#include "core/sky/mean_day.h"

#include "core/sky/evapotranspiration.h"
#include "core/sky/radiation.h"
#include "tests/sky/ten_places.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <map>

namespace lathhouse::sky {
namespace {

constexpr Latitude kVienna = Latitude::literal(48.2);
DailyRadiation megajoules(double value)
{
    return DailyRadiation::from_megajoules(value);
}

/// Radiation above the air, mean of the month.
double above_the_air(const PlaceMonth& row)
{
    double sum = 0.0;
    for (int day = 1; day <= 28; ++day) {
        sum += extraterrestrial_radiation(row.position.latitude, ordinal_of(row.month, day)).megajoules();
    }
    return sum / 28.0;
}

DailyRadiation estimated(const PlaceMonth& row)
{
    return radiation_from_temperature_range(megajoules(above_the_air(row)), row.low, row.high, row.elevation);
}

/// Mean relative error without sign of each place's twelve months.
struct Errors {
    double mean = 0.0;
    double worst = 0.0;
};
template <class Estimate>
Errors errors_of(Estimate estimate)
{
    std::map<std::string, double> places;
    for (const auto& row : ten_places()) {
        places[row.place] += std::fabs(estimate(row)) / 12.0;
    }
    Errors errors;
    for (const auto& [place, error] : places) {
        errors.mean += error / static_cast<double>(places.size());
        errors.worst = std::max(errors.worst, error);
    }
    return errors;
}

TEST(TenPlaces, AreAllRead)
{
    EXPECT_EQ(ten_places().size(), 120U);
}

TEST(RangeCoefficient, StaysWithinTheBooksRange)
{
    EXPECT_NEAR(range_coefficient(Celsius::from_degrees(-60.0)), 0.137, 0.001);
    EXPECT_EQ(range_coefficient(Celsius::from_degrees(35.0)), 0.19);
    EXPECT_GT(range_coefficient(Celsius::from_degrees(20.0)), range_coefficient(Celsius::from_degrees(5.0)));
}

TEST(LevelLight, IsWithinTwelvePercentAtTheTenPlaces)
{
    const auto errors =
        errors_of([](const auto& row) { return estimated(row).megajoules() / row.level - 1.0; });
    EXPECT_LT(errors.mean, 0.072); // Measured 0.071; the bar is 0.12.
    EXPECT_LT(errors.worst, 0.12); // Measured 0.113.
    RecordProperty("mean", std::to_string(errors.mean));
    RecordProperty("worst", std::to_string(errors.worst));
}

TEST(LevelLight, IsWithinTwelvePercentAtPlacesLeftOutOfTheFit)
{
    // The form of the coefficient: its two numbers are fitted anew, to these figures alone, without the place
    // that is judged.
    const auto rows = ten_places();
    std::map<std::string, std::array<double, 2>> fits;
    for (const auto& judged : rows) {
        if (fits.contains(judged.place)) {
            continue;
        }
        double xx = 0.0, xy = 0.0, yy = 0.0, x1 = 0.0, y1 = 0.0;
        for (const auto& row : rows) {
            if (row.place != judged.place) {
                const double shown =
                    row.level / (above_the_air(row) * std::sqrt((row.high - row.low).kelvins()));
                const double x = 1.0 / shown;
                const double y = saturation_vapour_pressure_kpa(row.low) / shown;
                xx += x * x;
                xy += x * y;
                yy += y * y;
                x1 += x;
                y1 += y;
            }
        }
        const double determinant = xx * yy - xy * xy;
        fits[judged.place] = {(x1 * yy - y1 * xy) / determinant, (xx * y1 - xy * x1) / determinant};
    }
    const auto errors = errors_of([&](const PlaceMonth& row) {
        const auto& [a, b] = fits.at(row.place);
        const double k = std::min(a + b * saturation_vapour_pressure_kpa(row.low), 0.19);
        const double share =
            std::min(k * std::sqrt((row.high - row.low).kelvins()), 0.75 + 2e-5 * row.elevation.metres());
        return share * above_the_air(row) / row.level - 1.0;
    });
    EXPECT_LT(errors.mean, 0.12);
    EXPECT_LT(errors.worst, 0.12);
    RecordProperty("mean", std::to_string(errors.mean));
    RecordProperty("worst", std::to_string(errors.worst));
}

/// Relative error of a wall's light (0 north .. 3 west), the day's sum on the level as given.
double wall_error(const PlaceMonth& row, std::size_t wall, DailyRadiation level)
{
    const double clearness = level.megajoules() / above_the_air(row);
    double sum = 0.0;
    for (const int date : {5, 15, 25}) {
        const int ordinal = ordinal_of(row.month, date);
        const MeanDay day{row.position.latitude, ordinal,
                          clearness * extraterrestrial_radiation(row.position.latitude, ordinal)};
        sum +=
            radiation_on_wall(day, Angle::from_degrees(90.0 * static_cast<double>(wall))).megajoules() / 3.0;
    }
    return sum / row.walls[wall] - 1.0;
}

struct WallCase {
    const char* name;
    std::size_t wall;
    double known;     // Bound on the mean error where the level light is known.
    double estimated; // Where it comes from the temperatures; the bar is 0.20.
};
void PrintTo(const WallCase& row, std::ostream* out)
{
    *out << row.name;
}
class WallLight : public testing::TestWithParam<WallCase> {};
TEST_P(WallLight, FollowsFromTheLevelLight)
{
    const auto& [name, wall, bound, unused] = GetParam();
    const auto errors =
        errors_of([&](const PlaceMonth& row) { return wall_error(row, wall, megajoules(row.level)); });
    EXPECT_LT(errors.mean, bound);
    RecordProperty("mean", std::to_string(errors.mean));
}
TEST_P(WallLight, IsWithinTwentyPercentFromTemperaturesAlone)
{
    const auto& [name, wall, unused, bound] = GetParam();
    const auto errors =
        errors_of([&](const PlaceMonth& row) { return wall_error(row, wall, estimated(row)); });
    EXPECT_LT(errors.mean, bound);
    RecordProperty("mean", std::to_string(errors.mean));
    RecordProperty("worst", std::to_string(errors.worst));
}
INSTANTIATE_TEST_SUITE_P(Ways, WallLight,
                         testing::Values(WallCase{"North", 0, 0.06, 0.08}, WallCase{"East", 1, 0.065, 0.11},
                                         WallCase{"South", 2, 0.06, 0.10}, WallCase{"West", 3, 0.08, 0.10}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(MeanDay, KeepsTheDaysSum)
{
    const MeanDay day{kVienna, 100, megajoules(15.0)};
    EXPECT_NEAR(day.diffuse().megajoules() + day.beam_on({0.0, 0.0, 1.0}).megajoules(), 15.0,
                0.02); // What a Sun below 1 degree would give is left out.
}
TEST(MeanDay, HasMorningAndAfternoonAlike)
{
    const MeanDay day{kVienna, 150, megajoules(20.0)};
    EXPECT_NEAR(radiation_on_wall(day, Angle::from_degrees(90.0)).megajoules(),
                radiation_on_wall(day, Angle::from_degrees(270.0)).megajoules(), 1e-9);
}
TEST(MeanDay, TurnsRoundAtTheEquator)
{
    // 22 December south of the line is 21 June north of it, but for the Earth's distance.
    const MeanDay north{Latitude::literal(40.0), 172, megajoules(20.0)};
    const MeanDay south{Latitude::literal(-40.0), 355, megajoules(20.0)};
    EXPECT_NEAR(radiation_on_wall(north, Angle::from_degrees(180.0)).megajoules(),
                radiation_on_wall(south, Angle::from_degrees(0.0)).megajoules(), 0.4);
}
TEST(MeanDay, IsDarkInThePolarNight)
{
    const MeanDay day{Latitude::literal(80.0), 355, megajoules(1.0)};
    EXPECT_EQ(day.global().megajoules(), 0.0);
    EXPECT_EQ(day.hours(), 0.0);
    EXPECT_EQ(radiation_on_wall(day, Angle::from_degrees(180.0)).megajoules(), 0.0);
}
TEST(MeanDay, GoesRoundInThePolarDay)
{
    const MeanDay day{Latitude::literal(85.0), 172, megajoules(22.0)};
    EXPECT_NEAR(day.hours(), 24.0, 1e-9);
    EXPECT_NEAR(radiation_on_wall(day, Angle::from_degrees(0.0)).megajoules() /
                    radiation_on_wall(day, Angle::from_degrees(180.0)).megajoules(),
                1.0, 0.25);
}
TEST(MeanDay, WithoutAnyLightHasNone)
{
    const MeanDay day{kVienna, 100, megajoules(0.0)};
    EXPECT_EQ(radiation_on_wall(day, Angle::from_degrees(180.0)).megajoules(), 0.0);
}
TEST(DiffuseShare, IsPagesBetweenItsEnds)
{
    EXPECT_DOUBLE_EQ(diffuse_share(0.0), 1.0);
    EXPECT_NEAR(diffuse_share(0.5), 0.435, 1e-12);
    EXPECT_EQ(diffuse_share(0.8), 0.15);
}

} // namespace
} // namespace lathhouse::sky
