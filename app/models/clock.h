#pragma once

#include "core/calendar/date.h"

#include <chrono>

namespace lathhouse::models {

/// The moment of an entry, to the second.
inline calendar::Instant now()
{
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

} // namespace lathhouse::models
