#pragma once

#include "core/base/result.h"

#include <boost/date_time/gregorian/gregorian.hpp>

#include <chrono>
#include <string>
#include <string_view>

namespace lathhouse::calendar {

/// A day of the proleptic Gregorian calendar, 1400 to 9999. Never one of Boost's special values in our code.
using Date = boost::gregorian::date;
/// A number of days.
using Days = boost::gregorian::days;
/// A moment, UTC, whole seconds, leap seconds not counted.
using Instant = std::chrono::sys_seconds;

/// Errors: OutOfRange for a day that the calendar does not have (30 February) or a year outside 1901..2199.
Result<Date> make_date(int year, int month, int day);
/// Reads `YYYY-MM-DD` exactly. Errors: Malformed, OutOfRange.
Result<Date> parse_date(std::string_view text);
/// `YYYY-MM-DD`.
std::string to_text(Date date);
/// `YYYY-MM-DDThh:mm:ssZ`.
std::string to_text(Instant instant);
/// Midnight UTC at the start of the date.
Instant start_of_day_utc(Date date);
/// The UTC date of an instant.
Date utc_date(Instant instant);
/// Whole days from `from` to `to`, negative where `to` is earlier.
int days_between(Date from, Date to);
/// Number of the day within its own year, 1 January = 1, 31 December = 365 or 366 (the J of FAO-56).
int ordinal_of_year(Date date);

} // namespace lathhouse::calendar
