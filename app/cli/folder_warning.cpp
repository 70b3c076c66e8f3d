#include "app/cli/folder_warning.h"

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

} // namespace lathhouse::cli
