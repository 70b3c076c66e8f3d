#include "core/sky/direct_sun.h"

#include "core/sky/sun.h"

#include <chrono>
#include <cmath>
#include <optional>

namespace lathhouse::sky {

std::vector<SunSpell> direct_sun(const SpotView& view, const SolarEphemeris& ephemeris, Position position,
                                 calendar::Date date)
{
    using std::chrono::minutes;
    const auto noon = std::chrono::round<minutes>(sun_day(ephemeris, position, date).noon);
    std::vector<SunSpell> spells;
    std::optional<calendar::Instant> since;
    constexpr int kHalfDay = 12 * 60;
    for (int minute = -kHalfDay; minute <= kHalfDay; ++minute) {
        const calendar::Instant now = noon + minutes{minute};
        const auto [elevation, azimuth] = sun_in_sky(ephemeris, position, now);
        auto sun = level_direction(azimuth);
        const double flat = std::cos(elevation.radians());
        sun = {sun.east * flat, sun.north * flat, std::sin(elevation.radians())};
        const bool seen = minute < kHalfDay && view.sees(sun);
        if (seen && !since) {
            since = now;
        } else if (!seen && since) {
            spells.push_back({*since, now});
            since.reset();
        }
    }
    return spells;
}

double hours_of(const std::vector<SunSpell>& spells)
{
    double hours = 0.0;
    for (const auto& [from, to] : spells) {
        hours += std::chrono::duration<double, std::ratio<3600>>(to - from).count();
    }
    return hours;
}

} // namespace lathhouse::sky
