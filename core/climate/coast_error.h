#pragma once

#include "core/climate/place_climate.h"
#include "core/geodesy/coast_lines.h"

namespace lathhouse::climate {

/// How a place lies to the sea against its stations.
struct CoastSigns {
    Metres place;    ///< From the place to the coast.
    Metres stations; ///< The same of its stations, their weighted geometric mean.
    /// |ln((place + 5 km) / (stations + 5 km))|, at most 2.5: about how many times nearer or farther they
    /// lie. The coast lines are drawn to some kilometres.
    double apart;
};

/// Stations under a twentieth of the weight are left out, and those within a tenth of the place's way to the
/// sea taken to lie as the place does: each distance takes about a millisecond.
/// Errors: as CoastLines::distance_to_coast.
Result<CoastSigns> coast_signs(const PlaceClimate& place, const geodesy::CoastLines& coast);

/// Mean absolute error to expect of a month's mean low where it is known how the place and its stations lie
/// to the sea: a share of the error without the coast, more with the square of how far apart they lie (up to
/// 1.5), and more some kilometres behind the shore, with c / (c + 3 km) exp(-c / 30 km) of the distance c.
/// Fitted by weighted least squares to the stations left out; the form was judged on halves not fitted
/// (docs/methods/between-stations.md).
KelvinDelta error_with_coast(KelvinDelta without, const CoastSigns& signs, StationSource source);

/// Puts the coast into the place's expected errors; says it in a warning where the place lies much nearer to
/// the sea than its stations, or much farther. Not for a place that the grower's own record answers.
Result<void> count_coast_in(PlaceClimate& place, const geodesy::CoastLines& coast);

} // namespace lathhouse::climate
