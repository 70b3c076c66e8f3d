#pragma once

#include "core/units/probability.h"

#include <array>
#include <cstddef>

namespace lathhouse::models {

/// The risks that the slider of the page Year stops at: one in so many seasons.
inline constexpr std::array kRiskStops{50, 20, 10, 5, 3};

inline Probability risk_at(int stop)
{
    return Probability::clamped(1.0 / kRiskStops[static_cast<std::size_t>(stop)]);
}

} // namespace lathhouse::models
