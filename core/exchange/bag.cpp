#include "core/exchange/bag.h"

#include "core/base/sha256.h"
#include "core/base/temporary_folder.h"
#include "core/exchange/bag_tags.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <set>
#include <unordered_map>
#include <utility>

namespace lathhouse::exchange {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view kManifest = "manifest-sha256.txt";
constexpr std::string_view kTagManifest = "tagmanifest-sha256.txt";
constexpr std::string_view kBagInfo = "bag-info.txt";
constexpr std::string_view kDeclaration = "bagit.txt";
constexpr std::string_view kDeclarationText = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
constexpr std::string_view kPayload = "data/";
constexpr std::uint64_t kLongestTag = 512'000'000; ///< Bytes; the manifest of a million photos has 140 MB.

std::string oxum(std::uint64_t bytes, std::uint64_t files)
{
    return std::to_string(bytes) + "." + std::to_string(files);
}

struct FileCloser {
    void operator()(std::FILE* file) const { std::fclose(file); }
};

/// A new file that is written piece by piece.
class NewFile {
public:
    explicit NewFile(fs::path path) : path_(std::move(path)), file_(std::fopen(path_.c_str(), "wbx")) {}
    Result<void> write(std::string_view piece)
    {
        return file_ && std::fwrite(piece.data(), 1, piece.size(), file_.get()) == piece.size() ? Result<void>{} : fault();
    }
    Result<void> finish()
    {
        if (!file_ || std::fflush(file_.get()) != 0) {
            return fault();
        }
        return {};
    }

private:
    Error fault() const
    {
        const bool full = errno == ENOSPC || errno == EFBIG || errno == EDQUOT;
        return full ? Error{ErrorCode::Unwritable, said("%1 could not be unpacked (the disk is full, or files may not "
                                                        "grow so large); make room or choose another place",
                                                        path_.filename().string())}
                    : Error{ErrorCode::Unwritable, said("%1 could not be unpacked (%2); choose another place",
                                                        path_.filename().string(), std::strerror(errno))};
    }
    fs::path path_;
    std::unique_ptr<std::FILE, FileCloser> file_;
};

} // namespace

Result<BagWritten> write_bag(const fs::path& archive, std::span<const BagFile> files, std::span<const BagLabel> labels,
                             calendar::Date bagged_on, const Progress& progress)
{
    std::error_code failure;
    std::uint64_t expected = 0;
    for (const auto& file : files) {
        const auto bytes = fs::file_size(file.file, failure);
        expected += failure ? 0 : bytes;
    }
    const auto top = bag_folder_name(archive.stem().string()) + "/";
    std::vector<ManifestLine> manifest;
    std::vector<ManifestLine> tags;
    std::uint64_t bytes = 0;
    ZipWriter zip;
    // Tag files are made when their turn comes, and their digests are then known to those after them.
    const auto add_tag = [&](std::string_view name, std::function<std::string()> make) {
        zip.add_text(top + std::string{name}, [&tags, name, make = std::move(make)] {
            auto text = make();
            tags.push_back({sha256_of(text), std::string{name}});
            return text;
        });
    };
    add_tag(kDeclaration, [] { return std::string{kDeclarationText}; });
    for (const auto& file : files) {
        auto path = std::string{kPayload} + file.path;
        zip.add_file(top + path, file.file, file.squeeze, [&manifest, &bytes, path](const PackedFile& packed) {
            manifest.push_back({packed.sha256, path});
            bytes += packed.bytes;
        });
    }
    add_tag(kBagInfo, [&] {
        std::vector<BagLabel> all{labels.begin(), labels.end()};
        all.push_back({"Bagging-Date", calendar::to_text(bagged_on)});
        all.push_back({"Payload-Oxum", oxum(bytes, manifest.size())});
        return bag_info_text(all);
    });
    add_tag(kManifest, [&] { return manifest_text(manifest); });
    zip.add_text(top + std::string{kTagManifest}, [&] { return manifest_text(tags); });

    // Writing and reading back are the two halves of the work.
    const auto whole = 2 * expected;
    if (auto written = zip.write(archive, progress, whole); !written) {
        return written.error();
    }
    if (auto flushed = flush_to_disk(archive); !flushed) {
        return flushed.error();
    }
    auto bag = Bag::open(archive);
    if (!bag) {
        return bag.error();
    }
    const Progress second_half = [&](std::uint64_t done, std::uint64_t) {
        return progress ? progress(expected + done, whole) : GoOn::Yes;
    };
    if (auto same = bag->unpack(nullptr, {}, second_half); !same) {
        return same.error();
    }
    if (bag->bytes() != bytes || bag->files().size() != files.size()) {
        return Error{ErrorCode::Damaged,
                     said("%1 does not hold what was written; the disk may be failing", archive.string())};
    }
    return BagWritten{files.size(), bytes, fs::file_size(archive, failure)};
}

Error Bag::malformed(const Said& what) const
{
    return {ErrorCode::Malformed, said("%1 %2; nothing was unpacked", archive_.string(), what)};
}

Result<Bag> Bag::open(const fs::path& archive, const ZipLimits& limits)
{
    auto zip = ZipReader::open(archive, limits);
    if (!zip) {
        return zip.error();
    }
    Bag bag{std::move(*zip), archive};
    for (const auto& read : {&Bag::read_tags, &Bag::read_manifest, &Bag::compare_tags}) {
        if (auto done = (bag.*read)(); !done) {
            return done.error();
        }
    }
    return bag;
}

Result<void> Bag::read_tags()
{
    // The bag is the archive or the one folder in it.
    if (zip_.find(kDeclaration) == nullptr && !zip_.files().empty()) {
        const auto& first = zip_.files().front().name;
        top_ = first.substr(0, first.find('/')) + "/";
    }
    const auto* declaration = zip_.find(top_ + std::string{kDeclaration});
    if (declaration == nullptr || std::ranges::any_of(zip_.files(), [&](const ZipEntry& entry) { return !entry.name.starts_with(top_); })) {
        return malformed(said("is no backup of this program (a BagIt bag in a zip, with bagit.txt in its one folder)"));
    }
    const auto declared = zip_.text(*declaration, 10'000);
    if (!declared) {
        return declared.error();
    }
    const auto lines = read_bag_info(*declared);
    const auto value = [&](std::string_view name) {
        const auto found = std::ranges::find(lines, name, &BagLabel::name);
        return found == lines.end() ? std::string{} : found->value;
    };
    if (value("BagIt-Version") != "1.0" && value("BagIt-Version") != "0.97") {
        return malformed(said("is a bag of version \"%1\"; 1.0 and 0.97 are read", value("BagIt-Version")));
    }
    if (value("Tag-File-Character-Encoding") != "UTF-8") {
        return malformed(said("has tag files that are not in UTF-8"));
    }
    if (zip_.find(top_ + "fetch.txt") != nullptr) {
        return malformed(said("is not whole: its fetch.txt names files that lie elsewhere, and nothing is fetched"));
    }
    if (const auto* info = zip_.find(top_ + std::string{kBagInfo})) {
        const auto text = zip_.text(*info, 10'000'000);
        if (!text) {
            return text.error();
        }
        labels_ = read_bag_info(*text);
    }
    return {};
}

Result<void> Bag::read_manifest()
{
    const auto* entry = zip_.find(top_ + std::string{kManifest});
    if (entry == nullptr) {
        return malformed(said("has no %1", kManifest));
    }
    const auto text = zip_.text(*entry, kLongestTag);
    if (!text) {
        return text.error();
    }
    const auto lines = read_manifest_text(*text);
    if (!lines) {
        return malformed(said("has a %1 whose %2", kManifest, lines.error()));
    }
    for (const auto& line : *lines) {
        if (!line.path.starts_with(kPayload)) {
            return malformed(said("lists \"%1\", which is not below data/", line.path));
        }
        const auto* listed = zip_.find(top_ + line.path);
        if (listed == nullptr) {
            return malformed(said("is not whole: it lists \"%1\" and does not have it", line.path));
        }
        files_.push_back({line.path.substr(kPayload.size()), listed->bytes, line.sha256});
        bytes_ += listed->bytes;
    }
    const auto payload = top_ + std::string{kPayload};
    const auto there = std::ranges::count_if(zip_.files(), [&](const ZipEntry& file) { return file.name.starts_with(payload); });
    if (static_cast<std::size_t>(there) != files_.size()) {
        return malformed(said("has %1 files below data/ and lists %2", there, files_.size()));
    }
    if (const auto said = label("Payload-Oxum"); !said.empty() && said != oxum(bytes_, files_.size())) {
        oddities_.push_back("the backup says that it holds " + said + " (bytes.files) and holds " +
                            oxum(bytes_, files_.size()) + "; every listed file is compared all the same");
    }
    return {};
}

Result<void> Bag::compare_tags()
{
    std::set<std::string> known{std::string{kTagManifest}};
    if (const auto* entry = zip_.find(top_ + std::string{kTagManifest})) {
        const auto text = zip_.text(*entry, kLongestTag);
        if (!text) {
            return text.error();
        }
        const auto lines = read_manifest_text(*text);
        if (!lines) {
            return malformed(said("has a %1 whose %2", kTagManifest, lines.error()));
        }
        for (const auto& line : *lines) {
            const auto* tag = zip_.find(top_ + line.path);
            if (tag == nullptr) {
                return malformed(said("is not whole: it lists \"%1\" and does not have it", line.path));
            }
            Sha256 digest;
            const auto read = zip_.read(*tag, [&](std::string_view piece) -> Result<void> {
                digest.update(piece);
                return {};
            });
            if (!read) {
                return read;
            }
            if (digest.hex() != line.sha256) {
                return Error{
                    ErrorCode::Damaged,
                    said("%1: \"%2\" is not what the backup's list says; it was altered or is torn, use another backup",
                         archive_.string(), line.path)};
            }
            known.insert(line.path);
        }
    } else {
        oddities_.emplace_back("the backup has no list of its own lists (tagmanifest-sha256.txt); they are taken as they are");
        return {};
    }
    for (const auto& file : zip_.files()) {
        const auto name = file.name.substr(top_.size());
        if (!name.starts_with(kPayload) && !known.contains(name)) {
            oddities_.push_back("\"" + name + "\" is in the backup and on none of its lists; it is left out");
        }
    }
    return {};
}

std::string Bag::label(std::string_view name) const
{
    const auto found = std::ranges::find(labels_, name, &BagLabel::name);
    return found == labels_.end() ? std::string{} : found->value;
}

Result<void> Bag::unpack(const fs::path* folder, const std::function<bool(const BagEntry&)>& wanted,
                         const Progress& progress)
{
    std::uint64_t done = 0;
    for (const auto& file : files_) {
        std::unique_ptr<NewFile> output;
        fs::path target;
        if (folder != nullptr && wanted(file)) {
            target = *folder / file.path;
            std::error_code failure;
            fs::create_directories(target.parent_path(), failure);
            if (failure) {
                return Error{ErrorCode::Unwritable, said("%1 cannot be made (%2); choose another place",
                                                         target.parent_path().string(), failure.message())};
            }
            output = std::make_unique<NewFile>(target);
        }
        Sha256 digest;
        const auto* entry = zip_.find(top_ + std::string{kPayload} + file.path);
        const auto read = zip_.read(*entry, [&](std::string_view piece) -> Result<void> {
            if (!goes_on(progress, done, bytes_)) {
                return Error{ErrorCode::Unwritable, said("stopped; nothing was kept of it")};
            }
            digest.update(piece);
            done += piece.size();
            return output ? output->write(piece) : Result<void>{};
        });
        if (!read) {
            return read;
        }
        if (digest.hex() != file.sha256) {
            return Error{
                ErrorCode::Damaged,
                said("%1: \"%2\" is not what the backup's list says; it was altered or is torn, use another backup",
                     archive_.string(), file.path)};
        }
        if (output) {
            if (auto finished = output->finish(); !finished) {
                return finished;
            }
            output.reset();
        }
    }
    // All files at once: one by one takes several times as long.
    return folder == nullptr ? Result<void>{} : flush_all_to_disk(*folder);
}

} // namespace lathhouse::exchange
