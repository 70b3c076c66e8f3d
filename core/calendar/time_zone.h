#pragma once

#include "core/calendar/date.h"

#include <chrono>
#include <string>
#include <string_view>

namespace lathhouse::calendar {

/// A time zone of the IANA database by its name ("Europe/Berlin"), read from the system's tzdata.
class TimeZone {
public:
    /// Errors: NotFound for a name that the database does not have, with the form names have; Unavailable
    /// where the system has no database.
    static Result<TimeZone> named(std::string_view name);
    /// The system's own zone, to propose to the grower. Errors: Unavailable.
    static Result<TimeZone> of_system();

    const std::string& name() const { return name_; }
    /// Local time less UTC at that instant.
    std::chrono::seconds offset_at(Instant instant) const;
    /// Local clock at that instant, as an instant's worth of seconds since 1970-01-01 00:00 local.
    std::chrono::local_seconds local(Instant instant) const;
    Date local_date(Instant instant) const;
    /// The first instant of a local date (a clock change may begin the day at 01:00).
    Instant start_of_day(Date date) const;

private:
    TimeZone(std::string name, const void* zone) : name_(std::move(name)), zone_(zone) {}
    std::string name_;
    const void* zone_; ///< A date::time_zone, owned by that library for the life of the process.
};

} // namespace lathhouse::calendar
