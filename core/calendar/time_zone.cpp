#include "core/calendar/time_zone.h"

#include <date/tz.h>

#include <stdexcept>

namespace lathhouse::calendar {
namespace {
const date::time_zone& zone_of(const void* zone)
{
    return *static_cast<const date::time_zone*>(zone);
}
} // namespace

Result<TimeZone> TimeZone::named(std::string_view name)
{
    try {
        static_cast<void>(date::get_tzdb());
    } catch (const std::runtime_error&) {
        return Error{ErrorCode::Unavailable,
                     said("the system has no list of time zones; install the package tzdata")};
    }
    try {
        return TimeZone{std::string{name}, date::locate_zone(std::string{name})};
    } catch (const std::runtime_error&) {
        return Error{ErrorCode::NotFound,
                     said("there is no time zone \"%1\"; names look like Europe/Berlin or America/Denver", name)};
    }
}

Result<TimeZone> TimeZone::of_system()
{
    try {
        const auto* zone = date::current_zone();
        return TimeZone{zone->name(), zone};
    } catch (const std::runtime_error&) {
        return Error{ErrorCode::Unavailable,
                     said("the system does not say its time zone; name one, such as Europe/Berlin")};
    }
}

std::chrono::seconds TimeZone::offset_at(Instant instant) const
{
    return zone_of(zone_).get_info(instant).offset;
}

std::chrono::local_seconds TimeZone::local(Instant instant) const
{
    return std::chrono::local_seconds{instant.time_since_epoch() + offset_at(instant)};
}

Date TimeZone::local_date(Instant instant) const
{
    return utc_date(Instant{local(instant).time_since_epoch()});
}

Instant TimeZone::start_of_day(Date date) const
{
    const date::local_seconds midnight{start_of_day_utc(date).time_since_epoch()};
    // Where midnight falls into a gap both offsets lead to the same instant, the change itself.
    const auto info = zone_of(zone_).get_info(midnight);
    if (info.result == date::local_info::nonexistent) {
        return Instant{info.first.end.time_since_epoch()};
    }
    return Instant{midnight.time_since_epoch() - info.first.offset};
}

} // namespace lathhouse::calendar
