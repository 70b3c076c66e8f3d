#include "core/geodesy/geodesic.h"

#include <geodesic.h>

#include <algorithm>
#include <cmath>

namespace lathhouse::geodesy {
namespace {
const geod_geodesic& ellipsoid()
{
    static const geod_geodesic wgs84 = [] {
        geod_geodesic shape;
        geod_init(&shape, 6378137.0, 1.0 / 298.257223563);
        return shape;
    }();
    return wgs84;
}
} // namespace

Geodesic geodesic(Position from, Position to)
{
    double metres = 0.0;
    double start = 0.0;
    double end = 0.0;
    geod_inverse(&ellipsoid(), from.latitude.degrees(), from.longitude.degrees(), to.latitude.degrees(),
                 to.longitude.degrees(), &metres, &start, &end);
    return {Metres::from_metres(metres), Angle::from_degrees(start), Angle::from_degrees(end)};
}

Metres distance(Position from, Position to)
{
    double metres = 0.0;
    geod_inverse(&ellipsoid(), from.latitude.degrees(), from.longitude.degrees(), to.latitude.degrees(),
                 to.longitude.degrees(), &metres, nullptr, nullptr);
    return Metres::from_metres(metres);
}

Angle azimuth(Position from, Position to)
{
    return geodesic(from, to).azimuth;
}

std::vector<Metres> distances(Position from, std::span<const Position> to)
{
    std::vector<Metres> lengths;
    lengths.reserve(to.size());
    for (const auto& point : to) {
        lengths.push_back(distance(from, point));
    }
    return lengths;
}

Metres rough_distance(Position from, Position to)
{
    constexpr double kMeanRadius = 6371008.8; // Metres; (2a + b) / 3 of WGS 84.
    const double first = Angle::from_degrees(from.latitude.degrees()).radians();
    const double second = Angle::from_degrees(to.latitude.degrees()).radians();
    const double across = Angle::from_degrees(to.longitude.degrees() - from.longitude.degrees()).radians();
    const double half_up = std::sin(0.5 * (second - first));
    const double half_across = std::sin(0.5 * across);
    const double squared = half_up * half_up + std::cos(first) * std::cos(second) * half_across * half_across;
    return Metres::from_metres(2.0 * kMeanRadius * std::asin(std::min(1.0, std::sqrt(squared))));
}

} // namespace lathhouse::geodesy
