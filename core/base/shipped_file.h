#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string_view>

namespace lathhouse {

/// Where a table that comes with the program lies: the file that the environment variable `variable` names,
/// else `file_name` in the prefix or the build that the running program belongs to.
///
/// what: how an error names it ("the table of towns"). Errors: NotFound, naming the places looked at.
Result<std::filesystem::path> find_shipped_file(std::string_view file_name, const char* variable,
                                                std::string_view what);

} // namespace lathhouse
