#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string_view>

namespace lathhouse::journal {

/// What a folder lies on, as far as it matters to a database that several programs may have open.
enum class FolderKind {
    Local,
    Network,   ///< A share of another machine: its locks cannot be trusted, and write-ahead logging does not work
               ///< over it from two machines.
    UserSpace, ///< A file system in a program: often a synced or remote folder, and nobody can tell from outside.
};
std::string_view to_string(FolderKind kind); ///< "local", "network", "user_space".

/// By the number that statfs gives a file system. Names of folders say nothing and are not looked at.
/// Source: Linux, statfs(2), and include/uapi/linux/magic.h.
FolderKind folder_kind_of(std::uint32_t file_system_type);
/// Of an existing folder; nullopt where the system does not say. A synced folder that is a plain one on this disk
/// cannot be told from any other.
std::optional<FolderKind> folder_kind(const std::filesystem::path& folder);

} // namespace lathhouse::journal
