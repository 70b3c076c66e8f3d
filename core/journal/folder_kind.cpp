#include "core/journal/folder_kind.h"

#include <sys/vfs.h>

namespace lathhouse::journal {

std::string_view to_string(FolderKind kind)
{
    switch (kind) {
    case FolderKind::Local:
        return "local";
    case FolderKind::Network:
        return "network";
    case FolderKind::UserSpace:
        break;
    }
    return "user_space";
}

FolderKind folder_kind_of(std::uint32_t file_system_type)
{
    switch (file_system_type) {
    case 0x6969:     // NFS
    case 0x517B:     // SMB
    case 0xFF534D42: // CIFS
    case 0xFE534D42: // SMB2
    case 0x564C:     // NCP
    case 0x5346414F: // AFS
    case 0x6B414653: // AFS of the kernel
    case 0x73757245: // Coda
    case 0x01021997: // 9P
    case 0x00C36400: // Ceph
    case 0x7461636F: // OCFS2
    case 0x01161970: // GFS2
    case 0x0BD00BD0: // Lustre
        return FolderKind::Network;
    case 0x65735546: // FUSE
        return FolderKind::UserSpace;
    default:
        return FolderKind::Local;
    }
}

std::optional<FolderKind> folder_kind(const std::filesystem::path& folder)
{
    struct statfs system = {};
    if (statfs(folder.c_str(), &system) != 0) {
        return std::nullopt;
    }
    return folder_kind_of(static_cast<std::uint32_t>(system.f_type));
}

} // namespace lathhouse::journal
