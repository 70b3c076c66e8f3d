#pragma once

#include "core/base/result.h"
#include "core/units/position.h"

#include <string_view>

namespace lathhouse::geodesy {

/// A place as people write it.
///
/// - Degrees with a sign, latitude first: `48.2,16.4`, `-33.87 151.21`.
/// - With N, S, E, W before or after, in either order: `N48.2 E16.4`, `16.4E 48.2N`.
/// - Degrees, minutes, seconds with or without their marks: `48°12'30"N, 16°22'E`, `48 12 30 N 16 22 0 E`,
///   `48 12.5 N 16 22 E`; the last part may have decimals. Without letters a comma parts the two.
/// - `EPSG:code:easting,northing` in the system's own unit, easting (or longitude) always first.
/// Decimals have a point, since the comma parts latitude from longitude.
/// Errors: Malformed for another form; OutOfRange for a latitude beyond 90, a longitude beyond 180, minutes
/// or seconds from 60, or a point outside the area its EPSG system is made for (a degree is let pass);
/// NotFound for an unknown EPSG code; Unavailable without the system's list of EPSG codes. Source: EPSG
/// systems by PROJ and its database.
Result<Position> read_position(std::string_view text);

} // namespace lathhouse::geodesy
