#include "core/base/sha256.h"
#include "core/exchange/zip_archive.h"

#include <zip.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <optional>
#include <utility>

#include <sys/stat.h>

namespace lathhouse::exchange {
namespace {

/// What all sources of one archive share.
struct Writing {
    const Progress* progress;
    std::uint64_t whole = 0;
    std::uint64_t done = 0;
    bool stopped = false;
    std::optional<Error> unreadable; ///< The first file that could not be read.
};

struct ArchiveFileCloser {
    void operator()(std::FILE* file) const { std::fclose(file); }
};

/// A file or text on its way into the archive: libzip opens, reads and closes it when its turn comes.
struct Source {
    Writing* writing = nullptr;
    std::filesystem::path file;
    std::function<void(const PackedFile&)> packed;
    std::function<std::string()> make_text;

    std::unique_ptr<std::FILE, ArchiveFileCloser> input;
    Sha256 digest;
    std::uint64_t bytes = 0;
    std::string text;
    bool text_made = false;
    std::size_t at = 0;
    zip_error_t error{};

    bool is_text() const { return file.empty(); }
    zip_int64_t fail(int code, int system)
    {
        zip_error_set(&error, code, system);
        if (code != ZIP_ER_CANCELLED && !writing->unreadable) {
            writing->unreadable = Error{ErrorCode::Unreadable, said("%1 cannot be read (%2); check its rights",
                                                                    file.string(), std::strerror(system))};
        }
        return -1;
    }
    zip_int64_t open()
    {
        at = 0;
        bytes = 0;
        if (is_text()) {
            text = make_text();
            text_made = true;
            return 0;
        }
        digest = Sha256{};
        input.reset(std::fopen(file.c_str(), "rb"));
        return input ? 0 : fail(ZIP_ER_OPEN, errno);
    }
    zip_int64_t read(void* data, zip_uint64_t length)
    {
        if (is_text()) {
            const auto taken = std::min<std::size_t>(length, text.size() - at);
            std::memcpy(data, text.data() + at, taken);
            at += taken;
            return static_cast<zip_int64_t>(taken);
        }
        if (!goes_on(*writing->progress, writing->done, writing->whole)) {
            writing->stopped = true;
            return fail(ZIP_ER_CANCELLED, 0);
        }
        const auto taken = std::fread(data, 1, length, input.get());
        if (taken < length && std::ferror(input.get()) != 0) {
            return fail(ZIP_ER_READ, errno);
        }
        digest.update({static_cast<const char*>(data), taken});
        bytes += taken;
        writing->done += taken;
        return static_cast<zip_int64_t>(taken);
    }
    zip_int64_t close()
    {
        if (!is_text()) {
            input.reset();
            packed({bytes, digest.hex()});
        }
        return 0;
    }
    zip_int64_t stat(void* data)
    {
        auto* about = static_cast<zip_stat_t*>(data);
        zip_stat_init(about);
        if (is_text()) {
            about->mtime = std::time(nullptr);
            about->valid |= ZIP_STAT_MTIME;
            if (text_made) {
                about->size = text.size();
                about->valid |= ZIP_STAT_SIZE;
            }
            return sizeof *about;
        }
        struct stat found {};
        if (::stat(file.c_str(), &found) != 0) {
            return fail(ZIP_ER_OPEN, errno);
        }
        about->size = static_cast<zip_uint64_t>(found.st_size);
        about->mtime = found.st_mtime;
        about->valid |= ZIP_STAT_SIZE | ZIP_STAT_MTIME;
        return sizeof *about;
    }
};

zip_int64_t on_source(void* state, void* data, zip_uint64_t length, zip_source_cmd_t command)
{
    auto& source = *static_cast<Source*>(state);
    switch (command) {
    case ZIP_SOURCE_OPEN:
        return source.open();
    case ZIP_SOURCE_READ:
        return source.read(data, length);
    case ZIP_SOURCE_CLOSE:
        return source.close();
    case ZIP_SOURCE_STAT:
        return source.stat(data);
    case ZIP_SOURCE_ERROR:
        return zip_error_to_data(&source.error, data, length);
    case ZIP_SOURCE_FREE:
        return 0; // The writer owns the sources.
    case ZIP_SOURCE_SUPPORTS:
        return zip_source_make_command_bitmap(ZIP_SOURCE_OPEN, ZIP_SOURCE_READ, ZIP_SOURCE_CLOSE, ZIP_SOURCE_STAT,
                                              ZIP_SOURCE_ERROR, ZIP_SOURCE_FREE, -1);
    default:
        zip_error_set(&source.error, ZIP_ER_OPNOTSUPP, 0);
        return -1;
    }
}

Error not_written(const std::filesystem::path& archive, int system, const std::string& reason)
{
    const bool full = system == ENOSPC || system == EFBIG || system == EDQUOT;
    return full ? Error{ErrorCode::Unwritable, said("%1 could not be written (the disk is full, or files may not grow "
                                                    "so large); make room or choose another place",
                                                    archive.string())}
                : Error{ErrorCode::Unwritable,
                        said("%1 could not be written (%2); choose another place", archive.string(), reason)};
}

} // namespace

void ZipWriter::add_file(std::string name, std::filesystem::path file, Squeeze squeeze,
                         std::function<void(const PackedFile&)> packed)
{
    entries_.push_back({std::move(name), std::move(file), squeeze, std::move(packed), {}});
}

void ZipWriter::add_text(std::string name, std::function<std::string()> text)
{
    entries_.push_back({std::move(name), {}, Squeeze::Yes, {}, std::move(text)});
}

Result<void> ZipWriter::write(const std::filesystem::path& archive, const Progress& progress,
                              std::uint64_t whole_bytes)
{
    Writing writing{.progress = &progress, .whole = whole_bytes, .unreadable = {}};
    std::vector<std::unique_ptr<Source>> sources; // Outlive the archive, which points to them.
    int code = 0;
    const auto discard = [](zip_t* open) { zip_discard(open); };
    std::unique_ptr<zip_t, decltype(discard)> open{zip_open(archive.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &code), discard};
    if (!open) {
        zip_error_t error{};
        zip_error_init_with_code(&error, code);
        const auto failed = not_written(archive, errno, zip_error_strerror(&error));
        zip_error_fini(&error);
        return failed;
    }
    for (auto& entry : entries_) {
        auto& source = *sources.emplace_back(std::make_unique<Source>());
        source.writing = &writing;
        source.file = entry.file;
        source.packed = entry.packed;
        source.make_text = entry.text;
        zip_source_t* handle = zip_source_function(open.get(), &on_source, &source);
        const auto index = handle == nullptr ? -1 : zip_file_add(open.get(), entry.name.c_str(), handle, ZIP_FL_ENC_UTF_8);
        if (index < 0) {
            if (handle != nullptr) {
                zip_source_free(handle);
            }
            return not_written(archive, 0, zip_strerror(open.get()));
        }
        const auto method = entry.squeeze == Squeeze::Yes ? ZIP_CM_DEFLATE : ZIP_CM_STORE;
        if (zip_set_file_compression(open.get(), static_cast<zip_uint64_t>(index), method, 0) != 0) {
            return not_written(archive, 0, zip_strerror(open.get()));
        }
    }
    if (zip_close(open.get()) != 0) {
        if (writing.stopped) {
            return Error{ErrorCode::Unwritable, said("stopped; %1 was not written", archive.filename().string())};
        }
        if (writing.unreadable) {
            return *writing.unreadable;
        }
        zip_error_t* error = zip_get_error(open.get());
        return not_written(archive, zip_error_system_type(error) == ZIP_ET_SYS ? zip_error_code_system(error) : 0,
                           zip_error_strerror(error));
    }
    (void)open.release(); // Closed.
    return {};
}

} // namespace lathhouse::exchange
