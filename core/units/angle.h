#pragma once

#include "core/units/scalar.h"

#include <numbers>

namespace lathhouse {

/// A plane angle: an elevation above the horizon, an azimuth, a declination. Not reduced to any turn.
class Angle : public detail::Scalar<Angle> {
public:
    static constexpr Angle from_degrees(double degrees) { return Angle{degrees * kRadians}; }
    static constexpr Angle from_radians(double radians) { return Angle{radians}; }
    constexpr double degrees() const { return raw_ / kRadians; }
    constexpr double radians() const { return raw_; }

private:
    friend class detail::Scalar<Angle>;
    static constexpr double kRadians = std::numbers::pi / 180.0; ///< Radians in a degree.
    explicit constexpr Angle(double radians) : Scalar(radians) {}
};

} // namespace lathhouse
