#pragma once

#include "core/base/result.h"

#include <filesystem>

namespace lathhouse {

/// A folder beside a file or folder that is to be made, in which it is made first, so that its own name appears only
/// once it is whole. The name begins with a point, which keeps it out of sight. It is removed with all in it when this
/// goes; where the program was killed it stays, and the next one for the same name removes it.
class TemporaryFolder {
public:
    /// Makes `.NAME.PID.part`, and the folders above it; those of the same name whose program is gone are removed.
    /// Errors: Unwritable.
    static Result<TemporaryFolder> beside(const std::filesystem::path& target);

    TemporaryFolder(TemporaryFolder&& other) noexcept;
    TemporaryFolder& operator=(TemporaryFolder&&) = delete;
    ~TemporaryFolder();

    const std::filesystem::path& path() const { return path_; }
    /// It has been renamed, or is to stay.
    void keep() { path_.clear(); }

private:
    explicit TemporaryFolder(std::filesystem::path path) : path_(std::move(path)) {}
    std::filesystem::path path_;
};

/// Whether a file's name is one that this program gives to what is not yet whole: it ends in `.part`, begins with
/// `.incoming-` (photos that are coming in), or has `.part.` in it and begins with a point.
bool is_temporary_name(const std::filesystem::path& file);

/// The path made absolute and without a separator at its end, so that it has a name and a parent.
std::filesystem::path with_name(const std::filesystem::path& path);

/// Renames where nothing of the new name is there (an empty folder gives way to a folder).
/// Errors: Unwritable, also where something of that name has appeared.
Result<void> rename_unless_there(const std::filesystem::path& from, const std::filesystem::path& to);

/// Hands a file's or folder's content to the disk, so that a power cut after it loses nothing of it.
/// Errors: Unwritable.
Result<void> flush_to_disk(const std::filesystem::path& file_or_folder);
/// The same for everything on the file system of a folder. Errors: Unwritable.
Result<void> flush_all_to_disk(const std::filesystem::path& folder);

} // namespace lathhouse
