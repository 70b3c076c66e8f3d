#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/exchange/zip_archive.h"

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::exchange {

// A bag: files of any kind with a list of their digests, so that whoever holds it can prove it whole with common tools
// (`sha256sum -c`). Source: RFC 8493, "The BagIt File Packaging Format (V1.0)", sections 2 and 4.

/// A file for a bag.
struct BagFile {
    std::string path; ///< Below `data/`.
    std::filesystem::path file;
    ZipWriter::Squeeze squeeze = ZipWriter::Squeeze::No;
};

/// A line of `bag-info.txt`. Neither side has a line end.
struct BagLabel {
    std::string name;
    std::string value;
};

struct BagWritten {
    std::uint64_t files;
    std::uint64_t bytes;         ///< Of the files.
    std::uint64_t archive_bytes; ///< Of the zip.
};

/// Writes a bag as one zip with a single folder at its top, named as the archive is. `Bagging-Date` and `Payload-Oxum`
/// come to the labels by themselves. Read back as `Bag` reads it before it is reported as written.
/// Errors: as ZipWriter::write; Damaged where reading back finds another content than was written.
Result<BagWritten> write_bag(const std::filesystem::path& archive, std::span<const BagFile> files,
                             std::span<const BagLabel> labels, calendar::Date bagged_on, const Progress& progress);

/// A file of a bag with the digest that its manifest gives.
struct BagEntry {
    std::string path; ///< Below `data/`.
    std::uint64_t bytes;
    std::string sha256;
};

/// A bag that was looked through; its files' content is not yet compared with the manifest.
class Bag {
public:
    /// Errors: as ZipReader::open; Malformed for a zip that is no bag, of a version that is not known, without a
    /// SHA-256 manifest, one whose files lie elsewhere (fetch.txt), or whose manifest and files are not the same set;
    /// Damaged where a tag file is not what the tag manifest says.
    static Result<Bag> open(const std::filesystem::path& archive, const ZipLimits& limits = {});

    const std::vector<BagEntry>& files() const { return files_; }
    std::uint64_t bytes() const { return bytes_; }
    /// Of `bag-info.txt`; empty where it does not say.
    std::string label(std::string_view name) const;
    /// What is odd and yet no fault by the standard: a sum of sizes that is another, tag files that nobody lists.
    const std::vector<std::string>& oddities() const { return oddities_; }

    /// Unpacks those files that `wanted` says (all are read and compared) below an existing empty folder; without one
    /// it only compares. Each is written and on the disk when this returns.
    /// Errors: Damaged for a content that is not what the manifest says; Unwritable (no room, no right, told to stop).
    Result<void> unpack(const std::filesystem::path* folder,
                        const std::function<bool(const BagEntry&)>& wanted, const Progress& progress);

private:
    Bag(ZipReader zip, std::filesystem::path archive) : zip_(std::move(zip)), archive_(std::move(archive)) {}
    Result<void> read_tags();
    Result<void> read_manifest();
    Result<void> compare_tags();
    Error malformed(const Said& what) const;

    ZipReader zip_;
    std::filesystem::path archive_;
    std::string top_; ///< The bag's folder in the archive with its slash; empty where the bag is the archive.
    std::vector<BagEntry> files_;
    std::vector<BagLabel> labels_;
    std::vector<std::string> oddities_;
    std::uint64_t bytes_ = 0;
};

} // namespace lathhouse::exchange
