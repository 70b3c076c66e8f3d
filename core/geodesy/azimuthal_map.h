#pragma once

#include "core/base/result.h"
#include "core/units/length.h"
#include "core/units/position.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace lathhouse::geodesy {

/// A point of a map, from its middle.
struct MapPoint {
    Metres east;
    Metres north;
    Metres from_middle() const;
};

/// A map round one place on which distances and directions from that place are true: the azimuthal
/// equidistant projection of the WGS 84 ellipsoid.
/// Accuracy: radius equals the geodesic distance to a millimetre.
/// Source: PROJ, `aeqd`; J. P. Snyder, Map Projections: A Working Manual, USGS Professional Paper 1395
/// (1987), chapter 25 (from memory).
class AzimuthalMap {
public:
    /// Errors: Unavailable where PROJ cannot be started.
    static Result<AzimuthalMap> around(Position middle);

    Position middle() const { return middle_; }
    /// nullopt for the one place that has no point, opposite the middle.
    std::optional<MapPoint> point(Position position) const;
    /// The parts of `lines` within `radius` of the middle, cut at that circle. Lines cross the 180th
    /// meridian unharmed. Precondition: the radius is above 0 and at most 15,000 km.
    std::vector<std::vector<MapPoint>> lines_within(std::span<const std::vector<Position>> lines,
                                                    Metres radius) const;

private:
    struct Projection; ///< What PROJ keeps.
    struct Destroy {
        void operator()(Projection* projection) const;
    };
    AzimuthalMap(Position middle, std::unique_ptr<Projection, Destroy> projection);

    Position middle_;
    std::unique_ptr<Projection, Destroy> projection_;
};

/// Round distances for rings of a map of that radius: three to five, the largest within the radius.
std::vector<Metres> ring_radii(Metres radius, double metres_per_unit);

} // namespace lathhouse::geodesy
