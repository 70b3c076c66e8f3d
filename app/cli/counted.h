#pragma once

#include <cstddef>
#include <string>

namespace lathhouse::cli {

/// "1 photo", "3 photos".
inline std::string counted(std::size_t count, const char* one, const char* many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

} // namespace lathhouse::cli
