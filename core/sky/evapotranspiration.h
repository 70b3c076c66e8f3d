#pragma once

#include "core/units/length.h"
#include "core/units/light.h"
#include "core/units/temperature.h"

#include <optional>

namespace lathhouse::sky {

/// Water that a short, well watered grass gives off in a day, from temperatures alone.
/// Accuracy: the book advises to check it against records; it errs high in humid and windless places.
/// Source: FAO-56 eq. 52 (Hargreaves), radiation turned to water by 0.408 mm per MJ. Never below 0.
Millimetres hargreaves_evapotranspiration(Celsius low, Celsius high, DailyRadiation extraterrestrial);

/// Weather of a day or the mean day of a month, for the full formula.
struct EvaporationWeather {
    Celsius low;
    Celsius high;
    /// Actual vapour pressure; without it the dew point is taken as the low (FAO-56 eq. 48).
    std::optional<double> vapour_pressure_kpa;
    /// Wind at 2 m; without it 2 m/s, the mean of 2,000 stations that the book gives.
    std::optional<double> wind_metres_per_second;
    DailyRadiation radiation; ///< On the ground, R_s.
    DailyRadiation extraterrestrial;
    Metres elevation;
    /// Heat that goes into the ground, G; 0 for a day, small for a month.
    DailyRadiation into_ground = DailyRadiation::from_megajoules(0.0);
};
/// Water that the book's reference grass (0.12 m, albedo 0.23) gives off in a day.
/// Source: FAO-56 eq. 6 (Penman-Monteith) with eqs. 7, 8, 11-13, 37-40. Never below 0.
Millimetres reference_evapotranspiration(const EvaporationWeather& weather);

/// Pressure of water vapour over water at that temperature, kPa. Source: FAO-56 eq. 11.
double saturation_vapour_pressure_kpa(Celsius temperature);
/// Actual vapour pressure from the mean relative humidity (0..1), kPa. Source: FAO-56 eq. 19.
double vapour_pressure_from_mean_humidity_kpa(Celsius low, Celsius high, double humidity);
/// Wind at 2 m from wind at another height above grass. Source: FAO-56 eq. 47.
double wind_at_two_metres(double wind_metres_per_second, Metres height);

} // namespace lathhouse::sky
