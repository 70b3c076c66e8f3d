#pragma once

#include <string>

namespace lathhouse::words {

/// From today, how many days a calendar's file holds.
inline constexpr int kUsualCalendarDays = 365;
inline constexpr int kMostCalendarDays = 730;

/// What a plant's days of hardening are called in a calendar.
std::string hardening_in_calendar();

/// Under every date there.
std::string caution_in_calendar();

} // namespace lathhouse::words
