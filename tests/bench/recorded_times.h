#pragma once

#include "tests/bench/yardstick.h"

#include <benchmark/benchmark.h>

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace lathhouse {

/// Processor time of this program (RUSAGE_SELF) or of those it started and waited for (RUSAGE_CHILDREN), seconds: what a
/// busy machine leaves nearly alone. Source: POSIX, getrusage.
inline double processor_seconds(int whose)
{
    rusage use{};
    getrusage(whose, &use);
    const auto seconds = [](timeval time) {
        return static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_usec);
    };
    return seconds(use.ru_utime) + seconds(use.ru_stime);
}

/// Times that could not be taken in a loop of Google Benchmark's (in turn with other programs, or from one frame of a
/// window to another), told by it: in its table and its JSON, as the middle of all, with the others as counters.
class RecordedTimes {
public:
    void add(const std::string& name, double seconds) { taken_[name].push_back(seconds); }
    void add(const std::string& name, const std::vector<double>& seconds)
    {
        for (const double one : seconds) {
            add(name, one);
        }
    }
    /// A figure beside the times of that name.
    void tell(const std::string& name, const std::string& figure, double value) { told_[name][figure] = value; }
    /// Runs the work and adds its time by the clock. Ends the program where the work fails: there is nothing to tell.
    template <class Work>
    void time(const std::string& name, Work work)
    {
        const auto begin = std::chrono::steady_clock::now();
        if (!work()) {
            std::fprintf(stderr, "%s failed\n", name.c_str());
            std::exit(1);
        }
        add(name, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    /// Tells all, and the yardstick. Returns what main returns.
    int tell_all(int argc, char** argv)
    {
        for (auto& [name, times] : taken_) {
            std::sort(times.begin(), times.end());
            const auto at = [&sorted = times](double share) {
                const auto place = static_cast<std::size_t>(share * static_cast<double>(sorted.size()));
                return sorted[std::min(sorted.size() - 1, place)];
            };
            auto figures = told_[name];
            figures["times"] = static_cast<double>(times.size());
            figures["least_ms"] = 1000.0 * times.front();
            figures["95th_ms"] = 1000.0 * at(0.95);
            figures["most_ms"] = 1000.0 * times.back();
            const double middle = at(0.5);
            benchmark::RegisterBenchmark(name.c_str(), [middle, figures](benchmark::State& state) {
                for (auto _ : state) {
                    state.SetIterationTime(middle);
                }
                for (const auto& [figure, value] : figures) {
                    state.counters[figure] = value;
                }
            })->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);
        }
        benchmark::RegisterBenchmark("yardstick", yardstick)->Unit(benchmark::kMillisecond);
        benchmark::Initialize(&argc, argv);
        benchmark::RunSpecifiedBenchmarks();
        return 0;
    }

private:
    std::map<std::string, std::vector<double>> taken_;
    std::map<std::string, std::map<std::string, double>> told_;
};

} // namespace lathhouse
