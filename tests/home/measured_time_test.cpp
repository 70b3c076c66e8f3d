#include "core/home/measured_time.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

constexpr const char* kHome = "Europe/Budapest";

Measurement read_on(calendar::Date day)
{
    return {1, MeasurementKind::Height, day, {20.0}, usual_method(MeasurementKind::Height), {}};
}

// Offsets by the IANA time zone database: Budapest UTC+1 and +2, New York -5 and -4, Kiritimati +14, Kathmandu +5:45; clocks
// went to summer time on 29 March 2026 in Europe, on 8 March 2026 in New York.

TEST(MeasuredTime, WithoutAZoneItIsTheHouseholdsClock)
{
    auto made = read_on(calendar::Date{2026, 5, 16});
    ASSERT_TRUE(set_time(made, hours{9} + minutes{30}, "", kHome));
    EXPECT_EQ(made.measured, (calendar::Date{2026, 5, 16}));
    EXPECT_EQ(*made.time, hours{9} + minutes{30});
    EXPECT_EQ(made.time_zone, kHome);
}

TEST(MeasuredTime, FarClocksAreTurnedToTheHouseholdsOverMidnight)
{
    auto west = read_on(calendar::Date{2026, 5, 16});
    ASSERT_TRUE(set_time(west, hours{23} + minutes{30}, "America/New_York", kHome));
    EXPECT_EQ(west.measured, (calendar::Date{2026, 5, 17}));
    EXPECT_EQ(*west.time, hours{5} + minutes{30});
    EXPECT_EQ(west.time_zone, kHome);

    auto east = read_on(calendar::Date{2026, 5, 16});
    ASSERT_TRUE(set_time(east, hours{3}, "Pacific/Kiritimati", kHome));
    EXPECT_EQ(east.measured, (calendar::Date{2026, 5, 15}));
    EXPECT_EQ(*east.time, hours{15});

    auto quarters = read_on(calendar::Date{2026, 12, 1});
    ASSERT_TRUE(set_time(quarters, hours{12}, "Asia/Kathmandu", kHome));
    EXPECT_EQ(*quarters.time, hours{7} + minutes{15});
}

TEST(MeasuredTime, TheWeeksInWhichOnlyOneOfThemHasSummerTimeCount)
{
    auto made = read_on(calendar::Date{2026, 3, 20});
    ASSERT_TRUE(set_time(made, hours{12}, "America/New_York", kHome));
    EXPECT_EQ(*made.time, hours{17}) << "five hours apart, not six";
}

TEST(MeasuredTime, AnUnknownZoneIsRefused)
{
    auto made = read_on(calendar::Date{2026, 5, 16});
    const auto refused = set_time(made, hours{12}, "Europe/Nowhere", kHome);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NotFound);
    EXPECT_FALSE(set_time(made, hours{12}, "America/New_York", "Europe/Nowhere"));
}

} // namespace
} // namespace lathhouse::home
