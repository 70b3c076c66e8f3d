#pragma once

#include "core/calendar/date.h"

#include <chrono>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace lathhouse::exchange {

/// An event of whole days.
struct CalendarEvent {
    /// The same for the same matter whenever it is exported, so that a second export takes the place of the first.
    std::string uid;
    calendar::Date from;
    calendar::Date to; ///< Last day, included.
    std::string summary;
    std::string description; ///< May have line ends.
    std::string category;    ///< Empty where there is none.
};

struct CalendarHead {
    std::string name;
    calendar::Instant made; ///< Stands for when every event was last changed.
    /// Hours before midnight of a day at which an alarm sounds, one a day: at the first event that begins on it, and only
    /// where that is later than the hour of `made`'s day. None without.
    std::optional<int> alarm_hours_before;
    std::chrono::seconds hour = {}; ///< So much of the day that `made` begins is over where the calendar is read.
};

/// A calendar file of all-day events: UTF-8, lines ended by CR LF and folded at 75 octets, texts escaped.
/// Bytes that are no UTF-8 become the replacement character, other control characters than the line end are left
/// out. Source: RFC 5545, sections 3.1, 3.3.11, 3.4, 3.6.1, 3.6.6; the calendar's name by RFC 7986, section 5.1.
std::string icalendar(const CalendarHead& head, std::span<const CalendarEvent> events);

/// A UID made of a household's and a matter's name. Deterministic; two matters share one with a chance of 1 in
/// 2^64 a pair (64-bit FNV-1a; RFC 5545 section 3.8.4.7 asks for global uniqueness in practice).
std::string calendar_uid(std::string_view household, std::string_view matter);

} // namespace lathhouse::exchange
