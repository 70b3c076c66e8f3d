// Green cover, and an import of photos beside its parts (decoding at reduced size, hashing, writing) measured separately on
// two cores: photo_bench [--photos N] [Google Benchmark's own].

#include "core/home/demonstration.h"
#include "core/journal/durable_file.h"
#include "core/journal/photo_import.h"
#include "core/photo/greenness.h"
#include "core/base/sha256.h"
#include "core/photo/thumbnail.h"
#include "tests/bench/recorded_times.h"
#include "tests/photo/sample_photos.h"

#ifdef LATHHOUSE_BENCH_OPENCV
#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>
#endif

#include <atomic>
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

#ifdef LATHHOUSE_BENCH_OPENCV
/// Excess green and Otsu's threshold by OpenCV on the same pixels, on one core; the share of green.
double green_share_of_opencv(const photo::Picture& picture)
{
    cv::setNumThreads(1);
    const cv::Mat pixels(picture.height, picture.width, CV_8UC3, const_cast<std::uint8_t*>(picture.at(0, 0)));
    cv::Mat excess;
    cv::transform(pixels, excess, cv::Mat(cv::Matx13f(-1.0F, 2.0F, -1.0F))); // Cut to 0..255 as it is stored.
    cv::Mat parted;
    cv::threshold(excess, parted, 0.0, 255.0, cv::THRESH_BINARY | cv::THRESH_OTSU);
    return static_cast<double>(cv::countNonZero(parted)) / static_cast<double>(picture.pixels());
}
#endif

} // namespace

int main(int argc, char** argv)
{
    std::size_t count = 60;
    for (int i = 1; i + 1 < argc; ++i) {
        if (std::string{argv[i]} == "--photos") {
            count = std::stoul(argv[i + 1]);
        }
    }
    std::string pattern = (fs::temp_directory_path() / "photo_bench_XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
        return 1;
    }
    const fs::path folder = pattern;

    const auto large = photo::drawn_plant(4000, 3000);
    const auto frame = photo::Region::frame(4000, 3000);
    RecordedTimes taken;
    photo::GreenCover cover{};
    auto copy = large;
    for (int i = 0; i < 9; ++i) {
        taken.add("green_cover", seconds_of([&] { cover = photo::green_cover(large, frame); }));
        taken.add("pixels_copied", seconds_of([&] {
                      std::ranges::copy(large.rgb, copy.rgb.begin());
                      benchmark::DoNotOptimize(copy.rgb.data());
                  }));
#ifdef LATHHOUSE_BENCH_OPENCV
        double share = 0.0;
        taken.add("green_cover_of_opencv", seconds_of([&] { share = green_share_of_opencv(large); }));
        taken.tell("green_cover_of_opencv", "green_share", share);
#endif
    }
    taken.tell("green_cover", "green_share", cover.share());

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
    sync();

    std::vector<photo::Bytes> held(files.size());
    std::vector<std::string> digests(files.size());
    on_two_cores(files, [&](std::size_t i) { held[i] = photo::read_bytes(files[i]).value(); }); // Warm.
    const auto made = home::demonstration({.today = calendar::Date{2026, 11, 25}}).value();
    const std::atomic<bool> cancel = false;
    const journal::ImportWishes wishes{
        .plants = {}, .taken = {}, .time_zone = "UTC", .entered = calendar::start_of_day_utc(calendar::Date{2026, 11, 25}), .workers = 2};
    std::size_t added = 0;
    for (int round = 0; round < 3; ++round) {
        const double before_parts = processor_seconds(RUSAGE_SELF);
        const double decode =
            on_two_cores(files, [&](std::size_t i) { (void)photo::read_photo(held[i], "x", photo::kThumbnailSide); });
        const double hash = on_two_cores(files, [&](std::size_t i) { digests[i] = sha256_of(held[i]); });
        const double write = on_two_cores(files, [&](std::size_t i) {
            (void)journal::write_durably(folder / "out" / digests[i].substr(0, 2) / digests[i], held[i]);
        });
        taken.add("import_parts_processor", processor_seconds(RUSAGE_SELF) - before_parts);
        fs::remove_all(folder / "out");
        auto store = journal::HouseholdStore::create(folder / "home", made.household, {}).value();
        sync();
        const double before_import = processor_seconds(RUSAGE_SELF);
        taken.add("import", seconds_of([&] {
                      added = journal::import_photos(store, files, wishes, {}, cancel).count(journal::ImportOutcome::Added);
                  }));
        taken.add("import_processor", processor_seconds(RUSAGE_SELF) - before_import);
        taken.add("import_again", seconds_of([&] { (void)journal::import_photos(store, files, wishes, {}, cancel); }));
        fs::remove_all(folder / "home");
        taken.add("photos_decoded_reduced", decode);
        taken.add("photos_hashed", hash);
        taken.add("photos_written", write);
        taken.add("import_parts_together", decode + hash + write);
    }
    taken.tell("import", "photos", static_cast<double>(added));
    taken.tell("import", "megabytes_each", static_cast<double>(fs::file_size(files.front())) / 1e6);
    fs::remove_all(folder);
    return taken.tell_all(argc, argv);
}
