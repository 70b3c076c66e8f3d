#pragma once

#include "core/base/result.h"

#include <filesystem>

namespace lathhouse {

/// Looks, before a file is opened, at what a person is most likely to have got wrong: the name.
/// Errors: NotFound; Unreadable for a folder. Pipes and devices pass: they can be read.
Result<void> must_be_a_file(const std::filesystem::path& path);

} // namespace lathhouse
