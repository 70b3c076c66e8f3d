#pragma once

#include "core/growth/series.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::growth {

/// A change between two single measurements is real, at 95 %, where it exceeds this many standard errors of one
/// of them: 1.96 x sqrt(2).
/// Source: Bland and Altman, BMJ 313 (1996) 744 (from memory); ISO 5725-6 calls it the repeatability limit.
inline constexpr double kRealChange = 2.77;

/// How far measurements of one thing on one day differ.
struct Repeatability {
    double standard_error; ///< Of one measurement, on the transformed scale (sizes: 0.02 is 2 %).
    int freedom;           ///< Repeats that it rests on.
};
/// Pooled within dates. nullopt where no date was measured twice.
std::optional<Repeatability> repeatability_of(SeriesKind kind, std::span<const Measured> measured);

/// Whether two single measurements differ by more than chance.
bool is_real_change(SeriesKind kind, double from, double to, double standard_error);

} // namespace lathhouse::growth
