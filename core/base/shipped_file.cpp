#include "core/base/shipped_file.h"

#include <cstdlib>
#include <string>
#include <system_error>
#include <vector>

namespace lathhouse {

Result<std::filesystem::path> find_shipped_file(std::string_view file_name, const char* variable,
                                                std::string_view what)
{
    if (const char* named = std::getenv(variable); named != nullptr && *named != '\0') {
        return std::filesystem::path{named};
    }
    std::vector<std::filesystem::path> places;
    std::error_code failure;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", failure);
    if (!failure) {
        // From where the program is, so that a prefix can be moved and no folder of a build is written into it: of an
        // installed program and of one in the build's app/, then of a test in the build's tests/ROOM.
        for (const char* way : {LATHHOUSE_SHARE_FROM_PROGRAM, "../../share/lathhouse"}) {
            places.push_back(program.parent_path() / way / file_name);
        }
    }
    std::string looked_at;
    for (const auto& place : places) {
        if (std::filesystem::exists(place, failure)) {
            return place.lexically_normal();
        }
        looked_at += (looked_at.empty() ? "" : ", ") + place.lexically_normal().string();
    }
    return Error{ErrorCode::NotFound, said("%1 is not there (looked at %2); install the program or name the file in %3",
                                           what, looked_at, variable)};
}

} // namespace lathhouse
