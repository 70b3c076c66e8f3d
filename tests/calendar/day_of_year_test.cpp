#include "core/calendar/day_of_year.h"

#include <gtest/gtest.h>

namespace lathhouse::calendar {
namespace {

TEST(DayOfYear, HasTheSamePlaceInEveryYear)
{
    for (const int year : {2027, 2028}) {
        EXPECT_EQ(DayOfYear::of(*make_date(year, 2, 28)).place(), 59) << year;
        EXPECT_EQ(DayOfYear::of(*make_date(year, 3, 1)).place(), 61) << year;
        EXPECT_EQ(DayOfYear::of(*make_date(year, 12, 31)).place(), 366) << year;
    }
    EXPECT_EQ(DayOfYear::of(*make_date(2028, 2, 29)).place(), 60);
}

TEST(DayOfYear, LeapDayBecomesTheFirstOfMarchInACommonYear)
{
    const auto leap_day = *DayOfYear::from_month_day(2, 29);
    EXPECT_EQ(leap_day.in_year(2028), *make_date(2028, 2, 29));
    EXPECT_EQ(leap_day.in_year(2027), *make_date(2027, 3, 1));
}

TEST(DayOfYear, RoundTripsAllPlaces)
{
    for (int place = 1; place <= 366; ++place) {
        const auto day = *DayOfYear::from_place(place);
        EXPECT_EQ(DayOfYear::from_month_day(day.month(), day.day()).value(), day);
        EXPECT_EQ(DayOfYear::parse(day.to_text()).value(), day);
    }
}

TEST(DayOfYear, WrapsAtBothEnds)
{
    EXPECT_EQ(DayOfYear::wrapped(0).to_text(), "12-31");
    EXPECT_EQ(DayOfYear::wrapped(367).to_text(), "01-01");
    EXPECT_EQ(DayOfYear::wrapped(-366).to_text(), "12-31");
}

TEST(DayOfYear, IsTheShortWayFromAnother)
{
    const auto may = *DayOfYear::parse("05-09");
    EXPECT_EQ(short_way(may, may), 0);
    EXPECT_EQ(short_way(*DayOfYear::parse("12-31"), *DayOfYear::parse("01-02")), 2);
    EXPECT_EQ(short_way(*DayOfYear::parse("01-02"), *DayOfYear::parse("12-31")), -2);
    EXPECT_EQ(short_way(DayOfYear::wrapped(1), DayOfYear::wrapped(184)), 183);
    EXPECT_EQ(short_way(DayOfYear::wrapped(1), DayOfYear::wrapped(185)), -182);
}

TEST(DayOfYear, RefusesWhatNoYearHas)
{
    EXPECT_EQ(DayOfYear::from_place(367).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(DayOfYear::from_month_day(4, 31).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(DayOfYear::parse("4-1").error().code, ErrorCode::Malformed);
    EXPECT_EQ(DayOfYear::parse("02-30").error().code, ErrorCode::OutOfRange);
    for (const char* text : {"+1-05", " 1-05", "01-+5", "01- 5"}) {
        EXPECT_EQ(DayOfYear::parse(text).error().code, ErrorCode::Malformed) << text;
    }
}

TEST(DayOfYear, FindsItsNextDate)
{
    const auto may = *DayOfYear::parse("05-09");
    EXPECT_EQ(may.next_on_or_after(*make_date(2027, 5, 9)), *make_date(2027, 5, 9));
    EXPECT_EQ(may.next_on_or_after(*make_date(2027, 5, 10)), *make_date(2028, 5, 9));
    // The last day that can be asked about has a next year too.
    EXPECT_EQ(may.next_on_or_after(*make_date(2199, 12, 31)), (Date{2200, 5, 9}));
    EXPECT_EQ(DayOfYear::parse("02-29")->next_on_or_after(*make_date(2199, 12, 31)), (Date{2200, 3, 1}));
    EXPECT_EQ(may.in_year(1900), (Date{1900, 5, 9}));
}

} // namespace
} // namespace lathhouse::calendar
