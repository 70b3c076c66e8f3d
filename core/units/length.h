#pragma once

#include "core/units/scalar.h"

namespace lathhouse {

/// Height or distance.
class Metres : public detail::Scalar<Metres> {
public:
    static constexpr Metres from_metres(double metres) { return Metres{metres}; }
    static constexpr Metres from_kilometres(double kilometres) { return Metres{kilometres * 1000.0}; }
    constexpr double metres() const { return raw_; }
    constexpr double kilometres() const { return raw_ / 1000.0; }
    constexpr double feet() const { return raw_ / 0.3048; }    ///< International feet.
    constexpr double miles() const { return raw_ / 1609.344; } ///< International miles.

private:
    friend class detail::Scalar<Metres>;
    explicit constexpr Metres(double metres) : Scalar(metres) {}
};

/// Depth of rain or of evaporated water.
class Millimetres : public detail::Scalar<Millimetres> {
public:
    static constexpr Millimetres from_millimetres(double millimetres) { return Millimetres{millimetres}; }
    constexpr double millimetres() const { return raw_; }
    constexpr double inches() const { return raw_ / 25.4; }

private:
    friend class detail::Scalar<Millimetres>;
    explicit constexpr Millimetres(double millimetres) : Scalar(millimetres) {}
};

} // namespace lathhouse
