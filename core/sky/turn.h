#pragma once

#include <numbers>

// Of use inside core/sky only.

namespace lathhouse::sky {

inline constexpr double kPi = std::numbers::pi;
inline constexpr double kTurn = 2.0 * kPi; ///< A full turn, radians.

} // namespace lathhouse::sky
