#pragma once

#include <compare>

namespace lathhouse::detail {

/// Base of quantities that are a number with a unit and may be added and scaled: `Derived` gives the doors.
template <class Derived>
class Scalar {
public:
    friend constexpr Derived operator+(Derived a, Derived b) { return made(a.raw_ + b.raw_); }
    friend constexpr Derived operator-(Derived a, Derived b) { return made(a.raw_ - b.raw_); }
    friend constexpr Derived operator-(Derived a) { return made(-a.raw_); }
    friend constexpr Derived operator*(Derived a, double factor) { return made(a.raw_ * factor); }
    friend constexpr Derived operator*(double factor, Derived a) { return made(a.raw_ * factor); }
    friend constexpr Derived operator/(Derived a, double divisor) { return made(a.raw_ / divisor); }
    friend constexpr double operator/(Derived a, Derived b) { return a.raw_ / b.raw_; }
    friend constexpr auto operator<=>(const Scalar& a, const Scalar& b) = default;

protected:
    explicit constexpr Scalar(double raw) : raw_(raw) {}
    double raw_;

private:
    /// The doors are the derived class's; it befriends this one.
    static constexpr Derived made(double raw) { return Derived{raw}; }
};

} // namespace lathhouse::detail
