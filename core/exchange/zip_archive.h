#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::exchange {

/// What a file was when it went into the archive.
struct PackedFile {
    std::uint64_t bytes;
    std::string sha256;
};

/// Writes a zip archive, in one go. The one user of libzip, with ZipReader.
class ZipWriter {
public:
    /// Whether a file's content is squeezed; photos are so already, and it would take minutes for nothing.
    enum class Squeeze { Yes, No };
    /// A file that is read, and its digest computed, while it is written. packed: told of it once it is in.
    void add_file(std::string name, std::filesystem::path file, Squeeze squeeze,
                  std::function<void(const PackedFile&)> packed);
    /// A text that is asked for only once everything added before it is in.
    void add_text(std::string name, std::function<std::string()> text);
    /// Writes in the order of adding. archive: replaced where it is there. whole_bytes: what progress is out of.
    /// Errors: Unwritable (no room, no right, told to stop), Unreadable (a file that was added).
    Result<void> write(const std::filesystem::path& archive, const Progress& progress, std::uint64_t whole_bytes);

private:
    struct Entry {
        std::string name;
        std::filesystem::path file; ///< Empty for a text.
        Squeeze squeeze;
        std::function<void(const PackedFile&)> packed;
        std::function<std::string()> text;
    };
    std::vector<Entry> entries_;
};

/// What an archive from anywhere may have.
struct ZipLimits {
    std::uint64_t entries = 2'000'000;
    std::uint64_t unpacked_bytes = std::uint64_t{1} << 42; ///< 4 TiB.
    /// How many times its own size an archive may unpack to, counted above 64 MB. Deflate reaches 1,032 with nothing
    /// but zeros; photos and journals stay under 20.
    std::uint64_t times = 100;
};

struct ZipEntry {
    std::string name; ///< UTF-8 as checked by `bag_path_fault`, without a slash at its end.
    std::uint64_t bytes;
    std::uint64_t index;
};

/// Reads a zip archive that may be hostile.
class ZipReader {
public:
    /// Looks through the directory of the archive, without unpacking anything.
    /// Errors: NotFound, Unreadable; Malformed for what is no zip or a torn one, and, naming the entry, for paths that
    /// lead out or are not plain, links and other special files, two entries of one name (without case), a file where
    /// another entry has a folder, encrypted entries, and what is beyond the limits.
    static Result<ZipReader> open(const std::filesystem::path& archive, const ZipLimits& limits = {});
    ZipReader(ZipReader&&) noexcept;
    ZipReader& operator=(ZipReader&&) noexcept;
    ~ZipReader();

    /// Files in the archive's order; folders are left out.
    const std::vector<ZipEntry>& files() const { return files_; }
    const ZipEntry* find(std::string_view name) const;
    /// Hands over the content piece by piece. `take` may refuse with an error, which is given back.
    /// Errors: Damaged where it does not unpack, has another check sum or another length than the archive says.
    Result<void> read(const ZipEntry& entry, const std::function<Result<void>(std::string_view)>& take);
    /// Errors: as `read`, Malformed above `most_bytes`.
    Result<std::string> text(const ZipEntry& entry, std::uint64_t most_bytes);

private:
    struct Inside;
    ZipReader(std::unique_ptr<Inside> inside, std::filesystem::path archive);
    std::unique_ptr<Inside> inside_;
    std::filesystem::path archive_;
    std::vector<ZipEntry> files_; ///< In the archive's order.
    std::vector<std::size_t> by_name_;
};

} // namespace lathhouse::exchange
