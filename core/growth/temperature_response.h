#pragma once

#include "core/plants/plant_kind.h"
#include "core/units/light.h"
#include "core/units/temperature.h"

namespace lathhouse::growth {

/// The three temperatures between which a plant grows. Precondition: base < optimum < maximum.
struct CardinalTemperatures {
    Celsius base;    ///< At and below it growth stands still.
    Celsius optimum; ///< Fastest there.
    Celsius maximum; ///< At and above it growth stands still.
};

/// Growth at a steady temperature as a share of that at the optimum, 0..1:
/// r = (Tmax - T) / (Tmax - Topt) x ((T - Tb) / (Topt - Tb)) ^ ((Topt - Tb) / (Tmax - Topt)).
///
/// Source: Yan and Hunt, Annals of Botany 84 (1999) 607-614, the equation with only the cardinal temperatures
/// (there with a base of 0 C), with the base written out as it is in use since.
double temperature_response(Celsius temperature, const CardinalTemperatures& cardinal);

/// The same over a day: the mean of 24 hours whose temperature runs as a cosine between low and high. A high
/// below the low counts as the low. The curve bends, so this is not the response to the mean.
double day_response(Celsius low, Celsius high, const CardinalTemperatures& cardinal);

/// Of a kind: the base is its safe night, but at least 4 C (plants of cool climates do not grow below) and at
/// most 3 K under its comfort; the optimum lies two thirds up its comfort; the maximum is the heat limit, at
/// least 2 K above its comfort. Common practice, no source: the table's figures are the trade's, not growth
/// trials.
CardinalTemperatures cardinal_temperatures(const plants::PlantKind& kind);

/// Growth by light as a share of what it would be in endless light, 0..1: 1 - exp(-light / good).
///
/// good: the light in which the kind thrives; there the share is 0.63. Common practice, no source.
double light_response(DailyLight light, DailyLight good);

} // namespace lathhouse::growth
