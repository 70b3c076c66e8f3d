#pragma once

#include "core/base/result.h"

#include <compare>

namespace lathhouse {

/// Geographic latitude on WGS 84, degrees north, always within [-90, 90].
class Latitude {
public:
    /// Errors: OutOfRange outside [-90, 90] and for NaN.
    static Result<Latitude> from_degrees(double degrees)
    {
        if (!(degrees >= -90.0 && degrees <= 90.0)) { // Written so that NaN fails too.
            return Error{ErrorCode::OutOfRange, said("latitude must lie within -90 and 90 degrees")};
        }
        return Latitude{degrees};
    }
    /// For constants in code: a bad value does not build.
    static consteval Latitude literal(double degrees)
    {
        if (!(degrees >= -90.0 && degrees <= 90.0)) {
            throw "latitude out of range";
        }
        return Latitude{degrees};
    }
    constexpr double degrees() const { return degrees_; }
    constexpr auto operator<=>(const Latitude&) const = default;

private:
    explicit constexpr Latitude(double degrees) : degrees_(degrees) {}
    double degrees_;
};

/// Geographic longitude on WGS 84, degrees east, always within [-180, 180]. -180 and 180 are the same
/// meridian and are kept as they were written.
class Longitude {
public:
    /// Errors: OutOfRange outside [-180, 180] and for NaN.
    static Result<Longitude> from_degrees(double degrees)
    {
        if (!(degrees >= -180.0 && degrees <= 180.0)) {
            return Error{ErrorCode::OutOfRange, said("longitude must lie within -180 and 180 degrees")};
        }
        return Longitude{degrees};
    }
    static consteval Longitude literal(double degrees)
    {
        if (!(degrees >= -180.0 && degrees <= 180.0)) {
            throw "longitude out of range";
        }
        return Longitude{degrees};
    }
    constexpr double degrees() const { return degrees_; }
    constexpr auto operator<=>(const Longitude&) const = default;

private:
    explicit constexpr Longitude(double degrees) : degrees_(degrees) {}
    double degrees_;
};

/// A point on the globe.
struct Position {
    Latitude latitude;
    Longitude longitude;
    friend constexpr bool operator==(const Position&, const Position&) = default;
};

} // namespace lathhouse
