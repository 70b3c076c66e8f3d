#include "core/units/length.h"
#include "core/units/light.h"
#include "core/units/position.h"
#include "core/units/probability.h"
#include "core/units/temperature.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lathhouse {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

template <class A, class B>
concept CanAdd = requires(A a, B b)
{
    a + b;
};
template <class A, class B>
concept CanSubtract = requires(A a, B b)
{
    a - b;
};
static_assert(!CanAdd<Celsius, Celsius>);
static_assert(CanAdd<Celsius, KelvinDelta>);
static_assert(!CanAdd<Metres, Millimetres>);
static_assert(!CanSubtract<DailyLight, DailyRadiation>);
static_assert(!std::is_default_constructible_v<Latitude>);
static_assert(!std::is_constructible_v<Celsius, double>);

TEST(Celsius, DifferenceIsADelta)
{
    EXPECT_DOUBLE_EQ((Celsius::from_degrees(3.0) - Celsius::from_degrees(10.5)).kelvins(), -7.5);
}

TEST(Celsius, MeetsFahrenheitAtMinusForty)
{
    EXPECT_DOUBLE_EQ(Celsius::from_fahrenheit(-40.0).degrees(), -40.0);
    EXPECT_DOUBLE_EQ(Celsius::from_degrees(100.0).fahrenheit(), 212.0);
    EXPECT_DOUBLE_EQ(KelvinDelta::from_fahrenheit_degrees(9.0).kelvins(), 5.0);
}

TEST(Scalar, AddsScalesAndCompares)
{
    const auto one = KelvinDelta::from_kelvins(1.0);
    EXPECT_EQ(one + 2.0 * one - one / 2.0, KelvinDelta::from_kelvins(2.5));
    EXPECT_EQ(-one * 3.0 / one, -3.0);
    EXPECT_LT(one, one + one);
}

TEST(Metres, GiveFeetAndMiles)
{
    EXPECT_DOUBLE_EQ(Metres::from_metres(0.3048).feet(), 1.0);
    EXPECT_DOUBLE_EQ(Metres::from_kilometres(1.609344).miles(), 1.0);
}

struct RangeCase {
    const char* name;
    double degrees;
    bool as_latitude;
    bool as_longitude;
};
void PrintTo(const RangeCase& row, std::ostream* out)
{
    *out << row.name;
}
class PositionRange : public testing::TestWithParam<RangeCase> {};
TEST_P(PositionRange, AcceptsOnlyTheGlobe)
{
    const auto& row = GetParam();
    EXPECT_EQ(Latitude::from_degrees(row.degrees).has_value(), row.as_latitude);
    EXPECT_EQ(Longitude::from_degrees(row.degrees).has_value(), row.as_longitude);
}
INSTANTIATE_TEST_SUITE_P(Edges, PositionRange,
                         testing::Values(RangeCase{"Pole", 90.0, true, true},
                                         RangeCase{"JustPastThePole", 90.0000001, false, true},
                                         RangeCase{"Antimeridian", -180.0, false, true},
                                         RangeCase{"JustPastTheAntimeridian", -180.0000001, false, false},
                                         RangeCase{"NotANumber", kNaN, false, false}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(Probability, RefusesWhatIsNone)
{
    EXPECT_EQ(Probability::from_fraction(1.1).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(Probability::from_percent(-1.0).error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(Probability::from_fraction(kNaN));
    EXPECT_DOUBLE_EQ(Probability::from_percent(10.0)->fraction(), 0.1);
    EXPECT_DOUBLE_EQ(Probability::literal(0.1).complement().fraction(), 0.9);
}

} // namespace
} // namespace lathhouse
