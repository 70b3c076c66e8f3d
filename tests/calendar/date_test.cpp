#include "core/calendar/date.h"

#include <gtest/gtest.h>

namespace lathhouse::calendar {
namespace {

TEST(ParseDate, ReadsOneFormOnly)
{
    EXPECT_EQ(to_text(parse_date("2027-05-09").value()), "2027-05-09");
    for (const char* text :
         {"2027-5-9", "09.05.2027", "2027-05-09T00:00", "", "2027/05/09", "-027-05-09", "2027-+5-09"}) {
        EXPECT_EQ(parse_date(text).error().code, ErrorCode::Malformed) << text;
    }
}

TEST(MakeDate, KnowsLeapDays)
{
    EXPECT_TRUE(make_date(2028, 2, 29));
    EXPECT_FALSE(make_date(2027, 2, 29));
    EXPECT_FALSE(make_date(2100, 2, 29)); // A century that 400 does not divide.
    EXPECT_EQ(make_date(2027, 13, 1).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(make_date(2027, 0, 1).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(make_date(1800, 1, 1).error().code, ErrorCode::OutOfRange);
}

TEST(Instant, WritesRfc3339)
{
    using namespace std::chrono_literals;
    const Date day = *make_date(2024, 2, 29);
    EXPECT_EQ(to_text(start_of_day_utc(day) + 86399s), "2024-02-29T23:59:59Z");
    EXPECT_EQ(utc_date(start_of_day_utc(day) - 1s), *make_date(2024, 2, 28));
}

TEST(OrdinalOfYear, CountsTheYearsOwnDays)
{
    EXPECT_EQ(ordinal_of_year(*make_date(2027, 12, 31)), 365);
    EXPECT_EQ(ordinal_of_year(*make_date(2028, 12, 31)), 366);
    EXPECT_EQ(ordinal_of_year(*make_date(2027, 3, 1)), 60);
}

TEST(DaysBetween, IsNegativeBackwards)
{
    EXPECT_EQ(days_between(*make_date(2027, 1, 10), *make_date(2028, 1, 10)), 365);
    EXPECT_EQ(days_between(*make_date(2028, 3, 1), *make_date(2028, 2, 28)), -2);
}

} // namespace
} // namespace lathhouse::calendar
