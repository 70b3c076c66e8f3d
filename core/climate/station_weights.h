#pragma once

#include "core/climate/station.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::climate {

/// What the height of a place does to its temperatures where nothing nearer is known: kelvins a metre up.
struct Lapse {
    static constexpr double kLowPerKilometre = 5.4;
    static constexpr double kHighPerKilometre = 6.5;
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
    /// Share in the local lapse: the sum of shares times temperatures brought to one height is what the
    /// neighbours add to the usual lapse, kelvins a kilometre up.
    double lapse_share;
};

struct StationWeights {
    std::vector<WeightedStation> stations; ///< Largest share first.
    /// Standard deviation that the method itself expects of a temperature, kelvins.
    double standard_error_kelvins;
};

/// How alike the temperatures of two places are; see docs/methods/between-stations.md. Fitted by the
/// leave-one-out error of every second station of the table, judged on the others.
struct Covariance {
    std::size_t most_stations;
    double choice_kilometres_up;  ///< So many on the flat is a kilometre of height in the choice.
    double wide_range_kilometres; ///< Of the smooth part, a Matern function of order 3/2.
    double wide_kelvins;
    double near_range_kilometres; ///< Of the part that neighbours share, exponential.
    double near_kelvins;
    double own_kelvins;                 ///< Of each station alone: its hollow, its slope, its screen.
    double lapse_per_kilometre;         ///< How far the lapse may differ from the usual one.
    double poleward_per_degree;         ///< How steeply it may cool to the poles.
    double kilometres_per_kilometre_up; ///< A kilometre of height parts neighbours like this on the flat.
    double usual_departure; ///< A station off its neighbours by more standard deviations counts less.
};

/// As fitted to stations of that source.
const Covariance& covariance_of(StationSource source);

/// Weights of the nearest stations for a place: a linear predictor of least error ("kriging") of the
/// temperatures brought to one height, with an unknown mean, a gentle slope to the poles and a lapse that may
/// differ from the usual one. A station whose mean low its own neighbours do not foretell (a hollow, a roof)
/// gets a larger variance of its own, in proportion to its departure, as in a robust fit of Huber's kind.
///
/// fitted: nullopt for that of the first station's source.
/// elevation: nullopt leaves height out of account. leave_out: a station not to be used; it does not speak
/// in the departures of others either. An empty result where there are no stations.
StationWeights station_weights(std::span<const Station* const> stations, Position position,
                               std::optional<Metres> elevation, const Station* leave_out = nullptr,
                               std::optional<Covariance> fitted = {});

} // namespace lathhouse::climate
