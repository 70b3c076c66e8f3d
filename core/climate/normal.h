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

/// The z below which that share lies, by halving within -9..9; accuracy 1e-12. 0 < share < 1.
inline double normal_quantile(double share)
{
    double low = -9.0;
    double high = 9.0;
    for (int halving = 0; halving < 45; ++halving) {
        const double z = (low + high) / 2.0;
        (normal_below(z) < share ? low : high) = z;
    }
    return (low + high) / 2.0;
}

} // namespace lathhouse::climate
