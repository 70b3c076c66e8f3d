#include "core/sky/mean_day.h"

#include "core/sky/radiation.h"
#include "core/sky/turn.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::sky {
namespace {

/// Below this sine of the elevation (about 1 degree) the air lets no beam through that counts, and dividing
/// by it would make one up.
constexpr double kLowestSine = 0.02;

} // namespace

double diffuse_share(double clearness)
{
    return std::clamp(1.0 - 1.13 * clearness, 0.15, 1.0);
}

Direction level_direction(Angle azimuth)
{
    return {std::sin(azimuth.radians()), std::cos(azimuth.radians()), 0.0};
}

MeanDay::MeanDay(Latitude latitude, int ordinal_of_year, DailyRadiation global) : global_(global)
{
    const auto sun = fao56_sun(latitude, ordinal_of_year);
    const double sunset = sun.sunset_hour_angle.radians();
    const double above = extraterrestrial_radiation(latitude, ordinal_of_year).megajoules();
    if (!(sunset > 0.0) || !(above > 0.0)) {
        global_ = DailyRadiation::from_megajoules(0.0);
        return;
    }
    const double share = diffuse_share(global.megajoules() / above);
    diffuse_ = share * global;
    const double step = 2.0 * sunset / static_cast<double>(kSteps);
    hours_of_step_ = step * 12.0 / kPi;

    // Where the Sun does not set, r_t has no ground to stand on: the light follows the Sun's height.
    const bool sets = sunset < kPi;
    const double a = sets ? 0.409 + 0.5016 * std::sin(sunset - kPi / 3.0) : 1.0;
    const double b = sets ? 0.6609 - 0.4767 * std::sin(sunset - kPi / 3.0) : 0.0;
    std::array<double, kSteps> total{};
    std::array<double, kSteps> sky{};
    double total_sum = 0.0;
    double sky_sum = 0.0;
    const double phi = Angle::from_degrees(latitude.degrees()).radians();
    const double delta = sun.declination.radians();
    for (std::size_t i = 0; i < kSteps; ++i) {
        const double hour_angle = (static_cast<double>(i) + 0.5) * step - sunset;
        const double up =
            std::sin(phi) * std::sin(delta) + std::cos(phi) * std::cos(delta) * std::cos(hour_angle);
        steps_[i].sun = {
            -std::cos(delta) * std::sin(hour_angle),
            std::cos(phi) * std::sin(delta) - std::sin(phi) * std::cos(delta) * std::cos(hour_angle), up};
        sky[i] = std::max(0.0, up); // As cos w - cos w_s of the papers, but for a factor.
        total[i] = (a + b * std::cos(hour_angle)) * sky[i];
        total_sum += total[i];
        sky_sum += sky[i];
    }
    // Early and late the sky's part may exceed the whole, where the Sun then gives nothing. The rest is
    // brought to the day's sum, so that no light is lost or made up.
    std::array<double, kSteps> level{};
    double level_sum = 0.0;
    for (std::size_t i = 0; i < kSteps; ++i) {
        level[i] = std::max(0.0, total[i] / total_sum - share * sky[i] / sky_sum);
        level_sum += level[i];
    }
    for (std::size_t i = 0; i < kSteps && level_sum > 0.0; ++i) {
        steps_[i].beam = (1.0 - share) * (level[i] / level_sum) / std::max(sky[i], kLowestSine) * global;
    }
}

DailyRadiation MeanDay::beam_on(Direction normal) const
{
    double sum = 0.0;
    for (const auto& [sun, beam] : steps_) {
        const double cosine = sun.east * normal.east + sun.north * normal.north + sun.up * normal.up;
        sum += std::max(0.0, cosine) * beam.megajoules();
    }
    return DailyRadiation::from_megajoules(sum);
}

DailyRadiation radiation_on_wall(const MeanDay& day, Angle azimuth, double ground_reflectance)
{
    return day.beam_on(level_direction(azimuth)) + 0.5 * day.diffuse() +
           0.5 * ground_reflectance * day.global();
}

} // namespace lathhouse::sky
