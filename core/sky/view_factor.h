#pragma once

#include "core/units/length.h"

namespace lathhouse::sky {

/// A rectangle in an upright plane, as a point before it sees it: measured from the foot of the shortest line
/// from the point to the plane.
struct SeenRectangle {
    Metres left;   ///< Negative to the left of the foot.
    Metres right;  ///< Not less than `left`.
    Metres bottom; ///< Negative below the foot.
    Metres top;    ///< Not less than `bottom`.
};

/// Share of all that falls on a small leaf, held towards the plane, that comes from the rectangle, where
/// light is the same from all sides: 0..1. Precondition: distance above 0. Source: small element parallel to
/// a rectangle, normal through its corner: Howell, A Catalog of Radiation Heat Transfer Configuration
/// Factors, B-3; BRE report BR 187; corners added and subtracted.
double view_factor_facing(const SeenRectangle& rectangle, Metres distance);

/// The same for a level leaf, upper side; what lies below the leaf does not count. A half plane that begins
/// at the leaf's height and touches it gives 1/2.
/// Source: small element perpendicular to a rectangle: Howell, catalogue B-4; BRE report BR 187.
double view_factor_level(const SeenRectangle& rectangle, Metres distance);

} // namespace lathhouse::sky
