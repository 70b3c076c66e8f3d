#pragma once

#include <string>

namespace lathhouse::words {

/// What a plant's days of hardening are called in a calendar.
std::string hardening_in_calendar();

/// Under every date there.
std::string caution_in_calendar();

} // namespace lathhouse::words
