#pragma once

#include "core/calendar/date.h"
#include "core/photo/exif.h"

#include <filesystem>
#include <optional>

// Files that must be whole or absent whatever happens; of use inside core/journal only.

namespace lathhouse::journal {

/// Writes under another name in the same folder (which is made), syncs, and renames. The folder itself is not synced.
/// Errors: Unwritable with what the system says (disk full, no right).
Result<void> write_durably(const std::filesystem::path& file, photo::ByteView bytes);
/// The same without syncing and without complaint: for what can be made again.
void write_cached(const std::filesystem::path& file, photo::ByteView bytes);
void sync_folder(const std::filesystem::path& folder);
/// Removes what runs that were killed left behind: files of write_durably that are older than an hour.
void remove_leftovers(const std::filesystem::path& folder);
/// When the file was last written; nullopt where it cannot be asked or says a year outside 1 to 9999.
std::optional<calendar::Instant> modified_at(const std::filesystem::path& file);

} // namespace lathhouse::journal
