#pragma once

#include "core/calendar/date.h"

#include <chrono>

namespace lathhouse {

/// The clock's instant, to the second: when an entry is made.
inline calendar::Instant now()
{
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

} // namespace lathhouse
