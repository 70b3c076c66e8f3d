#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace lathhouse::journal {

/// The backup of a household that was made last on this machine, whichever program made it.
struct LastBackup {
    calendar::Date on;
    std::filesystem::path file;      ///< Where it was written; whether it is still there nobody looks.
    std::uint64_t entries_since = 0; ///< Entered after it was made, undone ones among them.
};

/// Remembers a backup in `backups/last-backup.json` of the household's folder. last_entry: the number of the entry (table
/// `entries`) that was the last in it. A folder that cannot be written keeps nothing, which is no error: the backup is
/// there all the same.
void remember_backup(const std::filesystem::path& folder, calendar::Date on, const std::filesystem::path& file,
                     std::int64_t last_entry);

/// nullopt where none is known: none was made, or the file that tells of it is gone or damaged. A household that was
/// restored knows of none, since that file is in no backup.
/// Errors: as open_to_read.
Result<std::optional<LastBackup>> last_backup_of(const std::filesystem::path& folder);

} // namespace lathhouse::journal
