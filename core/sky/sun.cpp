#include "core/sky/sun.h"

#include "core/sky/radiation.h"
#include "core/sky/turn.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace lathhouse::sky {
namespace {
constexpr double kHorizonSine = -0.014543897651582656; // sin(-50').
constexpr double kTwilightSine = -0.10452846326765347; // sin(-6 degrees).

/// A place with what every day of it needs.
struct Site {
    double longitude, sine, cosine;

    explicit Site(Position position)
        : longitude(Angle::from_degrees(position.longitude.degrees()).radians()),
          sine(std::sin(Angle::from_degrees(position.latitude.degrees()).radians())),
          // Never exactly 0, so that the poles divide by something.
          cosine(std::max(std::cos(Angle::from_degrees(position.latitude.degrees()).radians()), 1e-15))
    {
    }
};

/// A solar day: the hour angle of the Sun is 2 pi days + equation of time + offset, -pi..pi within the day.
struct SolarDay {
    const SolarEphemeris* ephemeris;
    const Site* site;
    double offset;
    double noon;

    /// The moment at which the Sun's hour angle is `hour_angle`. Its own motion is slow (30 s a day at most
    /// for the equation of time), so each round gains over three digits.
    double at_hour_angle(double hour_angle, double guess) const
    {
        for (int round = 0; round < 3; ++round) {
            guess = (hour_angle - offset - ephemeris->equation_of_time(guess)) / kTurn;
        }
        return guess;
    }
    double sine_of_elevation(double days) const
    {
        const double declination_sine = ephemeris->sine_declination(days);
        const double hour_angle = kTurn * days + ephemeris->equation_of_time(days) + offset;
        return site->sine * declination_sine +
               site->cosine * std::sqrt(1.0 - declination_sine * declination_sine) * std::cos(hour_angle);
    }
};

/// The solar day whose noon is nearest to `middle`.
SolarDay solar_day(const SolarEphemeris& ephemeris, const Site& site, double middle)
{
    const double hour_angle = kTurn * middle - kPi + ephemeris.equation_of_time(middle) + site.longitude;
    const double turns = std::round(hour_angle / kTurn);
    SolarDay day{&ephemeris, &site, site.longitude - kPi - kTurn * turns, middle};
    day.noon = day.at_hour_angle(0.0, middle);
    return day;
}

/// The crossings of one altitude within a solar day.
struct Crossings {
    DayKind kind = DayKind::Ordinary;
    std::optional<double> up;
    std::optional<double> down;
    double days_above = 0.0;
};

/// The sine of the altitude less that of the line, searched through: for days on which the Sun grazes the
/// line, and near the poles, where the highest point of the day need not be at noon.
Crossings search(const SolarDay& day, double line_sine)
{
    constexpr int kSteps = 48;
    const double start = day.at_hour_angle(-kPi, day.noon - 0.5);
    const double end = day.at_hour_angle(kPi, day.noon + 0.5);
    const double step = (end - start) / kSteps;
    const auto height = [&](double days) { return day.sine_of_elevation(days) - line_sine; };

    // One step past either end, so that a turning point beside an end has neighbours on both sides.
    std::array<double, kSteps + 3> heights{};
    for (int i = 0; i < kSteps + 3; ++i) {
        heights[static_cast<std::size_t>(i)] = height(start + (i - 1) * step);
    }
    // Points between which the height is monotone as far as its sign goes.
    std::array<double, 2 * (kSteps + 3)> points{};
    std::size_t count = 0;
    for (int i = 0; i < kSteps + 3; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const double here = start + (i - 1) * step;
        if (i > 0 && i < kSteps + 2) {
            const double side = heights[at] < 0.0 ? 1.0 : -1.0; // Towards the line.
            const double middle = side * heights[at];
            if (middle >= side * heights[at - 1] && middle >= side * heights[at + 1]) {
                // A turning point on this side of the line: does it reach across between the samples?
                double low = here - step;
                double high = here + step;
                for (int round = 0; round < 60; ++round) {
                    const double third = (high - low) / 3.0;
                    if (side * height(low + third) < side * height(high - third)) {
                        low += third;
                    } else {
                        high -= third;
                    }
                }
                const double turning = 0.5 * (low + high);
                if (side * height(turning) > 0.0) {
                    if (turning < here) {
                        points[count++] = turning;
                        points[count++] = here;
                    } else {
                        points[count++] = here;
                        points[count++] = turning;
                    }
                    continue;
                }
            }
        }
        points[count++] = here;
    }
    Crossings found;
    bool any_above = height(start) >= 0.0;
    bool any_below = !any_above;
    double above_since = start;
    bool above = any_above;
    for (std::size_t i = 1; i < count; ++i) {
        double low = points[i - 1];
        double high = points[i];
        const bool low_above = height(low) >= 0.0;
        if (low_above == (height(high) >= 0.0)) {
            continue;
        }
        for (int round = 0; round < 40; ++round) {
            const double half = 0.5 * (low + high);
            ((height(half) >= 0.0) == low_above ? low : high) = half;
        }
        if (high < start || high >= end) {
            continue; // It belongs to the day before or after.
        }
        any_above = any_below = true;
        if (low_above) {
            if (!found.down) {
                found.down = high;
            }
            if (above) {
                found.days_above += high - above_since;
            }
            above = false;
        } else {
            if (!found.up) {
                found.up = high;
            }
            above_since = high;
            above = true;
        }
    }
    if (above) {
        found.days_above += end - above_since;
    }
    if (!any_below) {
        found.kind = DayKind::PolarDay;
    } else if (!any_above) {
        found.kind = DayKind::PolarNight;
    }
    return found;
}

Crossings crossings(const SolarDay& day, double line_sine)
{
    const auto& ephemeris = *day.ephemeris;
    const auto& site = *day.site;
    const auto cosine_of_hour_angle = [&](double declination_sine) {
        return (line_sine - site.sine * declination_sine) /
               (site.cosine * std::sqrt(1.0 - declination_sine * declination_sine));
    };
    const double noon_sine = ephemeris.sine_declination(day.noon);
    const double at_noon = cosine_of_hour_angle(noon_sine);

    // Inside this limit the Sun crosses the line at an angle that lets the plain iteration gain a digit and
    // more each round (it shrinks errors by tan(latitude) x 0.0011 / sin(hour angle)).
    constexpr double kSteep = 0.98;
    if (std::abs(at_noon) < kSteep && site.cosine > 0.05) {
        Crossings found;
        const auto iterate = [&](double side) -> std::optional<double> {
            double moment = day.noon + side * std::acos(at_noon) / kTurn;
            for (int round = 0; round < 12; ++round) {
                const double cosine = cosine_of_hour_angle(ephemeris.sine_declination(moment));
                if (std::abs(cosine) > 0.995) {
                    return std::nullopt;
                }
                const double next =
                    (side * std::acos(cosine) - day.offset - ephemeris.equation_of_time(moment)) / kTurn;
                const double change = std::abs(next - moment);
                moment = next;
                if (change < 1e-6) { // 0.09 s; the error left is a tenth of it or less.
                    return moment;
                }
            }
            return std::nullopt;
        };
        found.up = iterate(-1.0);
        found.down = iterate(1.0);
        if (found.up && found.down) {
            found.days_above = *found.down - *found.up;
            return found;
        }
        return search(day, line_sine);
    }
    // Half a day of the declination's own motion cannot bring the Sun to the line: no search is needed.
    constexpr double kHalfDayOfDeclination = 0.0040; // Its sine changes by at most 0.0070 a day.
    const double first = cosine_of_hour_angle(noon_sine - kHalfDayOfDeclination);
    const double second = cosine_of_hour_angle(noon_sine + kHalfDayOfDeclination);
    if (first > 1.0 && second > 1.0 && at_noon > 1.0) {
        return {DayKind::PolarNight, std::nullopt, std::nullopt, 0.0};
    }
    if (first < -1.0 && second < -1.0 && at_noon < -1.0) {
        return {DayKind::PolarDay, std::nullopt, std::nullopt, 1.0};
    }
    return search(day, line_sine);
}

double mean_noon(const SolarEphemeris& ephemeris, Position position, calendar::Date date)
{
    return ephemeris.days_at(date) + 0.5 - position.longitude.degrees() / 360.0;
}

SunDay describe(const SolarEphemeris& ephemeris, Position position, calendar::Date date, double middle)
{
    const Site site{position};
    const auto day = solar_day(ephemeris, site, middle);
    const auto horizon = crossings(day, kHorizonSine);
    const auto twilight = crossings(day, kTwilightSine);
    const auto instant = [&](const std::optional<double>& days) {
        return days ? std::optional{ephemeris.instant_at(*days)} : std::nullopt;
    };
    const double length = horizon.kind == DayKind::PolarDay     ? 86400.0
                          : horizon.kind == DayKind::PolarNight ? 0.0
                                                                : horizon.days_above * 86400.0;
    return {horizon.kind,
            instant(horizon.up),
            instant(horizon.down),
            instant(twilight.up),
            instant(twilight.down),
            ephemeris.instant_at(day.noon),
            Angle::from_radians(std::asin(std::clamp(day.sine_of_elevation(day.noon), -1.0, 1.0))),
            length,
            extraterrestrial_radiation(position.latitude, calendar::ordinal_of_year(date))};
}
} // namespace

SunDay sun_day(const SolarEphemeris& ephemeris, Position position, calendar::Date date)
{
    return describe(ephemeris, position, date, mean_noon(ephemeris, position, date));
}

Result<SunDay> sun_day(const SolarEphemeris& ephemeris, Position position, calendar::Date date,
                       const calendar::TimeZone& zone)
{
    const auto start = zone.start_of_day(date);
    const auto end = zone.start_of_day(date + calendar::Days{1});
    if (start == end) {
        return Error{ErrorCode::NotFound, said("the zone %1 has no %2 (its clocks went past it); take another day",
                                               zone.name(), calendar::to_text(date))};
    }
    return describe(ephemeris, position, date, 0.5 * (ephemeris.days_at(start) + ephemeris.days_at(end)));
}

SunDay sun_day(Position position, calendar::Date date)
{
    return sun_day(SolarEphemeris{date, date}, position, date);
}

RiseAndSet rise_and_set(const SolarEphemeris& ephemeris, Position position, calendar::Date date)
{
    const Site site{position};
    const auto horizon =
        crossings(solar_day(ephemeris, site, mean_noon(ephemeris, position, date)), kHorizonSine);
    return {horizon.kind, horizon.up, horizon.down};
}

SunInSky sun_in_sky(const SolarEphemeris& ephemeris, Position position, calendar::Instant instant)
{
    const Site site{position};
    const double days = ephemeris.days_at(instant);
    const double hour_angle = kTurn * days - kPi + ephemeris.equation_of_time(days) + site.longitude;
    const double declination_sine = ephemeris.sine_declination(days);
    const double declination_cosine = std::sqrt(1.0 - declination_sine * declination_sine);
    // East, north and up of the unit vector to the Sun.
    const double east = -declination_cosine * std::sin(hour_angle);
    const double north =
        site.cosine * declination_sine - site.sine * declination_cosine * std::cos(hour_angle);
    const double up = site.sine * declination_sine + site.cosine * declination_cosine * std::cos(hour_angle);
    double azimuth = std::atan2(east, north);
    if (azimuth < 0.0) {
        azimuth += kTurn;
    }
    return {Angle::from_radians(std::atan2(up, std::hypot(east, north))), Angle::from_radians(azimuth)};
}

} // namespace lathhouse::sky
