#pragma once

#include "core/climate/place_climate.h"

#include <optional>
#include <span>

namespace lathhouse::climate {

/// Error of `climate_among` at stations that it does not know.
struct LeaveOneOut {
    int count;                  ///< Stations left out, one after another.
    KelvinDelta low_error;      ///< Mean absolute error of a month's mean low.
    KelvinDelta low_bias;       ///< Answer less truth.
    KelvinDelta high_error;     ///< The same of a month's mean high.
    KelvinDelta expected_error; ///< Mean of what the answers said of their own error.
};

/// within: leave out and use only stations of that source; nullopt all.
/// Errors: NoStation where none has a neighbour.
Result<LeaveOneOut> leave_one_out(std::span<const Station> stations, std::optional<StationSource> within);

} // namespace lathhouse::climate
