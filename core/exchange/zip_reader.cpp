#include "core/exchange/bag_path.h"
#include "core/exchange/zip_archive.h"

#include <zip.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <numeric>
#include <utility>

namespace lathhouse::exchange {
namespace {

constexpr std::uint64_t kCountedFrom = 64'000'000; // Bytes below which no archive is taken for a bomb.
constexpr std::size_t kPiece = std::size_t{1} << 18;

Error malformed(const std::filesystem::path& archive, const Said& what)
{
    return {ErrorCode::Malformed, said("%1: %2; nothing was unpacked", archive.string(), what)};
}

/// What an entry is by the mode that Unix archivers leave with it. Link, device, socket and pipe are refused.
bool is_plain(zip_t* archive, zip_uint64_t index)
{
    constexpr zip_uint32_t kKind = 0170000;
    constexpr zip_uint32_t kFile = 0100000;
    constexpr zip_uint32_t kFolder = 0040000;
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(archive, index, 0, &system, &attributes) != 0) {
        return false;
    }
    const auto kind = (attributes >> 16U) & kKind;
    // Whatever system is named: a link is a link to those who unpack by the mode alone.
    return kind == 0 || kind == kFile || kind == kFolder;
}

} // namespace

struct ZipReader::Inside {
    explicit Inside(zip_t* open) : archive(open) {}
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;
    ~Inside() { zip_discard(archive); }
    zip_t* archive;
};

ZipReader::ZipReader(std::unique_ptr<Inside> inside, std::filesystem::path archive)
    : inside_(std::move(inside)), archive_(std::move(archive))
{
}
ZipReader::ZipReader(ZipReader&&) noexcept = default;
ZipReader& ZipReader::operator=(ZipReader&&) noexcept = default;
ZipReader::~ZipReader() = default;

Result<ZipReader> ZipReader::open(const std::filesystem::path& archive, const ZipLimits& limits)
{
    std::error_code failure;
    const auto status = std::filesystem::status(archive, failure);
    if (!std::filesystem::exists(status)) {
        return Error{ErrorCode::NotFound, said("there is no file %1", archive.string())};
    }
    if (!std::filesystem::is_regular_file(status)) {
        return Error{ErrorCode::Unreadable, said("%1 is no file; name a backup's zip file", archive.string())};
    }
    const auto archive_bytes = std::filesystem::file_size(archive, failure);
    int code = 0;
    zip_t* handle = zip_open(archive.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, &code);
    if (handle == nullptr) {
        if (code == ZIP_ER_OPEN || code == ZIP_ER_READ) {
            return Error{ErrorCode::Unreadable,
                         said("%1 cannot be read (%2); check its rights", archive.string(), std::strerror(errno))};
        }
        return malformed(archive, said("this is no zip file, or it is torn or was altered"));
    }
    ZipReader reader{std::make_unique<Inside>(handle), archive};
    const auto count = static_cast<std::uint64_t>(std::max<zip_int64_t>(0, zip_get_num_entries(handle, 0)));
    if (count > limits.entries) {
        return malformed(archive, said("%1 entries are more than the %2 that are taken", count, limits.entries));
    }
    std::vector<std::string> folders;
    std::uint64_t unpacked = 0;
    for (zip_uint64_t index = 0; index < count; ++index) {
        zip_stat_t about;
        const char* raw = zip_get_name(handle, index, ZIP_FL_ENC_RAW);
        if (raw == nullptr || zip_stat_index(handle, index, ZIP_FL_ENC_RAW, &about) != 0) {
            return malformed(archive, said("entry %1 has no name", index + 1));
        }
        std::string name = raw;
        const bool folder = name.ends_with('/');
        if (folder) {
            name.pop_back();
        }
        if (const auto fault = bag_path_fault(name)) {
            return malformed(archive, said("entry %1 %2", index + 1, *fault));
        }
        if (!is_plain(handle, index)) {
            return malformed(archive, said("\"%1\" is a link or another special file", name));
        }
        if (folder) {
            folders.push_back(std::move(name));
            continue;
        }
        constexpr zip_uint64_t kNeeded = ZIP_STAT_SIZE | ZIP_STAT_COMP_METHOD | ZIP_STAT_ENCRYPTION_METHOD;
        if ((about.valid & kNeeded) != kNeeded || about.encryption_method != ZIP_EM_NONE ||
            (about.comp_method != ZIP_CM_STORE && about.comp_method != ZIP_CM_DEFLATE)) {
            return malformed(archive, said("\"%1\" is encrypted or packed in a way that is not read here", name));
        }
        // Written so that a sum of sizes cannot run over.
        if (about.size > limits.unpacked_bytes || unpacked > limits.unpacked_bytes - about.size) {
            return malformed(archive, said("it would unpack to more than %1 bytes", limits.unpacked_bytes));
        }
        unpacked += about.size;
        reader.files_.push_back({std::move(name), about.size, index});
    }
    if (unpacked > kCountedFrom && unpacked / limits.times > archive_bytes) {
        return malformed(
            archive, said("it would unpack to %1 MB, over %2 times its own size", unpacked / 1'000'000, limits.times));
    }
    reader.by_name_.resize(reader.files_.size());
    std::iota(reader.by_name_.begin(), reader.by_name_.end(), std::size_t{0});
    std::ranges::sort(reader.by_name_, {}, [&](std::size_t index) -> const std::string& { return reader.files_[index].name; });
    if (const auto clash = clashing_path(reader.files_, folders)) {
        return malformed(archive, said("\"%1\" is there twice, or as a file and a folder", *clash));
    }
    return reader;
}

const ZipEntry* ZipReader::find(std::string_view name) const
{
    const auto found = std::ranges::lower_bound(by_name_, name, {}, [&](std::size_t index) -> std::string_view {
        return files_[index].name;
    });
    return found == by_name_.end() || files_[*found].name != name ? nullptr : &files_[*found];
}

Result<void> ZipReader::read(const ZipEntry& entry, const std::function<Result<void>(std::string_view)>& take)
{
    const auto damaged = [&](const Said& what) -> Error {
        return {ErrorCode::Damaged, said("%1: \"%2\" %3; the file was altered or is torn, use another backup",
                                         archive_.string(), entry.name, what)};
    };
    zip_error_clear(inside_->archive);
    const auto close = [](zip_file_t* open) { zip_fclose(open); };
    const std::unique_ptr<zip_file_t, decltype(close)> open{zip_fopen_index(inside_->archive, entry.index, 0), close};
    if (!open) {
        return damaged(said("cannot be unpacked"));
    }
    std::vector<char> piece(kPiece);
    std::uint64_t bytes = 0;
    for (;;) {
        const auto length = zip_fread(open.get(), piece.data(), piece.size());
        if (length < 0) {
            return damaged(said("does not unpack to what was packed"));
        }
        if (length == 0) {
            break;
        }
        bytes += static_cast<std::uint64_t>(length);
        if (bytes > entry.bytes) {
            return damaged(said("unpacks to more than its %1 bytes", entry.bytes));
        }
        if (auto taken = take({piece.data(), static_cast<std::size_t>(length)}); !taken) {
            return taken;
        }
    }
    if (bytes != entry.bytes) {
        return damaged(said("unpacks to %1 bytes instead of %2", bytes, entry.bytes));
    }
    return {};
}

Result<std::string> ZipReader::text(const ZipEntry& entry, std::uint64_t most_bytes)
{
    if (entry.bytes > most_bytes) {
        return malformed(archive_, said("\"%1\" has over %2 bytes", entry.name, most_bytes));
    }
    std::string text;
    const auto read_whole = read(entry, [&](std::string_view piece) -> Result<void> {
        text += piece;
        return {};
    });
    if (!read_whole) {
        return read_whole.error();
    }
    return text;
}

} // namespace lathhouse::exchange
