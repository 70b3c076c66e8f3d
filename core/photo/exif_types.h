#pragma once

namespace lathhouse::photo {

// What a value of an EXIF directory is written as. Source: Exif 2.32, section 4.6.2.
inline constexpr unsigned kAscii = 2;
inline constexpr unsigned kShort = 3;
inline constexpr unsigned kLong = 4;
inline constexpr unsigned kRational = 5;

} // namespace lathhouse::photo
