#include "app/cli/folder_warning.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace lathhouse::cli {

std::optional<std::string> folder_warning(journal::FolderKind kind, const std::filesystem::path& folder)
{
    switch (kind) {
    case journal::FolderKind::Network:
        return folder.string() + " lies on a network drive; open it on one machine at a time, or keep it on this "
                                 "machine's own disk and copy it by backup";
    case journal::FolderKind::UserSpace:
        return folder.string() + " lies on a drive that a program provides, which may be a synced or a remote one; "
                                 "keep the household on this machine's own disk and sync backups of it instead";
    case journal::FolderKind::Local:
        break;
    }
    return std::nullopt;
}

bool writes_into_household(const CLI::App& program)
{
    const auto asked = program.get_subcommands();
    if (asked.empty()) {
        return false;
    }
    const CLI::App& command = *asked.front();
    const std::string name = command.get_name();
    if (name == "round" || name == "place") { // By themselves they only tell.
        return !command.get_subcommands().empty();
    }
    using Writing = std::pair<std::string_view, const char*>; // With that option, where one is named.
    constexpr std::array kWriting{Writing{"add", nullptr},        Writing{"log", nullptr},      Writing{"pin", nullptr},
                                  Writing{"unpin", nullptr},      Writing{"moves", "--accept"}, Writing{"tonight", "--keep"},
                                  Writing{"photo", "--plant"}};
    const auto writing = std::ranges::find(kWriting, std::string_view{name}, &Writing::first);
    return writing != kWriting.end() && (writing->second == nullptr || command.count(writing->second) > 0);
}

} // namespace lathhouse::cli
