#include "core/sky/view_factor.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::sky {
namespace {

/// Rectangle from the foot of the normal to (x, z) in units of the distance; odd in both.
double facing_corner(double x, double z)
{
    const double across = std::sqrt(1.0 + x * x);
    const double along = std::sqrt(1.0 + z * z);
    return (x / across * std::atan(z / across) + z / along * std::atan(x / along)) / (2.0 * std::numbers::pi);
}

/// Strip from the leaf's own height up to z >= 0 and sideways to x; odd in x.
double level_corner(double x, double z)
{
    const double slant = std::sqrt(1.0 + z * z);
    return (std::atan(x) - std::atan(x / slant) / slant) / (2.0 * std::numbers::pi);
}

} // namespace

double view_factor_facing(const SeenRectangle& rectangle, Metres distance)
{
    const double left = rectangle.left / distance;
    const double right = rectangle.right / distance;
    const double bottom = rectangle.bottom / distance;
    const double top = rectangle.top / distance;
    return std::max(0.0, facing_corner(right, top) - facing_corner(left, top) - facing_corner(right, bottom) +
                             facing_corner(left, bottom));
}

double view_factor_level(const SeenRectangle& rectangle, Metres distance)
{
    const double left = rectangle.left / distance;
    const double right = rectangle.right / distance;
    const double bottom = std::max(0.0, rectangle.bottom / distance);
    const double top = std::max(0.0, rectangle.top / distance);
    return std::max(0.0, level_corner(right, top) - level_corner(left, top) - level_corner(right, bottom) +
                             level_corner(left, bottom));
}

} // namespace lathhouse::sky
