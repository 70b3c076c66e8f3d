#pragma once

#include "core/climate/station.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::climate {

/// What the height of a place does to its temperatures where nothing nearer is known: kelvins a metre up.
struct Lapse {
    static constexpr double kLowPerKilometre = 5.4;
    static constexpr double kHighPerKilometre = 6.0;
};

/// A station and its share in a place's temperatures.
struct WeightedStation {
    const Station* station;
    Metres distance;
    /// Share in the temperatures, brought to the place's height by `Lapse`; all sum to 1. Some are a little
    /// below 0: a far station that only tells the slope of the land.
    double share;
    /// Share in what cannot be negative (spread, rain): shares below 0.01 left out, all sum to 1.
    double positive_share;
};

struct StationWeights {
    std::vector<WeightedStation> stations; ///< Largest share first.
    /// Standard deviation that the method itself expects of a temperature, kelvins.
    double standard_error_kelvins;
};

/// Weights of the nearest stations for a place: a linear predictor of least error ("kriging") of the
/// temperatures brought to one height, with an unknown mean, a gentle slope to the poles and a lapse that may
/// differ from the usual one. Constants fitted by leaving out each station (docs/methods/nights.md).
///
/// elevation: nullopt leaves height out of account. leave_out: a station not to be used.
/// An empty result where there are no stations.
StationWeights station_weights(std::span<const Station* const> stations, Position position,
                               std::optional<Metres> elevation, const Station* leave_out = nullptr);

} // namespace lathhouse::climate
