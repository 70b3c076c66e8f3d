#include "app/models/data_work.h"

#include <algorithm>
#include <string>
#include <system_error>
#include <utility>

namespace lathhouse::models {

Progress LongWay::progress_of(const std::shared_ptr<LongWay>& way)
{
    return [way](std::uint64_t done, std::uint64_t whole) {
        way->whole_ = whole;
        way->done_ = done;
        return way->stopped_ ? GoOn::No : GoOn::Yes;
    };
}

double LongWay::share() const
{
    const auto whole = static_cast<double>(whole_.load());
    return whole > 0.0 ? std::clamp(static_cast<double>(done_.load()) / whole, 0.0, 1.0) : 0.0;
}

void LongWay::set_photo_ends(std::vector<std::uint64_t> ends)
{
    photo_ends_ = std::move(ends);
    counts_photos_ = !photo_ends_.empty();
}

std::size_t LongWay::photos_within(std::uint64_t bytes) const
{
    return static_cast<std::size_t>(std::ranges::upper_bound(photo_ends_, bytes) - photo_ends_.begin());
}

std::vector<std::uint64_t> photo_ends(const std::filesystem::path& folder, std::uint64_t before)
{
    namespace fs = std::filesystem;
    std::vector<std::pair<std::string, std::uint64_t>> files;
    std::error_code failure;
    for (fs::recursive_directory_iterator entry{folder / "photos", failure}, end; !failure && entry != end;
         entry.increment(failure)) {
        std::error_code of_file;
        if (fs::is_regular_file(entry->symlink_status(of_file))) {
            const auto bytes = entry->file_size(of_file);
            files.emplace_back(entry->path().lexically_relative(folder).generic_string(), of_file ? 0 : bytes);
        }
    }
    std::ranges::sort(files);
    std::vector<std::uint64_t> ends;
    for (const auto& [path, bytes] : files) {
        before += bytes;
        ends.push_back(before);
    }
    return ends;
}

} // namespace lathhouse::models
