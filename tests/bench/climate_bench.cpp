#include "core/climate/place_nights.h"
#include "core/climate/station_table.h"
#include "tests/bench/yardstick.h"

#include <benchmark/benchmark.h>

namespace lathhouse::climate {
namespace {

const StationTable& table()
{
    static const auto known = StationTable::load(StationTable::find().value()).value();
    return known;
}

/// A place of the temperate north that moves from call to call, so that nothing of the one before helps.
Position next_place()
{
    static int asked = 0;
    ++asked;
    return {Latitude::from_degrees(42.0 + asked % 97 * 0.1).value(),
            Longitude::from_degrees(2.0 + asked % 89 * 0.25).value()};
}

/// Monthly figures of a place among all stations.
void monthly_figures(benchmark::State& state)
{
    for (auto _ : state) {
        benchmark::DoNotOptimize(climate_at(table(), next_place(), Metres::from_metres(200.0)).value());
    }
}
BENCHMARK(monthly_figures)->Unit(benchmark::kMillisecond);

/// The model of nights of a place, and the dates of one line from it: what the year's page waits for at a new place.
void model_and_dates(benchmark::State& state)
{
    for (auto _ : state) {
        state.PauseTiming();
        const auto here = climate_at(table(), next_place(), Metres::from_metres(200.0)).value();
        state.ResumeTiming();
        benchmark::DoNotOptimize(PlaceNights{here.nights()}.dates(Celsius::from_degrees(0.0)));
    }
}
BENCHMARK(model_and_dates)->Unit(benchmark::kMillisecond);

/// The same, moved to the dates that stations near have counted.
void model_moved_to_neighbours(benchmark::State& state)
{
    for (auto _ : state) {
        state.PauseTiming();
        const auto here = climate_at(table(), next_place(), Metres::from_metres(200.0)).value();
        state.ResumeTiming();
        benchmark::DoNotOptimize(PlaceNights::of(here).dates(Celsius::from_degrees(0.0)));
    }
}
BENCHMARK(model_moved_to_neighbours)->Unit(benchmark::kMillisecond);
BENCHMARK(yardstick)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace lathhouse::climate
