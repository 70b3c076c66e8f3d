#pragma once

#include "core/home/household.h"

// Spots of the demonstration household, which its plants and its story name; of use inside core/home only.

namespace lathhouse::home {

inline constexpr SpotId kSunSill = 1;
inline constexpr SpotId kEastSill = 2;
inline constexpr SpotId kLanding = 3;
inline constexpr SpotId kRoom = 4;
inline constexpr SpotId kBalcony = 5;
inline constexpr SpotId kRail = 6;

} // namespace lathhouse::home
