#include "core/journal/photo_import.h"

#include "core/calendar/time_zone.h"
#include "core/journal/durable_file.h"
#include "core/base/sha256.h"
#include "core/photo/thumbnail.h"

#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <variant>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

/// A file that a worker has dealt with: a photo whose file is in place, or an error.
struct Prepared {
    std::size_t index;
    Result<home::Photo> photo;
    Said trouble;
    bool new_file = false;
};

/// Errors of the household's own disk end the whole import; those of a photo only concern that.
struct WriteFailed {
    Error error;
};

class Importer {
public:
    Importer(HouseholdStore& store, std::span<const fs::path> files, const ImportWishes& wishes,
             const std::atomic<bool>& cancel)
        : book_(store), files_(files), wishes_(wishes), cancel_(cancel)
    {
        if (auto zone = calendar::TimeZone::named(wishes.time_zone)) {
            zone_ = *std::move(zone);
        }
    }

    ImportReport run(const ImportProgress& progress)
    {
        remove_leftovers(book_.folder() / "photos");
        const auto wanted = wishes_.workers != 0 ? wishes_.workers : std::max(1U, std::thread::hardware_concurrency());
        running_ = static_cast<unsigned>(std::min<std::size_t>(wanted, std::max<std::size_t>(1, files_.size())));
        std::vector<std::jthread> workers;
        for (unsigned i = 0; i < running_.load(); ++i) {
            workers.emplace_back([this] { work(); });
        }
        for (;;) {
            auto batch = next_batch();
            if (batch.empty()) {
                break;
            }
            if (!report_.stopped) {
                commit(std::move(batch));
            }
            if (progress) {
                progress(report_.files.size(), files_.size());
            }
        }
        workers.clear();
        if (!report_.stopped && failed_) {
            report_.stopped = failed_;
        }
        report_.cancelled = cancel_.load() && report_.files.size() < files_.size();
        std::ranges::sort(order_, {}, &std::pair<std::size_t, std::size_t>::first);
        std::vector<ImportedFile> sorted;
        sorted.reserve(order_.size());
        for (const auto& [index, place] : order_) {
            sorted.push_back(std::move(report_.files[place]));
        }
        report_.files = std::move(sorted);
        return std::move(report_);
    }

private:
    void work()
    {
        for (;;) {
            const auto index = next_.fetch_add(1);
            if (index >= files_.size() || cancel_.load() || stop_.load()) {
                break;
            }
            auto prepared = prepare(index);
            const std::lock_guard lock{mutex_};
            if (auto* failure = std::get_if<WriteFailed>(&prepared)) {
                failed_ = failure->error;
                stop_ = true;
                break;
            }
            ready_.push_back(std::get<Prepared>(std::move(prepared)));
            changed_.notify_one();
        }
        const std::lock_guard lock{mutex_};
        --running_;
        changed_.notify_one();
    }

    std::variant<Prepared, WriteFailed> prepare(std::size_t index)
    {
        const auto& file = files_[index];
        const auto name = file.filename().string();
        const auto refused = [&](const Error& error) { return Prepared{index, error, {}}; };
        const auto bytes = photo::read_bytes(file, wishes_.limits);
        if (!bytes) {
            return refused(bytes.error());
        }
        auto facts = photo::read_facts(*bytes, name, wishes_.limits);
        if (!facts) {
            return refused(facts.error());
        }
        home::Photo photo{.id = 0,
                          .sha256 = sha256_of(*bytes),
                          .extension = std::string{photo::extension_of(facts->format)},
                          .bytes = static_cast<std::int64_t>(bytes->size()),
                          .width = facts->width,
                          .height = facts->height,
                          .taken = {},
                          .zone_offset = {},
                          .taken_from = home::TakenFrom::Exif,
                          .original_name = name,
                          .position = facts->exif.position,
                          .entered = wishes_.entered};
        if (wishes_.plants) {
            photo.plants = wishes_.plants(file);
        }
        date(photo, facts->exif, file);
        const auto target = book_.file_of(photo);
        const auto thumbnail = book_.thumbnail_of(photo);
        std::error_code failure;
        // A file of that name was complete when it got it, so that a second run need not unpack it again.
        const bool there = fs::file_size(target, failure) == bytes->size() && !failure;
        if (!there || !fs::exists(thumbnail, failure)) {
            const auto small = photo::thumbnail_of(*bytes, name, wishes_.limits);
            if (!small) {
                return refused(small.error());
            }
            if (!there) {
                if (const auto written = write_durably(target, *bytes); !written) {
                    return WriteFailed{written.error()};
                }
            }
            // Only a cache: neither synced nor missed.
            write_cached(thumbnail, small->jpeg);
        }
        return Prepared{index, std::move(photo),
                        facts->exif.damaged ? said("%1: part of its EXIF is damaged; its date may be missing", name) : Said{},
                        !there};
    }

    void date(home::Photo& photo, const photo::Exif& exif, const fs::path& file) const
    {
        if (exif.taken) {
            photo.taken = *exif.taken;
            photo.zone_offset = exif.zone_offset;
            return;
        }
        if (wishes_.taken) {
            photo.taken = *wishes_.taken;
            photo.taken_from = home::TakenFrom::Given;
            return;
        }
        photo.taken_from = home::TakenFrom::FileTime;
        const auto written = modified_at(file).value_or(wishes_.entered);
        photo.taken = zone_ ? zone_->local(written) : std::chrono::local_seconds{written.time_since_epoch()};
    }

    /// Everything that is ready; waits for something. Empty where all is done.
    std::vector<Prepared> next_batch()
    {
        std::unique_lock lock{mutex_};
        changed_.wait(lock, [&] { return !ready_.empty() || running_ == 0; });
        return std::exchange(ready_, {});
    }

    void commit(std::vector<Prepared> batch)
    {
        std::vector<home::Photo> photos;
        std::set<fs::path> folders;
        for (const auto& one : batch) {
            if (one.photo) {
                photos.push_back(*one.photo);
                if (one.new_file) {
                    folders.insert(book_.file_of(*one.photo).parent_path());
                }
            }
        }
        for (const auto& folder : folders) {
            sync_folder(folder); // So that the names are on the disk before the journal speaks of them.
        }
        if (!folders.empty()) {
            sync_folder(book_.folder() / "photos");
        }
        const auto kept = book_.keep(photos);
        if (!kept) {
            report_.stopped = kept.error();
            stop_ = true;
            return;
        }
        std::size_t place = 0;
        for (auto& one : batch) {
            order_.emplace_back(one.index, report_.files.size());
            if (!one.photo) {
                report_.files.push_back({files_[one.index], ImportOutcome::Refused, {}, Said{one.photo.error()}});
                continue;
            }
            const auto& entry = (*kept)[place++];
            one.photo->id = entry.id;
            report_.files.push_back({files_[one.index], entry.was_known ? ImportOutcome::Known : ImportOutcome::Added,
                                     *std::move(one.photo), std::move(one.trouble)});
        }
    }

    PhotoBook book_;
    std::span<const fs::path> files_;
    const ImportWishes& wishes_;
    const std::atomic<bool>& cancel_;
    std::optional<calendar::TimeZone> zone_;
    std::atomic<std::size_t> next_ = 0;
    std::atomic<bool> stop_ = false;
    std::mutex mutex_; ///< Guards ready_, running_ and failed_.
    std::condition_variable changed_;
    std::vector<Prepared> ready_;
    std::atomic<unsigned> running_ = 0;
    std::optional<Error> failed_;
    ImportReport report_;
    std::vector<std::pair<std::size_t, std::size_t>> order_; ///< Index of the file, its place in the report.
};

} // namespace

std::size_t ImportReport::count(ImportOutcome outcome) const
{
    return static_cast<std::size_t>(std::ranges::count(files, outcome, &ImportedFile::outcome));
}

ImportReport import_photos(HouseholdStore& store, std::span<const fs::path> files, const ImportWishes& wishes,
                           const ImportProgress& progress, const std::atomic<bool>& cancel)
{
    return Importer{store, files, wishes, cancel}.run(progress);
}

} // namespace lathhouse::journal
