#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace lathhouse {

/// A fixed piece of work of the processor alone, about ten milliseconds: numbers drawn, turned by exp and sorted. What
/// has no other reference is told in its time, measured by the same program in the same minute, so that a slower or
/// busier machine moves both.
inline double yardstick_work()
{
    constexpr std::size_t kNumbers = 100'000;
    std::vector<double> numbers(kNumbers);
    std::uint64_t state = 1;
    for (auto& number : numbers) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL; // Knuth's MMIX generator.
        number = std::exp(static_cast<double>(state >> 40) / 16777216.0);
    }
    std::sort(numbers.begin(), numbers.end());
    return numbers[kNumbers / 2];
}

inline void yardstick(benchmark::State& state)
{
    for (auto _ : state) {
        benchmark::DoNotOptimize(yardstick_work());
    }
}

} // namespace lathhouse
