#pragma once

#include "core/base/said.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::exchange {

struct ZipEntry;

/// Why a path from an archive is not taken, for a sentence that begins with what has it; nullopt where it is plain:
/// UTF-8, relative, parts between slashes, none of them empty, `.` or `..`, no backslash, colon at its second place or
/// control character, at most 255 bytes a part and 1,000 in all.
std::optional<Said> bag_path_fault(std::string_view path);

/// A path that two entries claim where case does not count, or that one has as a file and another as a folder.
std::optional<std::string> clashing_path(std::span<const ZipEntry> files, const std::vector<std::string>& folders);

} // namespace lathhouse::exchange
