#pragma once

#include "core/journal/folder_kind.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <optional>
#include <string>

namespace lathhouse::cli {

/// What the grower should know of a household that lies there; nullopt where there is nothing to say.
std::optional<std::string> folder_warning(journal::FolderKind kind, const std::filesystem::path& folder);

/// Whether what was asked for writes into the household; program: has read its command line.
bool writes_into_household(const CLI::App& program);

} // namespace lathhouse::cli
