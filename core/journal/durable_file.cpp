#include "core/journal/durable_file.h"

#include <atomic>
#include <cerrno>
#include <chrono>
#include <cstring>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view kUnfinished = ".incoming-";

enum class Sync { Yes, No };

/// nullopt where it is done, else what the system said.
std::optional<std::string> write_and_rename(const fs::path& file, photo::ByteView bytes, Sync sync)
{
    static std::atomic<unsigned> number = 0;
    std::error_code failure;
    fs::create_directories(file.parent_path(), failure);
    const auto beside = file.parent_path() / (std::string{kUnfinished} + std::to_string(::getpid()) + "-" +
                                              std::to_string(number.fetch_add(1)));
    const int handle = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (handle < 0) {
        return std::strerror(errno);
    }
    int trouble = 0;
    for (std::size_t at = 0; at < bytes.size() && trouble == 0;) {
        const auto written = ::write(handle, bytes.data() + at, bytes.size() - at);
        if (written >= 0) {
            at += static_cast<std::size_t>(written);
        } else if (errno != EINTR) {
            trouble = errno;
        }
    }
    if (trouble == 0 && sync == Sync::Yes && ::fsync(handle) != 0) {
        trouble = errno;
    }
    if (::close(handle) != 0 && trouble == 0) {
        trouble = errno;
    }
    if (trouble == 0 && ::rename(beside.c_str(), file.c_str()) != 0) {
        trouble = errno;
    }
    if (trouble != 0) {
        ::unlink(beside.c_str());
        return std::strerror(trouble);
    }
    return std::nullopt;
}

} // namespace

Result<void> write_durably(const fs::path& file, photo::ByteView bytes)
{
    if (const auto trouble = write_and_rename(file, bytes, Sync::Yes)) {
        return Error{
            ErrorCode::Unwritable,
            said("%1 cannot be written (%2); make room or choose a folder where you may write, and start again",
                 file.string(), *trouble)};
    }
    return {};
}

void write_cached(const fs::path& file, photo::ByteView bytes)
{
    write_and_rename(file, bytes, Sync::No);
}

void sync_folder(const fs::path& folder)
{
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle >= 0) {
        ::fsync(handle); // Some network drives know no such thing; there is nothing else to be done.
        ::close(handle);
    }
}

void remove_leftovers(const fs::path& folder)
{
    constexpr std::chrono::hours kOld{1}; // Another import may be at work just now.
    std::error_code failure;
    const auto limit = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()) - kOld;
    for (const auto& below : fs::directory_iterator{folder, failure}) {
        for (const auto& entry : fs::directory_iterator{below.path(), failure}) {
            const auto modified = modified_at(entry.path());
            if (entry.path().filename().string().starts_with(kUnfinished) && modified && *modified < limit) {
                fs::remove(entry.path(), failure);
            }
        }
    }
}

std::optional<calendar::Instant> modified_at(const fs::path& file)
{
    struct stat status;
    if (::stat(file.c_str(), &status) != 0) {
        return std::nullopt;
    }
    return calendar::Instant{std::chrono::seconds{status.st_mtim.tv_sec}};
}

} // namespace lathhouse::journal
