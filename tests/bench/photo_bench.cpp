// Times of core/photo and of an import, printed; they judge nothing. Run by hand: photo_bench [PHOTOS].

#include "core/home/demonstration.h"
#include "core/journal/durable_file.h"
#include "core/journal/photo_import.h"
#include "core/photo/greenness.h"
#include "core/photo/sha256.h"
#include "core/photo/thumbnail.h"
#include "tests/photo/sample_photos.h"

#include <chrono>
#include <cstdio>
#include <functional>
#include <string>
#include <thread>
#include <vector>

#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace lathhouse;
namespace fs = std::filesystem;

namespace {

double seconds_of(const std::function<void()>& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>{std::chrono::steady_clock::now() - start}.count();
}

/// Runs over all files with two threads, each taking every second one.
double on_two_cores(const std::vector<fs::path>& files, const std::function<void(std::size_t)>& each)
{
    return seconds_of([&] {
        std::vector<std::jthread> threads;
        for (std::size_t first = 0; first < 2; ++first) {
            threads.emplace_back([&, first] {
                for (std::size_t i = first; i < files.size(); i += 2) {
                    each(i);
                }
            });
        }
    });
}

} // namespace

int main(int argc, char** argv)
{
    const std::size_t count = argc > 1 ? std::stoul(argv[1]) : 200;
    std::string pattern = (fs::temp_directory_path() / "photo_bench_XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
        return 1;
    }
    const fs::path folder = pattern;

    const auto large = photo::drawn_plant(4000, 3000);
    const auto frame = photo::Region::frame(4000, 3000);
    std::vector<double> times;
    for (int i = 0; i < 9; ++i) {
        times.push_back(seconds_of([&] { (void)photo::green_cover(large, frame); }));
    }
    std::ranges::sort(times);
    std::printf("green cover of 12 megapixels: median %.1f ms, most %.1f ms\n", 1000 * times[4], 1000 * times.back());

    std::vector<fs::path> files;
    fs::create_directories(folder / "in");
    for (std::size_t i = 0; i < count; ++i) {
        files.push_back(folder / "in" / ("p" + std::to_string(1000 + i) + ".jpg"));
    }
    on_two_cores(files, [&](std::size_t i) {
        // Twenty drawings; the EXIF makes each file another one.
        auto exif = photo::sample_exif();
        *exif.taken += std::chrono::minutes{i};
        photo::write_bytes(files[i],
                           photo::jpeg_with(photo::drawn_plant(4000, 3000, static_cast<unsigned>(i % 20) + 1), exif));
    });
    std::printf("%zu photos of 4000 x 3000, %.1f MB each\n", count,
                static_cast<double>(fs::file_size(files.front())) / 1e6);
    sync();

    std::vector<photo::Bytes> held(files.size());
    std::vector<std::string> digests(files.size());
    on_two_cores(files, [&](std::size_t i) { held[i] = photo::read_bytes(files[i]).value(); }); // Warm.
    const double decode = on_two_cores(files, [&](std::size_t i) { (void)photo::read_photo(held[i], "x", photo::kThumbnailSide); });
    const double hash = on_two_cores(files, [&](std::size_t i) { digests[i] = photo::sha256_of(held[i]); });
    const double write = on_two_cores(files, [&](std::size_t i) {
        (void)journal::write_durably(folder / "out" / digests[i].substr(0, 2) / digests[i], held[i]);
    });
    held.clear();
    held.shrink_to_fit();
    fs::remove_all(folder / "out");
    sync();

    const auto made = home::demonstration({.today = calendar::Date{2026, 11, 25}}).value();
    auto store = journal::HouseholdStore::create(folder / "home", made.household, {}).value();
    const std::atomic<bool> cancel = false;
    const journal::ImportWishes wishes{
        .plants = {}, .taken = {}, .time_zone = "UTC", .entered = calendar::start_of_day_utc(calendar::Date{2026, 11, 25}), .workers = 2};
    std::size_t added = 0;
    const double import = seconds_of([&] {
        added = journal::import_photos(store, files, wishes, {}, cancel).count(journal::ImportOutcome::Added);
    });
    const double again = seconds_of([&] { (void)journal::import_photos(store, files, wishes, {}, cancel); });
    const double parts = decode + hash + write;
    std::printf("two cores: decode (reduced) %.2f s, hash %.2f s, write %.2f s: together %.2f s\n", decode, hash, write, parts);
    std::printf("import of %zu: %.2f s, %.0f %% of that speed; again, all known: %.2f s\n", added, import,
                100.0 * parts / import, again);
    fs::remove_all(folder);
    return 0;
}
