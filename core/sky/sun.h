#pragma once

#include "core/calendar/date.h"
#include "core/calendar/time_zone.h"
#include "core/sky/solar_ephemeris.h"
#include "core/units/angle.h"
#include "core/units/light.h"
#include "core/units/position.h"

#include <optional>

namespace lathhouse::sky {

enum class DayKind {
    Ordinary,   ///< The Sun crosses the horizon at least once.
    PolarDay,   ///< It stays above.
    PolarNight, ///< It stays below.
};

/// One solar day of a place, from the Sun's lower transit to the next, at sea level with a free horizon.
///
/// Rise and set: the Sun's centre at a true altitude of -50'; civil dawn and dusk: of -6 degrees. What does
/// not happen in the day is nullopt; on one of the few days a year at high latitudes when the Sun only rises
/// or only sets, that side alone is there. Civil dawn and dusk may be there when the Sun does not rise.
/// Accuracy: within 0.5 s of ERFA up to 60 degrees of latitude; beyond, an error of 1" in altitude. The air's
/// true bending of light near the horizon differs from -50' by far more: real sunrises by a minute or two.
struct SunDay {
    DayKind kind;
    std::optional<calendar::Instant> rise;
    std::optional<calendar::Instant> set;
    std::optional<calendar::Instant> civil_dawn;
    std::optional<calendar::Instant> civil_dusk;
    calendar::Instant noon;    ///< Upper transit, nearest second.
    Angle noon_elevation;      ///< Of the centre, without refraction.
    double day_length_seconds; ///< Sun above -50' between the two lower transits; 86,400 and 0 on polar days.
    DailyRadiation extraterrestrial; ///< FAO-56 eq. 21 for the date.
};

/// The local mean solar day of the place's longitude with that date.
/// Precondition: the date within the ephemeris' span.
SunDay sun_day(const SolarEphemeris& ephemeris, Position position, calendar::Date date);

/// The solar day whose noon is nearest to the middle of a zone's civil date. Its sunset may fall after the
/// civil midnight, in the high summer of places far from their zone's meridian.
/// Errors: NotFound for a date that the zone skipped (Samoa, 30 December 2011).
/// Precondition: the date within the ephemeris' span.
Result<SunDay> sun_day(const SolarEphemeris& ephemeris, Position position, calendar::Date date,
                       const calendar::TimeZone& zone);

/// For one day now and then: builds the few days of ephemeris it needs (about 50 microseconds).
SunDay sun_day(Position position, calendar::Date date);

/// Rise and set alone, as many as possible a second. nullopt as in SunDay.
struct RiseAndSet {
    DayKind kind;
    std::optional<double> rise; ///< Days of the ephemeris, see SolarEphemeris::instant_at.
    std::optional<double> set;
};
RiseAndSet rise_and_set(const SolarEphemeris& ephemeris, Position position, calendar::Date date);

/// Where the Sun stands in the sky, seen from the Earth's centre (parallax, at most 9", is left out), without
/// refraction.
struct SunInSky {
    Angle elevation; ///< Above the horizon, negative below it.
    Angle azimuth;   ///< From north through east, 0..360 degrees.
};
/// Precondition: the instant within the ephemeris' span.
SunInSky sun_in_sky(const SolarEphemeris& ephemeris, Position position, calendar::Instant instant);

} // namespace lathhouse::sky
