#pragma once

#include "core/climate/station_weights.h"
#include "core/units/length.h"
#include "core/units/temperature.h"

namespace lathhouse::climate {

/// What tells how well a place's neighbours can speak for it.
struct ErrorSigns {
    double standard_error_kelvins; ///< What the weights expect of themselves.
    Metres nearest;                ///< Distance of the nearest station in use.
    Metres height_off; ///< The place's height against the weighted height of its stations, absolute.
    Metres relief;     ///< Weighted standard deviation of the stations' heights.
};

/// The signs of a place; `weights` must hold at least one station with a positive share.
ErrorSigns error_signs(const StationWeights& weights, Metres elevation);

/// Mean absolute error to expect of a month's mean low.
///
/// Straight line in the signs, fitted by least squares to the errors at every second station that was left
/// out, judged on the others (docs/methods/between-stations.md). Beyond the signs seen there it goes on
/// growing; it is never under 0.3 K.
KelvinDelta expected_low_error(const ErrorSigns& signs, StationSource source);

} // namespace lathhouse::climate
