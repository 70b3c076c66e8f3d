#pragma once

#include "core/calendar/date.h"

#include <compare>
#include <string>
#include <string_view>

namespace lathhouse::calendar {

/// A day without a year, as a place in the calendar of a leap year: 1 January = 1, 29 February = 60, 1 March
/// = 61, 31 December = 366, in every year. In a common year no date has place 60, so that the same day of two
/// years always has the same place. (`ordinal_of_year` is the other count, the one of formulas for the Sun.)
class DayOfYear {
public:
    static constexpr int kCount = 366;

    /// Errors: OutOfRange outside 1..366.
    static Result<DayOfYear> from_place(int place);
    /// Errors: OutOfRange where a leap year has no such day.
    static Result<DayOfYear> from_month_day(int month, int day);
    static DayOfYear of(Date date);
    /// Reads `MM-DD` exactly. Errors: Malformed, OutOfRange.
    static Result<DayOfYear> parse(std::string_view text);
    /// The day `place` (any whole number) of an endless row of leap years: 0 is 31 December, 367 is 1
    /// January.
    static constexpr DayOfYear wrapped(int place)
    {
        const int zero_based = ((place - 1) % kCount + kCount) % kCount;
        return DayOfYear{zero_based + 1};
    }

    constexpr int place() const { return place_; }
    constexpr int index() const { return place_ - 1; } ///< 0..365, for arrays of 366.
    int month() const;                                 ///< 1..12
    int day() const;                                   ///< 1..31
    /// This day in the given year; 29 February becomes 1 March in a common year. Precondition: a year of Date.
    Date in_year(int year) const;
    /// The first date on or after `from` that has this place; 29 February as in `in_year`.
    Date next_on_or_after(Date from) const;
    /// `MM-DD`.
    std::string to_text() const;

    constexpr auto operator<=>(const DayOfYear&) const = default;

private:
    explicit constexpr DayOfYear(int place) : place_(place) {}
    int place_;
};

/// Days from one day of the leap years' row to another, the short way round the year: -182..183.
int short_way(DayOfYear from, DayOfYear to);

/// Number of days of a month (1..12) in a leap year.
int days_in_month_of_leap_year(int month);
/// Places before the first of a month (1..12) in a leap year: January 0, March 60.
int places_before_month(int month);

} // namespace lathhouse::calendar
