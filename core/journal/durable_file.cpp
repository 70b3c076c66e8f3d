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
    fs::path beside;
    int handle = -1;
    do { // A run that was killed may have had this number, and have left such a file.
        beside = file.parent_path() / (std::string{kUnfinished} + std::to_string(::getpid()) + "-" +
                                       std::to_string(number.fetch_add(1)));
        handle = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    } while (handle < 0 && errno == EEXIST);
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
    // Written out, since a loop over a folder throws where the disk fails.
    for (fs::directory_iterator below{folder, failure}, end; !failure && below != end; below.increment(failure)) {
        std::error_code inside;
        for (fs::directory_iterator entry{below->path(), inside}; !inside && entry != end; entry.increment(inside)) {
            const auto modified = modified_at(entry->path());
            if (entry->path().filename().string().starts_with(kUnfinished) && modified && *modified < limit) {
                std::error_code stays;
                fs::remove(entry->path(), stays);
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
    // Some disks hold times that no calendar has; a day is kept clear at both ends for zones.
    using namespace std::chrono;
    constexpr auto kFirst = sys_seconds{sys_days{year{1} / 1 / 2}};
    constexpr auto kLast = sys_seconds{sys_days{year{9999} / 12 / 30}};
    const calendar::Instant modified{seconds{status.st_mtim.tv_sec}};
    return modified < kFirst || modified > kLast ? std::nullopt : std::optional{modified};
}

} // namespace lathhouse::journal
