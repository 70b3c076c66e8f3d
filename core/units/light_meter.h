#pragma once

#include "core/units/light.h"

namespace lathhouse {

/// Light at one moment, as plants use it: micromoles of photons of 400-700 nm per square metre and second
/// (PPFD).
class PhotonFlux : public detail::Scalar<PhotonFlux> {
public:
    static constexpr PhotonFlux from_micromoles(double micromoles) { return PhotonFlux{micromoles}; }
    /// Of sun and sky: 54 lux to the micromole. Under lamps the figure is another one (cool white 74).
    /// Source: Thimijan and Heins, HortScience 18 (1983) 818-822.
    static constexpr PhotonFlux from_daylight_lux(double lux) { return PhotonFlux{lux / kLuxOfDaylight}; }
    /// A foot-candle is a lumen per square foot: 10.764 lux.
    static constexpr PhotonFlux from_daylight_foot_candles(double foot_candles)
    {
        return from_daylight_lux(foot_candles * kLuxOfFootCandle);
    }
    constexpr double micromoles() const { return raw_; }
    constexpr double daylight_lux() const { return raw_ * kLuxOfDaylight; }
    constexpr double daylight_foot_candles() const { return daylight_lux() / kLuxOfFootCandle; }

private:
    friend class detail::Scalar<PhotonFlux>;
    static constexpr double kLuxOfDaylight = 54.0;
    static constexpr double kLuxOfFootCandle = 1.0 / (0.3048 * 0.3048);
    explicit constexpr PhotonFlux(double micromoles) : Scalar(micromoles) {}
};

/// The day's sum of an even light over so many hours.
constexpr DailyLight daily_light_of(PhotonFlux flux, double hours)
{
    return DailyLight::from_moles(flux.micromoles() * hours * 3600.0 * 1e-6);
}

/// The even light that gives the sum in so many hours. Precondition: hours above 0.
constexpr PhotonFlux even_light_of(DailyLight light, double hours)
{
    return PhotonFlux::from_micromoles(light.moles() * 1e6 / (hours * 3600.0));
}

/// Hours that a lamp must burn to bring `have` up to `want`; 0 where there is enough already. May exceed 24.
/// Precondition: the lamp gives light.
constexpr double lamp_hours(DailyLight have, DailyLight want, PhotonFlux lamp)
{
    return want <= have ? 0.0 : (want - have).moles() * 1e6 / (lamp.micromoles() * 3600.0);
}

} // namespace lathhouse
