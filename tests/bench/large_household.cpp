#include "tests/bench/large_household.h"

#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/home/photo.h"
#include "core/journal/household_store.h"
#include "core/journal/photo_book.h"

#include <chrono>
#include <cstdlib>
#include <span>
#include <string>
#include <vector>

namespace lathhouse {

LargeHousehold::LargeHousehold(int measurements, calendar::Date today)
{
    auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_bench_XXXXXX").string();
    root_ = mkdtemp(pattern.data());
    const auto made = home::demonstration({.today = today, .plants = kPlants, .spots = 20, .years = 10}).value();
    auto store = journal::HouseholdStore::create(folder(), made.household, made.history).value();
    std::vector<home::Measurement> all;
    const auto kinds = home::every_measurement_kind();
    for (int number = 0; number < measurements; ++number) {
        const auto kind = kinds[static_cast<std::size_t>(number / kPlants) % kinds.size()];
        const bool share = home::unit_of(kind) == home::MeasurementUnit::Share;
        all.push_back({1 + number % kPlants,
                       kind,
                       today - calendar::Days{number % 3650},
                       {share ? 0.3 : 20.0 + number % 30, share ? 0.31 : 21.0},
                       home::usual_method(kind),
                       calendar::start_of_day_utc(today)});
    }
    if (!store.record(std::span<const home::Measurement>{all})) {
        std::abort();
    }
    std::vector<home::Photo> photos;
    for (int number = 0; number < measurements / 10; ++number) {
        const auto taken = calendar::start_of_day_utc(today - calendar::Days{number % 3650});
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

LargeHousehold::~LargeHousehold()
{
    std::filesystem::remove_all(root_);
}

double LargeHousehold::file_megabytes() const
{
    return static_cast<double>(std::filesystem::file_size(folder() / "household.sqlite3")) / 1048576.0;
}

} // namespace lathhouse
