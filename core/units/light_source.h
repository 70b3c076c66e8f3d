#pragma once

#include "core/units/light_meter.h"

#include <cstdint>

namespace lathhouse {

/// What a meter of lux stands in; the same lux are more photons in one light than in another.
enum class LightSource : std::uint8_t { Daylight, WhiteLed, FluorescentTube, HighPressureSodium };

/// Lux to a micromole of photons of 400-700 nm per square metre and second. Daylight 54, cool white tube 74, high-pressure sodium 82:
/// Thimijan and Heins, HortScience 18 (1983) 818-822. White diodes came later and differ by their colour: 67 is common practice
/// (no source), right to about 15 %.
constexpr double lux_per_micromole(LightSource source)
{
    switch (source) {
    case LightSource::WhiteLed:
        return 67.0;
    case LightSource::FluorescentTube:
        return 74.0;
    case LightSource::HighPressureSodium:
        return 82.0;
    case LightSource::Daylight:
        break;
    }
    return PhotonFlux::from_micromoles(1.0).daylight_lux();
}

constexpr PhotonFlux flux_of_lux(double lux, LightSource source)
{
    return PhotonFlux::from_micromoles(lux / lux_per_micromole(source));
}

constexpr PhotonFlux flux_of_foot_candles(double foot_candles, LightSource source)
{
    return flux_of_lux(PhotonFlux::from_daylight_foot_candles(foot_candles).daylight_lux(), source);
}

/// What is asked of light and lamps lies above 0 and up to these.
constexpr double kMostLampMicromoles = 3000.0;
constexpr double kMostDailyMoles = 80.0;
/// A plant that gets no dark stops flowering or suffers: common practice, no source.
constexpr double kLongestLampDay = 16.0;

} // namespace lathhouse
