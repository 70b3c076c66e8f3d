#include "core/climate/place_nights.h"
#include "core/climate/station_table.h"
#include "core/home/demonstration.h"
#include "core/plan/household_moves.h"
#include "core/plan/move_problem.h"
#include "tests/bench/yardstick.h"

#include <benchmark/benchmark.h>

namespace lathhouse::plan {
namespace {

const calendar::Date kToday{2027, 1, 10};

home::Household invented(const benchmark::State& state)
{
    home::DemonstrationOptions options{kToday};
    options.plants = static_cast<int>(state.range(0));
    options.spots = static_cast<int>(state.range(1));
    options.seed = static_cast<std::uint32_t>(state.range(2));
    return home::demonstration(options).value().household;
}

climate::PlaceClimate climate_of(const home::Place& place)
{
    // The place's climate points into the table.
    static const auto table = climate::StationTable::load(climate::StationTable::find().value()).value();
    return climate::climate_at(table, place.position, place.elevation).value();
}

/// A plan from a household in memory, place's climate known: nights' chances, costs, solution.
void whole_plan(benchmark::State& state, Effort effort)
{
    const auto household = invented(state);
    const auto climate = climate_of(household.place);
    double gap = 0.0;
    for (auto _ : state) {
        const ColdChances chances{climate::PlaceNights::of(climate)};
        gap = plan_year(household, climate, chances, kToday, Probability::clamped(0.1), effort).gap;
    }
    state.counters["gap_percent"] = 100.0 * gap;
}

/// The solver alone.
void solution(benchmark::State& state, Effort effort)
{
    const auto household = invented(state);
    const auto climate = climate_of(household.place);
    const ColdChances chances{climate::PlaceNights::of(climate)};
    const PlanWishes none;
    const HouseholdMoves moves{household, climate, chances, kToday, Probability::clamped(0.1), none};
    double gap = 0.0;
    for (auto _ : state) {
        gap = solve_moves(moves.problem(), effort).gap();
    }
    state.counters["gap_percent"] = 100.0 * gap;
}

// Arguments: plants, spots, seed.
void small_and_usual(benchmark::internal::Benchmark* bench)
{
    bench->ArgNames({"plants", "spots", "seed"})->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->UseRealTime();
    bench->Args({10, 6, 1})->Args({60, 20, 1})->Args({60, 20, 2})->Args({60, 20, 3});
}
void large(benchmark::internal::Benchmark* bench)
{
    small_and_usual(bench);
    bench->Args({250, 40, 1})->Args({1000, 100, 1})->Args({1000, 100, 2})->Args({1000, 100, 3})->Iterations(1);
}

BENCHMARK_CAPTURE(whole_plan, fast, Effort::Fast)->Apply(small_and_usual);
BENCHMARK_CAPTURE(solution, fast, Effort::Fast)->Apply(small_and_usual);
BENCHMARK_CAPTURE(solution, full, Effort::Full)->Apply(small_and_usual);
BENCHMARK_CAPTURE(whole_plan, fast_large, Effort::Fast)->Apply(large);
BENCHMARK(yardstick)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace lathhouse::plan
