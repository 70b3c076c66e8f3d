#include "core/geodesy/geodesic.h"
#include "core/sky/sun.h"

#include <benchmark/benchmark.h>

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
