#pragma once

#include "core/base/result.h"

#include <algorithm>
#include <compare>

namespace lathhouse {

/// A chance or a share, always within 0 and 1.
class Probability {
public:
    /// Errors: OutOfRange outside [0, 1] and for NaN.
    static Result<Probability> from_fraction(double fraction)
    {
        if (!(fraction >= 0.0 && fraction <= 1.0)) {
            return Error{ErrorCode::OutOfRange, said("a chance must lie within 0 and 1")};
        }
        return Probability{fraction};
    }
    /// Errors: OutOfRange outside [0, 100] and for NaN.
    static Result<Probability> from_percent(double percent)
    {
        if (!(percent >= 0.0 && percent <= 100.0)) {
            return Error{ErrorCode::OutOfRange, said("a percentage must lie within 0 and 100")};
        }
        return Probability{percent / 100.0};
    }
    /// For results of arithmetic that may leave the range by rounding. Precondition: not NaN.
    static constexpr Probability clamped(double fraction)
    {
        return Probability{std::clamp(fraction, 0.0, 1.0)};
    }
    static consteval Probability literal(double fraction)
    {
        if (!(fraction >= 0.0 && fraction <= 1.0)) {
            throw "chance out of range";
        }
        return Probability{fraction};
    }
    constexpr double fraction() const { return fraction_; }
    constexpr double percent() const { return fraction_ * 100.0; }
    constexpr Probability complement() const { return Probability{1.0 - fraction_}; }
    constexpr auto operator<=>(const Probability&) const = default;

private:
    explicit constexpr Probability(double fraction) : fraction_(fraction) {}
    double fraction_;
};

} // namespace lathhouse
