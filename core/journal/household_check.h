#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::journal {

/// What a look through a household may find.
enum class FindingKind {
    DatabaseDamaged, ///< It fails SQLite's own check, or rows break a rule of their table.
    BrokenReference, ///< A row names another one that is not there.
    PhotoMissing,    ///< The journal names it and the folder has not.
    PhotoAltered,    ///< Its content has another digest than its name.
    PhotoUnreadable,
    PhotoUnknown,    ///< The folder has it and the journal does not name it.
    MeasuredPhotoUnknown, ///< A measurement names a photo that the journal does not have.
    FileUnknown,     ///< Something that this program did not put there.
    LeftOver,        ///< What a program that was killed had begun.
};

/// `database_damaged` and so on.
std::string_view to_string(FindingKind kind);
/// Whether something is lost or wrong, rather than superfluous.
bool is_fault(FindingKind kind);

struct Finding {
    FindingKind kind;
    std::string where; ///< A file below the household's folder, or a table with the row's id.
    Said what;         ///< More about it; may be empty.
};

struct CheckReport {
    std::vector<Finding> findings;
    int schema = 0;        ///< 0 where the database could not be read.
    bool steps_due = false; ///< Opening the household would bring it up to date.
    std::uint64_t photos = 0;
    std::uint64_t photo_bytes = 0;
    bool sound() const;
};

/// Looks through a household and changes nothing of it: the database by SQLite's integrity check and its foreign keys,
/// every file below `photos/` by its digest, every photo that the journal names, and what else lies in the folder.
/// Progress is out of the bytes of the photos.
/// Errors: NotFound, NotAHousehold, TooNew, Locked; Unreadable; Unavailable where told to stop.
Result<CheckReport> check_household(const std::filesystem::path& folder, const Progress& progress = {});

} // namespace lathhouse::journal
