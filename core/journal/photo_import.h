#pragma once

#include "core/journal/photo_book.h"
#include "core/photo/photo_file.h"

#include <atomic>
#include <functional>
#include <map>
#include <set>

namespace lathhouse::journal {

struct ImportWishes {
    /// The plants that a file shows; none where this is empty.
    std::function<std::vector<home::PlantId>(const std::filesystem::path&)> plants;
    /// For photos whose EXIF names no date; without it the file's own time counts.
    std::optional<std::chrono::local_seconds> taken;
    std::string time_zone; ///< IANA name, in which a file's time is told.
    calendar::Instant entered;
    photo::Limits limits = {};
    unsigned workers = 0; ///< Threads; 0 for one a processor.
};

enum class ImportOutcome { Added, Known, Refused };
struct ImportedFile {
    std::filesystem::path file;
    ImportOutcome outcome;
    std::optional<home::Photo> photo; ///< None where it was refused.
    Said trouble;                     ///< Why it was refused, or what of it could not be read; empty where nothing.
};
struct ImportReport {
    std::vector<ImportedFile> files; ///< In the order given; without those that were not come to.
    bool cancelled = false;
    std::optional<Error> stopped; ///< What made the import end early (disk full, database locked).
    std::size_t count(ImportOutcome outcome) const;
};

/// Called from the caller's thread after each batch.
using ImportProgress = std::function<void(std::size_t done, std::size_t total)>;

/// Takes photos in. Each file is copied bit for bit to `photos/ab/SHA256.EXTENSION`: written under another name, synced,
/// renamed, and only then entered in the journal, so that at any moment each photo is whole or absent. Files that are
/// no sound photos are refused by name while the rest goes on; a second run over the same files finds those that are
/// done by their SHA-256. `cancel` may be set from any thread or a signal's handler; what is begun is finished.
ImportReport import_photos(HouseholdStore& store, std::span<const std::filesystem::path> files,
                           const ImportWishes& wishes, const ImportProgress& progress, const std::atomic<bool>& cancel);

/// Files in and below a folder whose names end as photos do, by name; hidden ones and links to folders are left out.
/// A file stands for itself. Errors: NotFound, Unreadable.
Result<std::vector<std::filesystem::path>> photo_files_in(const std::filesystem::path& file_or_folder);

/// Watches a folder into which a phone copies its photos.
class FolderWatch {
public:
    explicit FolderWatch(std::filesystem::path folder) : folder_(std::move(folder)) {}
    /// The files whose size and time are as they were at the call before, and that were not given yet, so that half a
    /// copy is not taken for a photo. Errors: as photo_files_in.
    Result<std::vector<std::filesystem::path>> settled();

private:
    using State = std::pair<std::uintmax_t, std::filesystem::file_time_type>;
    std::filesystem::path folder_;
    std::map<std::filesystem::path, State> seen_;
    std::map<std::filesystem::path, State> given_;
};

/// Whether a file's name fits a pattern in which `*` is anything and `{plant}` a plant's name or id: blanks, dashes and
/// underscores are alike, as are capitals. Gives the plant of the longest name that fits.
std::optional<home::PlantId> plant_by_name(const std::string& pattern, const std::filesystem::path& file,
                                           std::span<const home::Plant> plants);

} // namespace lathhouse::journal
