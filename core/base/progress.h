#pragma once

#include <cstdint>
#include <functional>

namespace lathhouse {

/// Told how far long work has come, in the work's own unit; answers whether to go on. Work that is told to stop
/// leaves nothing half done and gives an error that says so. May be empty.
enum class GoOn { Yes, No };
using Progress = std::function<GoOn(std::uint64_t done, std::uint64_t whole)>;

/// Asks an empty one too.
inline bool goes_on(const Progress& progress, std::uint64_t done, std::uint64_t whole)
{
    return !progress || progress(done, whole) == GoOn::Yes;
}

} // namespace lathhouse
