#include "core/base/readable_file.h"

#include <system_error>

namespace lathhouse {

Result<void> must_be_a_file(const std::filesystem::path& path)
{
    std::error_code failure;
    const auto status = std::filesystem::status(path, failure);
    if (!std::filesystem::exists(status)) {
        return Error{ErrorCode::NotFound, said("there is no file %1", path.string())};
    }
    if (std::filesystem::is_directory(status)) {
        return Error{ErrorCode::Unreadable, said("%1 is a folder; name a file in it", path.string())};
    }
    return {};
}

} // namespace lathhouse
