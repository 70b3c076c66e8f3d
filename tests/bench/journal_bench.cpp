#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/journal/household_store.h"

#include <benchmark/benchmark.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace lathhouse {
namespace {

constexpr int kPlants = 60;
constexpr int kMeasurements = 200'000;
const calendar::Date kToday{2026, 11, 25};

/// Memory of this process that is in use, megabytes. Source: Linux, proc(5), VmRSS.
double megabytes_in_use()
{
    std::ifstream status{"/proc/self/status"};
    std::string line;
    while (std::getline(status, line)) {
        if (line.starts_with("VmRSS:")) {
            return std::strtod(line.c_str() + 6, nullptr) / 1024.0;
        }
    }
    return 0.0;
}

/// A household of sixty plants with ten years of events and 200,000 measurements, made once and removed at the end.
class LargeJournal {
public:
    LargeJournal()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_bench_XXXXXX").string();
        root_ = mkdtemp(pattern.data());
        const auto made =
            home::demonstration({.today = kToday, .plants = kPlants, .spots = 20, .years = 10}).value();
        auto store = journal::HouseholdStore::create(folder(), made.household, made.history).value();
        std::vector<home::Measurement> all;
        const auto kinds = home::every_measurement_kind();
        for (int number = 0; number < kMeasurements; ++number) {
            const auto kind = kinds[static_cast<std::size_t>(number / kPlants) % kinds.size()];
            const bool share = home::unit_of(kind) == home::MeasurementUnit::Share;
            all.push_back({1 + number % kPlants,
                           kind,
                           kToday - calendar::Days{number % 3650},
                           {share ? 0.3 : 20.0 + number % 30, share ? 0.31 : 21.0},
                           home::usual_method(kind),
                           calendar::start_of_day_utc(kToday)});
        }
        if (!store.record(std::span<const home::Measurement>{all})) {
            std::abort();
        }
    }
    ~LargeJournal() { std::filesystem::remove_all(root_); }
    std::filesystem::path folder() const { return root_ / "home"; }
    double file_megabytes() const
    {
        return static_cast<double>(std::filesystem::file_size(folder() / "household.sqlite3")) / 1048576.0;
    }

private:
    std::filesystem::path root_;
};

const LargeJournal& large()
{
    static const LargeJournal journal;
    return journal;
}

void opens(benchmark::State& state)
{
    const auto folder = large().folder();
    for (auto _ : state) {
        benchmark::DoNotOptimize(journal::HouseholdStore::open(folder).value());
    }
    state.counters["file_mb"] = large().file_megabytes();
    state.counters["memory_mb"] = megabytes_in_use();
}
BENCHMARK(opens)->Unit(benchmark::kMillisecond);

/// What a plant's page asks: events, measurements, stays, gone plants, descent.
void plant_page(benchmark::State& state)
{
    const auto store = journal::HouseholdStore::open(large().folder()).value();
    int plant = 0;
    for (auto _ : state) {
        plant = plant % kPlants + 1;
        benchmark::DoNotOptimize(store.events(plant).value());
        benchmark::DoNotOptimize(store.measurements(plant).value());
        benchmark::DoNotOptimize(store.stays(plant).value());
        benchmark::DoNotOptimize(store.gone_plants().value());
        benchmark::DoNotOptimize(store.descents().value());
    }
    state.counters["memory_mb"] = megabytes_in_use();
}
BENCHMARK(plant_page)->Unit(benchmark::kMillisecond);

/// One series of one plant, as a chart asks for it.
void one_series(benchmark::State& state)
{
    const auto store = journal::HouseholdStore::open(large().folder()).value();
    int plant = 0;
    for (auto _ : state) {
        plant = plant % kPlants + 1;
        benchmark::DoNotOptimize(store.measurements(plant, home::MeasurementKind::Height).value());
    }
}
BENCHMARK(one_series)->Unit(benchmark::kMillisecond);

void all_measurements(benchmark::State& state)
{
    const auto store = journal::HouseholdStore::open(large().folder()).value();
    for (auto _ : state) {
        benchmark::DoNotOptimize(store.measurements().value());
    }
    state.counters["memory_mb"] = megabytes_in_use();
}
BENCHMARK(all_measurements)->Unit(benchmark::kMillisecond);

void undo_and_redo(benchmark::State& state)
{
    auto store = journal::HouseholdStore::open(large().folder()).value();
    for (auto _ : state) {
        benchmark::DoNotOptimize(
            store.turn_last(journal::HouseholdStore::Direction::Undo, calendar::start_of_day_utc(kToday)).value());
        benchmark::DoNotOptimize(
            store.turn_last(journal::HouseholdStore::Direction::Redo, calendar::start_of_day_utc(kToday)).value());
    }
}
BENCHMARK(undo_and_redo)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace lathhouse
