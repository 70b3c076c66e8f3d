#pragma once

#include "core/units/scalar.h"

namespace lathhouse {

/// Volume of water, mix or powder.
class Litres : public detail::Scalar<Litres> {
public:
    static constexpr Litres from_litres(double litres) { return Litres{litres}; }
    static constexpr Litres from_millilitres(double millilitres) { return Litres{millilitres / 1000.0}; }
    constexpr double litres() const { return raw_; }
    constexpr double millilitres() const { return raw_ * 1000.0; }
    /// US teaspoons of 4.92892 ml: 1/6 US fluid ounce (NIST Handbook 44, appendix C).
    constexpr double teaspoons() const { return raw_ / 0.00492892159375; }

private:
    friend class detail::Scalar<Litres>;
    explicit constexpr Litres(double litres) : Scalar(litres) {}
};

} // namespace lathhouse
