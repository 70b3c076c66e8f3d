#include "core/home/measurement.h"

#include <gtest/gtest.h>

#include <limits>

namespace lathhouse::home {
namespace {

Measurement measured(MeasurementKind kind, std::vector<double> repeats)
{
    return {1, kind, calendar::Date{2026, 5, 1}, std::move(repeats), usual_method(kind), {}};
}

TEST(Measurement, ValueIsTheMeanOfItsRepeats)
{
    EXPECT_DOUBLE_EQ(measured(MeasurementKind::Height, {10.0, 11.0, 12.0}).value(), 11.0);
}

TEST(Measurement, StandardErrorIsTheSpreadOverTheRootOfTheirNumber)
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 2.5.3.1: s / sqrt(n). Of 1, 2, 3, 4: s = 1.290994, n = 4.
    EXPECT_NEAR(*measured(MeasurementKind::Height, {1.0, 2.0, 3.0, 4.0}).standard_error(), 0.645497, 1e-6);
    EXPECT_FALSE(measured(MeasurementKind::Height, {1.0}).standard_error());
}

TEST(Measurement, EveryKindHasAWordAUnitAndAMethod)
{
    for (const auto kind : every_measurement_kind()) {
        EXPECT_EQ(measurement_kind_of(to_string(kind)), kind);
        EXPECT_FALSE(to_string(unit_of(kind)).empty());
        EXPECT_EQ(measurement_method_of(to_string(usual_method(kind))), usual_method(kind));
        EXPECT_TRUE(check(measured(kind, {1.0})));
    }
    EXPECT_FALSE(measurement_kind_of("weight"));
}

TEST(Measurement, IsRefusedOutsideWhatCanBe)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(check(measured(MeasurementKind::Height, {})));
    EXPECT_FALSE(check(measured(MeasurementKind::Height, {nan})));
    EXPECT_FALSE(check(measured(MeasurementKind::Height, {-0.1})));
    EXPECT_FALSE(check(measured(MeasurementKind::Height, {10000.1})));
    EXPECT_FALSE(check(measured(MeasurementKind::Leaves, {2.5})));
    EXPECT_FALSE(check(measured(MeasurementKind::GreenCover, {1.01})));
    EXPECT_FALSE(check(measured(MeasurementKind::Height, std::vector(101, 1.0))));
    auto one = measured(MeasurementKind::Height, {1.0});
    one.time = std::chrono::hours{8};
    EXPECT_FALSE(check(one)) << "a time needs its zone";
    one.time_zone = "Europe/Budapest";
    EXPECT_TRUE(check(one));
    one.time = std::chrono::hours{24};
    EXPECT_FALSE(check(one));
    one.time.reset();
    one.photo = "not a digest";
    EXPECT_FALSE(check(one));
    one.photo.reset();
    one.pot = Litres::from_litres(0.0);
    EXPECT_FALSE(check(one));
}

} // namespace
} // namespace lathhouse::home
