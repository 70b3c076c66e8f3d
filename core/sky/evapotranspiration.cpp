#include "core/sky/evapotranspiration.h"

#include "core/sky/radiation.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::sky {
namespace {
constexpr double kMillimetresInMegajoule = 0.408;
} // namespace

Millimetres hargreaves_evapotranspiration(Celsius low, Celsius high, DailyRadiation extraterrestrial)
{
    const double mean = 0.5 * (low.degrees() + high.degrees());
    const double range = std::max(0.0, (high - low).kelvins());
    return Millimetres::from_millimetres(
        std::max(0.0, 0.0023 * (mean + 17.8) * std::sqrt(range) * kMillimetresInMegajoule *
                          extraterrestrial.megajoules()));
}

double saturation_vapour_pressure_kpa(Celsius temperature)
{
    return 0.6108 * std::exp(17.27 * temperature.degrees() / (temperature.degrees() + 237.3));
}

double vapour_pressure_from_mean_humidity_kpa(Celsius low, Celsius high, double humidity)
{
    return humidity * 0.5 * (saturation_vapour_pressure_kpa(low) + saturation_vapour_pressure_kpa(high));
}

double wind_at_two_metres(double wind_metres_per_second, Metres height)
{
    return wind_metres_per_second * 4.87 / std::log(67.8 * height.metres() - 5.42);
}

Millimetres reference_evapotranspiration(const EvaporationWeather& weather)
{
    const auto mean = Celsius::from_degrees(0.5 * (weather.low.degrees() + weather.high.degrees()));
    const double pressure =
        101.3 * std::pow((293.0 - 0.0065 * weather.elevation.metres()) / 293.0, 5.26); // eq. 7
    const double psychrometric = 0.665e-3 * pressure;                                  // eq. 8
    const double saturation = 0.5 * (saturation_vapour_pressure_kpa(weather.low) +
                                     saturation_vapour_pressure_kpa(weather.high)); // eq. 12
    const double actual = std::min(
        saturation, weather.vapour_pressure_kpa.value_or(saturation_vapour_pressure_kpa(weather.low)));
    const double slope =
        4098.0 * saturation_vapour_pressure_kpa(mean) / std::pow(mean.degrees() + 237.3, 2.0); // eq. 13
    const double wind = weather.wind_metres_per_second.value_or(2.0);

    const double shortwave = (1.0 - 0.23) * weather.radiation.megajoules(); // eq. 38
    const double clear = clear_sky_radiation(weather.extraterrestrial, weather.elevation).megajoules();
    // In the polar night there is no ratio to take; the sky counts as half clouded.
    const double clearness = clear > 0.0 ? std::min(1.0, weather.radiation.megajoules() / clear) : 0.5;
    constexpr double kStefanBoltzmann = 4.903e-9;
    const auto fourth = [](Celsius temperature) { return std::pow(temperature.degrees() + 273.16, 4.0); };
    const double longwave = kStefanBoltzmann * 0.5 * (fourth(weather.low) + fourth(weather.high)) *
                            (0.34 - 0.14 * std::sqrt(actual)) * (1.35 * clearness - 0.35); // eq. 39
    const double net = shortwave - longwave;                                               // eq. 40
    const double millimetres =
        (kMillimetresInMegajoule * slope * (net - weather.into_ground.megajoules()) +
         psychrometric * 900.0 / (mean.degrees() + 273.0) * wind * (saturation - actual)) /
        (slope + psychrometric * (1.0 + 0.34 * wind)); // eq. 6
    return Millimetres::from_millimetres(std::max(0.0, millimetres));
}

} // namespace lathhouse::sky
