#pragma once

#include "core/base/result.h"
#include "core/units/position.h"

namespace lathhouse::geodesy {

/// The place of a pair of coordinates in a system of the EPSG list; easting (or longitude) always first.
/// Errors: as for the EPSG form of read_position.
Result<Position> position_in_epsg(int code, double easting, double northing);

} // namespace lathhouse::geodesy
