#include "core/journal/household_store.h"
#include "core/journal/leading_measures.h"
#include "core/journal/photo_book.h"
#include "core/journal/plant_page.h"

#include "tests/bench/large_household.h"
#include "tests/bench/yardstick.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <benchmark/benchmark.h>

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace lathhouse {
namespace {

constexpr int kPlants = LargeHousehold::kPlants;
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

/// A journal of so many entries, made when it is first asked for.
const LargeHousehold& journal_of(std::int64_t entries)
{
    static std::map<std::int64_t, std::unique_ptr<LargeHousehold>> kept;
    auto& one = kept[entries];
    if (!one) {
        one = std::make_unique<LargeHousehold>(static_cast<int>(entries), kToday);
    }
    return *one;
}

const LargeHousehold& large()
{
    return journal_of(kMeasurements);
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

/// The first opening of a program, its look through the whole file included: what is known of a file is forgotten when it
/// changes, as its time of writing does here.
void opens_first(benchmark::State& state)
{
    const auto folder = journal_of(state.range(0)).folder();
    auto written = std::filesystem::last_write_time(folder / "household.sqlite3");
    for (auto _ : state) {
        written += std::chrono::seconds{1};
        std::filesystem::last_write_time(folder / "household.sqlite3", written);
        benchmark::DoNotOptimize(journal::HouseholdStore::open(folder).value());
    }
    state.SetComplexityN(state.range(0));
    state.counters["file_mb"] = journal_of(state.range(0)).file_megabytes();
}

/// What the window's page of a plant reads once the household is open: the measure that it shows, the newest of what
/// happened, the photos of its strip.
void plant_page(benchmark::State& state)
{
    const auto folder = journal_of(state.range(0)).folder();
    int plant = 0;
    for (auto _ : state) {
        plant = plant % kPlants + 1;
        benchmark::DoNotOptimize(journal::read_plant_page(folder, plant, {}).value());
    }
    state.SetComplexityN(state.range(0));
}

/// All of one plant, as its printed sheet and two photos beside each other ask for it.
void whole_plant(benchmark::State& state)
{
    const auto folder = journal_of(state.range(0)).folder();
    int plant = 0;
    for (auto _ : state) {
        plant = plant % kPlants + 1;
        auto store = journal::HouseholdStore::open(folder).value();
        benchmark::DoNotOptimize(store.measurements(plant).value());
        benchmark::DoNotOptimize(journal::PhotoBook{store}.photos(plant).value());
    }
    state.SetComplexityN(state.range(0));
}

/// What the verdicts of all plants rest on: a tenth or so of the measurements.
void leading_measures(benchmark::State& state)
{
    const auto store = journal::HouseholdStore::open(journal_of(state.range(0)).folder()).value();
    for (auto _ : state) {
        benchmark::DoNotOptimize(journal::leading_measurements(store).value());
    }
    state.SetComplexityN(state.range(0));
}

/// One, ten and a hundred thousand entries, and those of the bar; photos are a tenth more.
void journal_sizes(benchmark::internal::Benchmark* bench)
{
    for (const int entries : {1'000, 10'000, 100'000, kMeasurements}) {
        bench->Arg(entries);
    }
    bench->Unit(benchmark::kMillisecond)->Complexity();
}
/// The same look through the file by SQLite alone, for comparison.
void sqlite_looks_through(benchmark::State& state)
{
    const auto file = journal_of(state.range(0)).folder() / "household.sqlite3";
    for (auto _ : state) {
        SQLite::Database database{file.string()};
        benchmark::DoNotOptimize(database.execAndGet("PRAGMA quick_check(1)").getString());
    }
    state.SetComplexityN(state.range(0));
}

/// The measurements of one plant read by SQLite alone, column by column, and kept nowhere.
void sqlite_reads_plant(benchmark::State& state)
{
    const auto file = journal_of(state.range(0)).folder() / "household.sqlite3";
    int plant = 0;
    for (auto _ : state) {
        plant = plant % kPlants + 1;
        SQLite::Database database{file.string()};
        SQLite::Statement rows{database, "SELECT * FROM measurements WHERE plant_id = ? ORDER BY measured_on, id"};
        rows.bind(1, plant);
        while (rows.executeStep()) {
            for (int column = 0; column < rows.getColumnCount(); ++column) {
                benchmark::DoNotOptimize(rows.getColumn(column).getBytes());
            }
        }
    }
    state.SetComplexityN(state.range(0));
}
BENCHMARK(sqlite_looks_through)->Apply(journal_sizes);
BENCHMARK(sqlite_reads_plant)->Apply(journal_sizes);
BENCHMARK(yardstick)->Unit(benchmark::kMillisecond);
BENCHMARK(opens_first)->Apply(journal_sizes);
BENCHMARK(plant_page)->Apply(journal_sizes);
BENCHMARK(whole_plant)->Apply(journal_sizes);
BENCHMARK(leading_measures)->Apply(journal_sizes);

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
