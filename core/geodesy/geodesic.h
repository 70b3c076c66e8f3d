#pragma once

#include "core/units/angle.h"
#include "core/units/length.h"
#include "core/units/position.h"

#include <span>
#include <vector>

namespace lathhouse::geodesy {

/// The shortest way on the WGS 84 ellipsoid from one point to another.
struct Geodesic {
    Metres length;
    Angle azimuth;         ///< At the start, from north through east, -180..180 degrees.
    Angle arrival_azimuth; ///< At the end, in the direction of travel.
};
/// Accuracy: 15 nanometres. Between the two points of a pole or of an antipode the azimuth is one of many.
/// Source: Karney, Algorithms for geodesics, J. Geodesy 87 (2013) 43-55, as PROJ has it.
Geodesic geodesic(Position from, Position to);

/// As `geodesic`, the length alone.
Metres distance(Position from, Position to);
/// As `geodesic`, the azimuth alone.
Angle azimuth(Position from, Position to);
/// Lengths from one point to many, in their order. Some 700,000 a second.
std::vector<Metres> distances(Position from, std::span<const Position> to);

/// Length on a sphere of the Earth's mean radius: within 0.6 % of `distance`, some ten times faster. For
/// finding candidates only.
Metres rough_distance(Position from, Position to);

} // namespace lathhouse::geodesy
