#pragma once

#include "core/units/position.h"

namespace lathhouse::geodesy {

/// Degrees north and east.
inline Position at(double latitude, double longitude)
{
    return {Latitude::from_degrees(latitude).value(), Longitude::from_degrees(longitude).value()};
}

} // namespace lathhouse::geodesy
