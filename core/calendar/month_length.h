#pragma once

#include <array>
#include <chrono>

namespace lathhouse::calendar {

/// Number of days of a month (1..12) of a year of the Gregorian calendar.
constexpr int days_in_month(int year, int month)
{
    using namespace std::chrono;
    return static_cast<int>(static_cast<unsigned>(
        year_month_day_last{std::chrono::year{year} / std::chrono::month{static_cast<unsigned>(month)} / last}
            .day()));
}

/// Months' lengths in the mean of the Gregorian calendar, January first.
inline constexpr std::array<double, 12> kMeanDaysOfMonths = {31, 28.2425, 31, 30, 31, 30,
                                                             31, 31,      30, 31, 30, 31};

} // namespace lathhouse::calendar
