#include "core/growth/recovery.h"

#include "tests/bench/yardstick.h"

#include <benchmark/benchmark.h>

#include <cmath>

namespace lathhouse::growth {
namespace {

/// Verdict and date of the next reading of a series of daily readings, half of them after the event.
void judge_series(benchmark::State& state)
{
    const calendar::Date event{2026, 5, 1};
    const auto count = static_cast<int>(state.range(0));
    // In hundredths of the rate before: 20 stays too early, so that all readings ahead are looked at.
    const double share = static_cast<double>(state.range(1)) / 100.0;
    std::vector<SeriesReading> readings;
    for (int at = 0; at < count; ++at) {
        const int day = at - count / 2;
        const double wobble = 0.02 * std::sin(at * 12.9898) + 0.01 * std::sin(at * 78.233);
        readings.push_back(
            {event + calendar::Days{day}, 20.0 * std::exp(0.001 * day * (day <= 0 ? 1.0 : share) + wobble)});
    }
    for (auto _ : state) {
        benchmark::DoNotOptimize(recovery_of(SeriesKind::Size, readings, event, GrowthClock::calendar()));
    }
    state.SetLabel(std::string{
        to_string(recovery_of(SeriesKind::Size, readings, event, GrowthClock::calendar()).judgement.verdict)});
}
BENCHMARK(judge_series)->Args({20, 100})->Args({100, 100})->Args({1000, 100})->Args({1000, 20})->Args({1000, 0})
    ->Unit(benchmark::kMillisecond);
BENCHMARK(yardstick)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace lathhouse::growth
