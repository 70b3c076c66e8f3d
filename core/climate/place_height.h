#pragma once

#include "core/climate/place_climate.h"
#include "core/geodesy/nearest_towns.h"

#include <optional>
#include <span>

namespace lathhouse::climate {

/// How high a place is taken to lie where nobody said it.
struct HeightTaken {
    Metres height;
    Metres error;   ///< Mean absolute error to expect of it.
    Metres nearest; ///< Distance of the nearest town that tells it.
};

/// Beyond this the weighted height of a place's stations is as good.
inline constexpr double kHeightKilometres = 20.0;

/// Mean height of the three nearest towns that have one, weighted by 1 / (distance + 2 km)^2; nullopt where
/// none lies within kHeightKilometres. The error grows with the distance of the nearest, 10 m and 4.5 m a
/// kilometre, as it does at weather stations (docs/methods/between-stations.md).
std::optional<HeightTaken> height_near(std::span<const geodesy::Town> towns, Position position);

/// The climate of a place whose height nobody said: at `height_near`, with the height's own error in the
/// expected errors and a warning that says where it is from. Where there is none, as climate_among without a
/// height.
/// leave_out: a station not to be used, for measuring the error at it.
/// Errors: as climate_among.
Result<PlaceClimate> climate_at_height_near(std::span<const Station* const> stations,
                                            std::span<const geodesy::Town> towns, Position position,
                                            const Station* leave_out = nullptr);
/// The same among all the stations that the program knows.
Result<PlaceClimate> climate_at_height_near(const StationTable& table, std::span<const geodesy::Town> towns,
                                            Position position);

} // namespace lathhouse::climate
