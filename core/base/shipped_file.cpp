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
#ifdef LATHHOUSE_SHARE_OF_BUILD
    places.push_back(std::filesystem::path{LATHHOUSE_SHARE_OF_BUILD} / file_name);
#endif
    std::error_code failure;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", failure);
    if (!failure) {
        places.push_back(program.parent_path() / "../share/lathhouse" / file_name);
    }
    std::string looked_at;
    for (const auto& place : places) {
        if (std::filesystem::exists(place, failure)) {
            return place.lexically_normal();
        }
        looked_at += (looked_at.empty() ? "" : ", ") + place.lexically_normal().string();
    }
    return Error{ErrorCode::NotFound, std::string{what} + " is not there (looked at " + looked_at +
                                          "); install the program or name the file in " + variable};
}

} // namespace lathhouse
