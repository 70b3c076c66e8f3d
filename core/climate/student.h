#pragma once

#include <cmath>
#include <numbers>

namespace lathhouse::climate {

/// Degrees of freedom of the heavy tail that forecast errors have here.
inline constexpr double kTailFreedom = 5.0;
/// Scale of Student's t with five degrees of freedom whose standard deviation is 1: sqrt((5 - 2) / 5).
inline constexpr double kUnitStudentScale = 0.77459666924148338;

/// Share of Student's t distribution with five degrees of freedom below t.
/// Source: Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 26.7.3 (exact for odd degrees).
inline double student5_below(double t)
{
    const double angle = std::atan(t / std::sqrt(kTailFreedom));
    const double cosine = std::cos(angle);
    const double sum = angle + std::sin(angle) * cosine * (1.0 + 2.0 / 3.0 * cosine * cosine);
    return 0.5 + sum * std::numbers::inv_pi;
}

} // namespace lathhouse::climate
