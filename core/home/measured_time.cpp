#include "core/home/measured_time.h"

#include "core/calendar/time_zone.h"

namespace lathhouse::home {

Result<void> set_time(Measurement& measurement, std::chrono::minutes time, const std::string& zone_name,
                      const std::string& home_zone)
{
    measurement.time = time;
    measurement.time_zone = home_zone;
    if (zone_name.empty() || zone_name == home_zone) {
        return {};
    }
    const auto there = calendar::TimeZone::named(zone_name);
    if (!there) {
        return there.error();
    }
    const auto here = calendar::TimeZone::named(home_zone);
    if (!here) {
        return here.error();
    }
    // A local time that a clock change leaves out or repeats is taken with the offset of a moment before or after it.
    const auto wall = calendar::start_of_day_utc(measurement.measured) + time;
    auto instant = wall - there->offset_at(wall);
    instant = wall - there->offset_at(instant);
    const auto local = here->local(instant);
    const auto midnight = std::chrono::floor<std::chrono::days>(local);
    measurement.measured = here->local_date(instant);
    measurement.time = std::chrono::floor<std::chrono::minutes>(local - midnight);
    return {};
}

} // namespace lathhouse::home
