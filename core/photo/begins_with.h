#pragma once

#include "core/photo/exif.h"

#include <algorithm>
#include <cstdint>
#include <string_view>

namespace lathhouse::photo {

/// Whether bytes of a file begin with those letters.
inline bool begins_with(ByteView bytes, std::string_view text)
{
    return bytes.size() >= text.size() &&
           std::equal(text.begin(), text.end(), bytes.begin(),
                      [](char letter, std::uint8_t byte) { return static_cast<std::uint8_t>(letter) == byte; });
}

} // namespace lathhouse::photo
