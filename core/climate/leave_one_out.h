#pragma once

#include "core/climate/place_climate.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// A station foretold by the others.
struct StationLeftOut {
    const Station* station;
    ErrorSigns signs;
    KelvinDelta low_error;  ///< Mean absolute error over the twelve mean lows.
    KelvinDelta low_bias;   ///< Answer less truth.
    KelvinDelta high_error; ///< As `low_error`, of the mean highs.
    KelvinDelta expected;   ///< What the answer says of its own `low_error`.
};

/// Error of `climate_among` at stations that it does not know.
struct LeaveOneOut {
    std::vector<StationLeftOut> stations; ///< Those with neighbours, in the order of the table.
    int count;                            ///< How many.
    KelvinDelta low_error;                ///< Mean absolute error of a month's mean low.
    KelvinDelta low_bias;                 ///< Answer less truth.
    KelvinDelta high_error;               ///< The same of a month's mean high.
    KelvinDelta expected_error;           ///< Mean of what the answers said of their own error.
};

/// Each station is foretold by the others of its own source, whose base period it shares.
/// within: only stations of that source; nullopt all. The result points into `stations`.
/// Errors: NoStation where none has a neighbour.
Result<LeaveOneOut> leave_one_out(std::span<const Station> stations, std::optional<StationSource> within);

/// One line a station, one head line: id, name, latitude, longitude, elevation_m, source, nearest_km,
/// height_off_m, relief_m, standard_error_c, low_mae_c, low_bias_c, high_mae_c, expected_error_c.
std::string leave_one_out_text(const LeaveOneOut& result);

/// How far the means of one source lie from what the stations of another foretell, over the twelve months and
/// all stations of `of` that have a station of `from` within 100 km.
struct BaseOffset {
    int count;
    KelvinDelta mean;    ///< `of` less `from`.
    KelvinDelta scatter; ///< Standard deviation over stations of the year's mean.
};
/// Errors: NoStation where fewer than ten stations are so near.
Result<BaseOffset> base_offset(std::span<const Station> stations, StationSource of, StationSource from);

} // namespace lathhouse::climate
