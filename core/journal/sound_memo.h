#pragma once

#include <filesystem>

// Of use inside core/journal only.

namespace lathhouse::journal {

/// Whether a large database was looked through and found sound by an earlier run, and nobody has written to it since (its
/// place on the disk, size and time of writing are the same). Never of one under 8 MB, which is looked through in no
/// time, nor where it was written within two seconds of the look: the clocks of files are coarse. What a disk spoils by
/// itself is found by `check` and by SQLite where it reads it, not by this.
bool was_found_sound(const std::filesystem::path& file);

/// Remembers that look in `thumbnails/`, which may be deleted at any time. A folder that cannot be written keeps nothing.
void remember_sound(const std::filesystem::path& file);

} // namespace lathhouse::journal
