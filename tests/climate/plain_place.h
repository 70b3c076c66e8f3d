#pragma once

#include "core/climate/place_climate.h"

namespace lathhouse::climate {

/// A place of those figures at 20 degrees east with nothing else known of it: no stations, no rain, no trend.
inline PlaceClimate plain_place(double latitude, double elevation, const MonthlyFigures& figures)
{
    return {.position = {*Latitude::from_degrees(latitude), Longitude::literal(20.0)},
            .elevation = Metres::from_metres(elevation),
            .elevation_given = true,
            .stations = {},
            .monthly = figures,
            .low_lapse_per_kilometre = {},
            .rain = {},
            .lowest_of_season = std::nullopt,
            .signs = {1.0, Metres::from_metres(0.0), Metres::from_metres(0.0), Metres::from_metres(0.0)},
            .trend = std::nullopt,
            .expected_error = KelvinDelta::from_kelvins(1.0),
            .expected_error_days = 4.0,
            .expected_error_days_carried = 4.0,
            .warnings = {}};
}

} // namespace lathhouse::climate
