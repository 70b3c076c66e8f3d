#include "core/geodesy/geodesic.h"
#include "core/sky/apparent_sun.h"
#include "core/sky/sun.h"
#include "tests/bench/yardstick.h"

#include <benchmark/benchmark.h>

#include <erfa.h>
#include <erfam.h>

#include <cmath>
#include <numbers>

namespace lathhouse {
namespace {

const calendar::Date kFirst{1991, 1, 1};
const calendar::Date kLast{2020, 12, 31};

Position place(double latitude)
{
    return {Latitude::from_degrees(latitude).value(), Longitude::literal(16.4)};
}

/// One place's rise and set, year after year, ephemeris shared. The argument is the latitude.
void rises_and_sets(benchmark::State& state)
{
    const sky::SolarEphemeris ephemeris{kFirst, kLast};
    const auto here = place(static_cast<double>(state.range(0)));
    const int days = calendar::days_between(kFirst, kLast) + 1;
    for (auto _ : state) {
        for (int day = 0; day < days; ++day) {
            benchmark::DoNotOptimize(sky::rise_and_set(ephemeris, here, kFirst + calendar::Days{day}));
        }
    }
    state.SetItemsProcessed(state.iterations() * days);
}
BENCHMARK(rises_and_sets)->Arg(0)->Arg(48)->Arg(60)->Arg(67)->Arg(80)->Unit(benchmark::kMillisecond);

/// The Sun for a place whose own day is asked: hour angle and declination, radians.
struct SunThere {
    double hour_angle;
    double declination;
};

/// Days since 2000 January 1.5 to 0h UTC of a date.
double days_since_2000(calendar::Date date)
{
    return calendar::days_between(calendar::Date{2000, 1, 1}, date) - 0.5;
}

/// By ERFA's models of full accuracy: Earth by eraEpv00, precession and nutation IAU 2006/2000A, sidereal time.
SunThere sun_of_erfa(double days, double longitude)
{
    const double terrestrial = days + sky::kTerrestrialLessUtcSeconds / 86400.0;
    constexpr double kLightDays = 0.0057755; // For one astronomical unit.
    double helio[2][3];
    double bary[2][3];
    eraEpv00(ERFA_DJ00, terrestrial - kLightDays, helio, bary);
    double to_sun[3] = {-helio[0][0], -helio[0][1], -helio[0][2]};
    double turned[3][3];
    eraPnm06a(ERFA_DJ00, terrestrial, turned);
    eraRxp(turned, to_sun, to_sun);
    double ascension;
    double declination;
    eraC2s(to_sun, &ascension, &declination);
    return {eraAnpm(eraGst06(ERFA_DJ00, days, ERFA_DJ00, terrestrial, turned) + longitude - ascension), declination};
}

/// By the short series of Meeus, Astronomical Algorithms, 2nd edition, chapter 25 (low accuracy, 0.01 degrees).
SunThere sun_of_meeus(double days, double longitude)
{
    constexpr double kRadians = std::numbers::pi / 180.0;
    const double t = (days + sky::kTerrestrialLessUtcSeconds / 86400.0) / 36525.0;
    const double mean = 280.46646 + t * (36000.76983 + t * 0.0003032);
    const double m = (357.52911 + t * (35999.05029 - t * 0.0001537)) * kRadians;
    const double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * std::sin(m) +
                          (0.019993 - t * 0.000101) * std::sin(2.0 * m) + 0.000289 * std::sin(3.0 * m);
    const double node = (125.04 - 1934.136 * t) * kRadians;
    const double apparent = (mean + centre - 0.00569 - 0.00478 * std::sin(node)) * kRadians;
    const double obliquity =
        (23.0 + (26.0 + (21.448 - t * (46.8150 + t * (0.00059 - t * 0.001813))) / 60.0) / 60.0 + 0.00256 * std::cos(node)) *
        kRadians;
    const double ascension = std::atan2(std::cos(obliquity) * std::sin(apparent), std::cos(apparent));
    const double sidereal = (280.46061837 + 360.98564736629 * days) * kRadians;
    return {std::remainder(sidereal + longitude - ascension, 2.0 * std::numbers::pi),
            std::asin(std::sin(obliquity) * std::sin(apparent))};
}

/// Days since 2000 of the rise (side -1) or set (+1) of a date at the place, by asking where the Sun is three times; for
/// days on which it rises and sets.
template <class SunOf>
double event_by_steps(SunOf sun_of, Position here, calendar::Date date, double side)
{
    constexpr double kRadians = std::numbers::pi / 180.0;
    const double longitude = here.longitude.degrees() * kRadians;
    const double latitude = here.latitude.degrees() * kRadians;
    double days = days_since_2000(date) + 0.5 - longitude / (2.0 * std::numbers::pi) + side * 0.25;
    for (int step = 0; step < 3; ++step) {
        const SunThere sun = sun_of(days, longitude);
        const double cosine = (std::sin(-50.0 / 60.0 * kRadians) - std::sin(latitude) * std::sin(sun.declination)) /
                              (std::cos(latitude) * std::cos(sun.declination));
        days += std::remainder(side * std::acos(cosine) - sun.hour_angle, 2.0 * std::numbers::pi) / (2.0 * std::numbers::pi);
    }
    return days;
}

/// The same rises and sets for so many days by a reference; how far it lies from ours at most is told beside.
template <class SunOf>
void rises_and_sets_by(benchmark::State& state, SunOf sun_of, int days)
{
    const auto here = place(static_cast<double>(state.range(0)));
    const sky::SolarEphemeris ephemeris{kFirst, kLast};
    const double start = days_since_2000(kFirst) - ephemeris.days_at(kFirst);
    const int every = (calendar::days_between(kFirst, kLast) + 1) / days;
    double apart = 0.0;
    for (auto _ : state) {
        for (int day = 0; day < days; ++day) {
            const auto date = kFirst + calendar::Days{day * every};
            const double rise = event_by_steps(sun_of, here, date, -1.0);
            const double set = event_by_steps(sun_of, here, date, 1.0);
            const auto ours = sky::rise_and_set(ephemeris, here, date);
            apart = std::max({apart, std::abs(rise - start - *ours.rise), std::abs(set - start - *ours.set)});
        }
    }
    state.SetItemsProcessed(state.iterations() * days);
    state.counters["apart_seconds"] = 86400.0 * apart;
}
void rises_and_sets_by_erfa(benchmark::State& state)
{
    rises_and_sets_by(state, sun_of_erfa, 100);
}
BENCHMARK(rises_and_sets_by_erfa)->Arg(48)->Arg(60)->Unit(benchmark::kMillisecond);
void rises_and_sets_by_meeus(benchmark::State& state)
{
    rises_and_sets_by(state, sun_of_meeus, 10'000);
}
BENCHMARK(rises_and_sets_by_meeus)->Arg(48)->Arg(60)->Unit(benchmark::kMillisecond);
BENCHMARK(yardstick)->Unit(benchmark::kMillisecond);

/// The whole day: rise, set, twilights, noon, radiation.
void whole_days(benchmark::State& state)
{
    const sky::SolarEphemeris ephemeris{kFirst, kLast};
    const auto here = place(static_cast<double>(state.range(0)));
    const int days = calendar::days_between(kFirst, kLast) + 1;
    for (auto _ : state) {
        for (int day = 0; day < days; ++day) {
            benchmark::DoNotOptimize(sky::sun_day(ephemeris, here, kFirst + calendar::Days{day}));
        }
    }
    state.SetItemsProcessed(state.iterations() * days);
}
BENCHMARK(whole_days)->Arg(48)->Arg(67)->Unit(benchmark::kMillisecond);

/// Thirty years of ephemeris.
void ephemeris_of_thirty_years(benchmark::State& state)
{
    for (auto _ : state) {
        benchmark::DoNotOptimize(sky::SolarEphemeris{kFirst, kLast});
    }
}
BENCHMARK(ephemeris_of_thirty_years)->Unit(benchmark::kMillisecond);

void day_now_and_then(benchmark::State& state)
{
    for (auto _ : state) {
        benchmark::DoNotOptimize(sky::sun_day(place(48.0), kFirst));
    }
}
BENCHMARK(day_now_and_then)->Unit(benchmark::kMicrosecond);

/// The argument: 0 for the ellipsoid, 1 for the sphere.
void distances_over_the_globe(benchmark::State& state)
{
    std::vector<Position> points;
    for (double latitude = -85.0; latitude <= 85.0; latitude += 5.0) {
        for (double longitude = -180.0; longitude < 180.0; longitude += 5.0) {
            points.push_back(
                {Latitude::from_degrees(latitude).value(), Longitude::from_degrees(longitude).value()});
        }
    }
    const auto here = place(48.2);
    for (auto _ : state) {
        if (state.range(0) == 0) {
            benchmark::DoNotOptimize(geodesy::distances(here, points));
        } else {
            for (const auto& point : points) {
                benchmark::DoNotOptimize(geodesy::rough_distance(here, point));
            }
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(points.size()));
}
BENCHMARK(distances_over_the_globe)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace lathhouse
