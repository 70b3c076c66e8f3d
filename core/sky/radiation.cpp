#include "core/sky/radiation.h"

#include "core/sky/evapotranspiration.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::sky {
namespace {

/// FAO-56 eq. 50 with any coefficient, capped by eq. 37.
DailyRadiation by_range(double coefficient, DailyRadiation extraterrestrial, Celsius low, Celsius high,
                        Metres elevation)
{
    const double range = std::max(0.0, (high - low).kelvins());
    return std::min(coefficient * std::sqrt(range) * extraterrestrial,
                    clear_sky_radiation(extraterrestrial, elevation));
}

} // namespace

Fao56Sun fao56_sun(Latitude latitude, int ordinal_of_year)
{
    const double turn = 2.0 * std::numbers::pi * ordinal_of_year / 365.0;
    const double declination = 0.409 * std::sin(turn - 1.39);
    const double phi = Angle::from_degrees(latitude.degrees()).radians();
    const double cosine = std::clamp(-std::tan(phi) * std::tan(declination), -1.0, 1.0);
    return {1.0 + 0.033 * std::cos(turn), Angle::from_radians(declination),
            Angle::from_radians(std::acos(cosine))};
}

DailyRadiation extraterrestrial_radiation(Latitude latitude, int ordinal_of_year)
{
    constexpr double kSolarConstant = 0.0820; // MJ per square metre and minute.
    const auto sun = fao56_sun(latitude, ordinal_of_year);
    const double phi = Angle::from_degrees(latitude.degrees()).radians();
    const double delta = sun.declination.radians();
    const double omega = sun.sunset_hour_angle.radians();
    const double megajoules =
        24.0 * 60.0 / std::numbers::pi * kSolarConstant * sun.inverse_relative_distance *
        (omega * std::sin(phi) * std::sin(delta) + std::cos(phi) * std::cos(delta) * std::sin(omega));
    return DailyRadiation::from_megajoules(std::max(0.0, megajoules));
}

double daylight_hours(Latitude latitude, int ordinal_of_year)
{
    return 24.0 / std::numbers::pi * fao56_sun(latitude, ordinal_of_year).sunset_hour_angle.radians();
}

DailyRadiation clear_sky_radiation(DailyRadiation extraterrestrial, Metres elevation)
{
    return (0.75 + 2e-5 * elevation.metres()) * extraterrestrial;
}

DailyRadiation radiation_from_temperature_range(DailyRadiation extraterrestrial, Celsius low, Celsius high,
                                                Setting setting, Metres elevation)
{
    return by_range(setting == Setting::Coast ? 0.19 : 0.16, extraterrestrial, low, high, elevation);
}

double range_coefficient(Celsius mean_low)
{
    return std::min(0.137 + 0.0186 * saturation_vapour_pressure_kpa(mean_low), 0.19);
}

DailyRadiation radiation_from_temperature_range(DailyRadiation extraterrestrial, Celsius low, Celsius high,
                                                Metres elevation)
{
    return by_range(range_coefficient(low), extraterrestrial, low, high, elevation);
}

DailyRadiation radiation_from_sunshine(DailyRadiation extraterrestrial, double sunshine_hours,
                                       double possible_hours)
{
    const double share = possible_hours > 0.0 ? std::clamp(sunshine_hours / possible_hours, 0.0, 1.0) : 0.0;
    return (0.25 + 0.50 * share) * extraterrestrial;
}

DailyLight daily_light(DailyRadiation radiation)
{
    return DailyLight::from_moles(2.018 * radiation.megajoules());
}

} // namespace lathhouse::sky
