#include "core/base/temporary_folder.h"

#include "core/base/parse.h"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <string>
#include <string_view>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace lathhouse {

namespace fs = std::filesystem;

namespace {

/// Whether the process that the name tells of is gone. The name of another one's work is left alone.
bool is_left_over(const std::string& name, std::string_view prefix)
{
    constexpr std::string_view kEnd = ".part";
    if (!name.starts_with(prefix) || !name.ends_with(kEnd) || name.size() <= prefix.size() + kEnd.size()) {
        return false;
    }
    const auto digits = name.substr(prefix.size(), name.size() - prefix.size() - kEnd.size());
    if (digits.size() > 9 || digits.find_first_not_of("0123456789") != std::string::npos) {
        return false;
    }
    const auto process = static_cast<pid_t>(std::stol(digits));
    return process == getpid() || (kill(process, 0) != 0 && errno == ESRCH);
}

} // namespace

Result<TemporaryFolder> TemporaryFolder::beside(const fs::path& target)
{
    const auto whole = with_name(target);
    const auto parent = whole.parent_path();
    std::error_code failure;
    fs::create_directories(parent, failure);
    if (failure) {
        return Error{ErrorCode::Unwritable, said("the folder %1 cannot be made (%2); choose one where you may write",
                                                 parent.string(), failure.message())};
    }
    const auto prefix = "." + whole.filename().string() + ".";
    for (fs::directory_iterator entry{parent, failure}, end; !failure && entry != end; entry.increment(failure)) {
        if (is_left_over(entry->path().filename().string(), prefix)) {
            std::error_code ignored;
            fs::remove_all(entry->path(), ignored);
        }
    }
    const auto path = parent / (prefix + std::to_string(getpid()) + ".part");
    failure.clear();
    if (!fs::create_directory(path, failure)) {
        return Error{ErrorCode::Unwritable,
                     said("%1 cannot be written (%2); choose a folder where you may write", parent.string(),
                          failure ? Said{failure.message()} : said("a temporary name is taken"))};
    }
    return TemporaryFolder{path};
}

TemporaryFolder::TemporaryFolder(TemporaryFolder&& other) noexcept : path_(std::move(other.path_))
{
    other.path_.clear();
}

TemporaryFolder::~TemporaryFolder()
{
    if (!path_.empty()) {
        std::error_code failure;
        fs::remove_all(path_, failure);
    }
}

bool is_temporary_name(const fs::path& file)
{
    const auto name = file.filename().string();
    return name.ends_with(".part") || name.starts_with(".incoming-") ||
           (name.starts_with('.') && name.find(".part.") != std::string::npos);
}

fs::path with_name(const fs::path& path)
{
    std::error_code failure;
    auto whole = fs::absolute(path, failure).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path();
}

Result<void> rename_unless_there(const fs::path& from, const fs::path& to)
{
    const auto refused = [&](int number) -> Error {
        return {ErrorCode::Unwritable,
                said("%1 could not be given its name (%2); choose another name or move away what is there", to.string(),
                     std::strerror(number))};
    };
    std::error_code failure;
    if (fs::is_directory(from, failure)) { // rename(2) puts a folder in the place of an empty one alone.
        return std::rename(from.c_str(), to.c_str()) == 0 ? Result<void>{} : refused(errno);
    }
    if (renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) {
        return {};
    }
    if (errno != EINVAL && errno != ENOSYS) {
        return refused(errno);
    }
    // A file system that does not know the flag: a look first is as good as can be had.
    if (fs::exists(fs::symlink_status(to, failure))) {
        return refused(EEXIST);
    }
    return std::rename(from.c_str(), to.c_str()) == 0 ? Result<void>{} : refused(errno);
}

namespace {

Result<void> flushed_by(int (*flush)(int), const fs::path& file_or_folder)
{
    const int descriptor = ::open(file_or_folder.c_str(), O_RDONLY | O_CLOEXEC);
    const bool flushed = descriptor >= 0 && flush(descriptor) == 0;
    const int number = errno;
    if (descriptor >= 0) {
        close(descriptor);
    }
    // Some file systems know no flushing of folders.
    if (flushed || number == EINVAL || number == EBADF) {
        return {};
    }
    return Error{ErrorCode::Unwritable,
                 said("%1 could not be brought to the disk (%2); the disk may be full or failing",
                      file_or_folder.string(), std::strerror(number))};
}

} // namespace

Result<void> flush_to_disk(const fs::path& file_or_folder)
{
    return flushed_by(&fsync, file_or_folder);
}

Result<void> flush_all_to_disk(const fs::path& folder)
{
    return flushed_by(&syncfs, folder);
}

} // namespace lathhouse
