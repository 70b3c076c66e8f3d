#include "core/calendar/time_zone.h"

#include <gtest/gtest.h>

namespace lathhouse::calendar {
namespace {

using namespace std::chrono_literals;

TEST(TimeZone, IsFoundByItsName)
{
    const auto zone = TimeZone::named("Europe/Berlin");
    ASSERT_TRUE(zone) << zone.error().message;
    EXPECT_EQ(zone->offset_at(start_of_day_utc(*make_date(2027, 1, 10))), 3600s);
    EXPECT_EQ(zone->offset_at(start_of_day_utc(*make_date(2027, 7, 10))), 7200s);
}

TEST(TimeZone, RefusesAnUnknownNameWithAnExample)
{
    const auto zone = TimeZone::named("Europe/Atlantis");
    ASSERT_FALSE(zone);
    EXPECT_EQ(zone.error().code, ErrorCode::NotFound);
    EXPECT_NE(zone.error().message.find("Europe/Berlin"), std::string::npos);
    EXPECT_FALSE(TimeZone::named(""));
}

TEST(TimeZone, SystemZoneIsKnownOrSaidToBeMissing)
{
    const auto zone = TimeZone::of_system();
    if (zone) {
        EXPECT_TRUE(TimeZone::named(zone->name()));
    } else {
        EXPECT_EQ(zone.error().code, ErrorCode::Unavailable);
    }
}

TEST(TimeZone, LocalDateMayBeTomorrow)
{
    const auto kiritimati = TimeZone::named("Pacific/Kiritimati").value(); // UTC+14
    const auto noon = start_of_day_utc(*make_date(2027, 1, 10)) + 12h;
    EXPECT_EQ(kiritimati.local_date(noon), *make_date(2027, 1, 11));
}

TEST(TimeZone, DayMayBeginAfterMidnight)
{
    // Clocks in Beirut went from 00:00 to 01:00 on 27 March 2022 (IANA tzdata, rule Lebanon).
    const auto beirut = TimeZone::named("Asia/Beirut").value();
    EXPECT_EQ(to_text(beirut.start_of_day(*make_date(2022, 3, 27))), "2022-03-26T22:00:00Z");
    EXPECT_EQ(to_text(beirut.start_of_day(*make_date(2022, 3, 28))), "2022-03-27T21:00:00Z");
}

} // namespace
} // namespace lathhouse::calendar
