#include "core/growth/temperature_response.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lathhouse::growth {
namespace {

CardinalTemperatures cardinal(double base, double optimum, double maximum)
{
    return {Celsius::from_degrees(base), Celsius::from_degrees(optimum), Celsius::from_degrees(maximum)};
}

double at(double temperature, const CardinalTemperatures& of)
{
    return temperature_response(Celsius::from_degrees(temperature), of);
}

// Yan and Hunt, Annals of Botany 84 (1999) 607, with the optimum 30 and the maximum 40 of a warm crop: the
// exponent Topt / (Tmax - Topt) is then 3, so that r = (40 - T) / 10 x (T / 30)^3. Figures by hand.
TEST(TemperatureResponse, IsThePublishedCurve)
{
    const auto warm = cardinal(0, 30, 40);
    EXPECT_NEAR(at(15, warm), 2.5 / 8.0, 1e-12);
    EXPECT_NEAR(at(20, warm), 2.0 * 8.0 / 27.0, 1e-12);
    EXPECT_NEAR(at(30, warm), 1.0, 1e-12);
    EXPECT_NEAR(at(36, warm), 0.4 * 1.728, 1e-12);
}

// The paper's equation has its steepest rise where its second derivative is nought. For an exponent of 3 that is
// at T = Tmax / 2: d2/dT2 [T^3 (40 - T)] = 240 T - 12 T^2.
TEST(TemperatureResponse, RisesSteepestWhereThePublishedCurveDoes)
{
    const auto warm = cardinal(0, 30, 40);
    const auto slope = [&](double t) { return at(t + 0.01, warm) - at(t - 0.01, warm); };
    EXPECT_GT(slope(20), slope(18));
    EXPECT_GT(slope(20), slope(22));
}

TEST(TemperatureResponse, StandsStillOutsideItsLimits)
{
    const auto any = cardinal(10, 25, 35);
    EXPECT_EQ(at(10, any), 0.0);
    EXPECT_EQ(at(-40, any), 0.0);
    EXPECT_EQ(at(35, any), 0.0);
    EXPECT_EQ(at(60, any), 0.0);
    EXPECT_EQ(at(std::numeric_limits<double>::quiet_NaN(), any), 0.0);
}

TEST(DayResponse, OfASteadyDayIsThatOfItsTemperature)
{
    const auto any = cardinal(10, 25, 35);
    const auto t = Celsius::from_degrees(19);
    EXPECT_NEAR(day_response(t, t, any), temperature_response(t, any), 1e-12);
    EXPECT_NEAR(day_response(t, t - KelvinDelta::from_kelvins(5), any), temperature_response(t, any), 1e-12);
}

TEST(DayResponse, CountsTheHoursAndNotTheMean)
{
    // A mean of 12 C, at which it stands still, with warm hours in the day.
    const auto any = cardinal(12, 25, 35);
    EXPECT_GT(day_response(Celsius::from_degrees(4), Celsius::from_degrees(20), any), 0.05);
}

// The mean of (x - a) over the hours of a cosine day above a, for a curve that is straight: optimum and maximum
// far apart make the exponent 1 and r = (M - T)(T - b) / ((M - o)(o - b)) with M - o = o - b = 50; checked against
// the closed form: with T = m + s cos, mean of (M - T)(T - b) is (M - m)(m - b) - s^2 / 2.
TEST(DayResponse, IsTheIntegralOverTheDay)
{
    const auto wide = cardinal(0, 50, 100);
    const double m = 30.0;
    const double s = 10.0;
    const double expected = ((100.0 - m) * m - s * s / 2.0) / 2500.0;
    EXPECT_NEAR(day_response(Celsius::from_degrees(m - s), Celsius::from_degrees(m + s), wide), expected, 1e-12);
}

TEST(CardinalTemperatures, AreInOrderForEveryKind)
{
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        const auto of = cardinal_temperatures(kind);
        EXPECT_LT(of.base, of.optimum) << kind.botanical_name;
        EXPECT_LT(of.optimum, of.maximum) << kind.botanical_name;
        EXPECT_GE(temperature_response(kind.comfort_low, of), 0.1) << kind.botanical_name;
        EXPECT_EQ(temperature_response(kind.lines.lethal, of), 0.0) << kind.botanical_name;
    }
}

TEST(LightResponse, IsNearlyTwoThirdsInGoodLight)
{
    const auto moles = DailyLight::from_moles;
    EXPECT_NEAR(light_response(moles(6), moles(6)), 1.0 - 1.0 / std::exp(1.0), 1e-12);
    EXPECT_EQ(light_response(moles(0), moles(6)), 0.0);
    EXPECT_LT(light_response(moles(600), moles(6)), 1.0 + 1e-12);
}

} // namespace
} // namespace lathhouse::growth
