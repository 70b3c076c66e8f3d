#pragma once

namespace lathhouse::words {

// Exact by the international yard of 1959.
inline constexpr double kCentimetresInAnInch = 2.54;
inline constexpr double kMetresInAFoot = 0.3048;
inline constexpr double kMetresInAMile = 1609.344;
inline constexpr double kKilogramsInAPound = 0.45359237;
inline constexpr double kLitresInAQuart = 0.946352946; // Liquid: 57.75 cubic inches.

} // namespace lathhouse::words
