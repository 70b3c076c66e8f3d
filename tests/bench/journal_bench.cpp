#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/home/photo.h"
#include "core/journal/household_store.h"
#include "core/journal/leading_measures.h"
#include "core/journal/photo_book.h"
#include "core/journal/plant_page.h"

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

/// A household of sixty plants with ten years of events, so many measurements, photos by the tenth of that (rows alone:
/// their files are not there), made once and removed at the end.
class LargeJournal {
public:
    explicit LargeJournal(int measurements = kMeasurements)
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_bench_XXXXXX").string();
        root_ = mkdtemp(pattern.data());
        const auto made =
            home::demonstration({.today = kToday, .plants = kPlants, .spots = 20, .years = 10}).value();
        auto store = journal::HouseholdStore::create(folder(), made.household, made.history).value();
        std::vector<home::Measurement> all;
        const auto kinds = home::every_measurement_kind();
        for (int number = 0; number < measurements; ++number) {
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
        std::vector<home::Photo> photos;
        for (int number = 0; number < measurements / 10; ++number) {
            const auto taken = calendar::start_of_day_utc(kToday - calendar::Days{number % 3650});
            std::string digest = std::to_string(number);
            digest.insert(0, 64 - digest.size(), '0');
            photos.push_back({.id = 0,
                              .sha256 = digest,
                              .extension = "jpg",
                              .bytes = 1'400'000,
                              .width = 4000,
                              .height = 3000,
                              .taken = std::chrono::local_seconds{taken.time_since_epoch()},
                              .zone_offset = {},
                              .taken_from = home::TakenFrom::Exif,
                              .original_name = "IMG_" + std::to_string(number) + ".jpg",
                              .position = {},
                              .entered = taken,
                              .plants = {1 + number % kPlants}});
        }
        if (!journal::PhotoBook{store}.keep(photos)) {
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

/// A journal of so many entries, made when it is first asked for.
const LargeJournal& journal_of(std::int64_t entries)
{
    static std::map<std::int64_t, std::unique_ptr<LargeJournal>> kept;
    auto& one = kept[entries];
    if (!one) {
        one = std::make_unique<LargeJournal>(static_cast<int>(entries));
    }
    return *one;
}

const LargeJournal& large()
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
void plant_records(benchmark::State& state)
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
BENCHMARK(plant_records)->Apply(journal_sizes);
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
