#pragma once

#include "core/units/scalar.h"

#include <compare>

namespace lathhouse {

/// Difference of two temperatures, or a spread of temperatures (standard deviation).
class KelvinDelta : public detail::Scalar<KelvinDelta> {
public:
    static constexpr KelvinDelta from_kelvins(double kelvins) { return KelvinDelta{kelvins}; }
    static constexpr KelvinDelta from_fahrenheit_degrees(double degrees)
    {
        return KelvinDelta{degrees / 1.8};
    }
    constexpr double kelvins() const { return raw_; }
    constexpr double fahrenheit_degrees() const { return raw_ * 1.8; }

private:
    friend class detail::Scalar<KelvinDelta>;
    explicit constexpr KelvinDelta(double kelvins) : Scalar(kelvins) {}
};

/// A temperature. Two temperatures differ by a KelvinDelta and cannot be added.
class Celsius {
public:
    static constexpr Celsius from_degrees(double degrees) { return Celsius{degrees}; }
    static constexpr Celsius from_fahrenheit(double degrees) { return Celsius{(degrees - 32.0) / 1.8}; }
    constexpr double degrees() const { return degrees_; }
    constexpr double fahrenheit() const { return degrees_ * 1.8 + 32.0; }

    constexpr auto operator<=>(const Celsius&) const = default;
    friend constexpr KelvinDelta operator-(Celsius a, Celsius b)
    {
        return KelvinDelta::from_kelvins(a.degrees_ - b.degrees_);
    }
    friend constexpr Celsius operator+(Celsius a, KelvinDelta b) { return Celsius{a.degrees_ + b.kelvins()}; }
    friend constexpr Celsius operator-(Celsius a, KelvinDelta b) { return Celsius{a.degrees_ - b.kelvins()}; }

private:
    explicit constexpr Celsius(double degrees) : degrees_(degrees) {}
    double degrees_;
};

} // namespace lathhouse
