#pragma once

#include <cmath>
#include <numbers>

namespace lathhouse::climate {

/// Share of a standard normal distribution below z.
inline double normal_below(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

/// Density of the standard normal distribution.
inline double normal_density(double z)
{
    return std::exp(-0.5 * z * z) * 0.5 * std::numbers::inv_sqrtpi * std::numbers::sqrt2;
}

} // namespace lathhouse::climate
