#pragma once

#include <chrono>
#include <string>

namespace lathhouse::words {

/// "Sat 30 May 2026, 14:05", by the clock where it was taken.
std::string photo_time(std::chrono::local_seconds taken);

} // namespace lathhouse::words
