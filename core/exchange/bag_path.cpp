#include "core/exchange/bag_path.h"

#include "core/exchange/utf8.h"
#include "core/exchange/zip_archive.h"

#include <algorithm>
#include <unordered_set>

namespace lathhouse::exchange {
namespace {

constexpr std::size_t kLongestPath = 1000;
constexpr std::size_t kLongestPart = 255;

/// Where case does not count, so that a backup unpacks on every system. Beyond ASCII names differ by their bytes: ours
/// have none.
std::string folded(std::string_view text)
{
    std::string result{text};
    std::ranges::transform(result, result.begin(), [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    });
    return result;
}

} // namespace

std::optional<Said> bag_path_fault(std::string_view path)
{
    if (path.empty() || path.size() > kLongestPath) {
        return said("has an empty name or one of over %1 bytes", kLongestPath);
    }
    if (!is_utf8(path)) {
        return said("has a name that is not UTF-8");
    }
    // Control characters first, since the others show the name.
    if (std::ranges::any_of(path, [](char letter) { return static_cast<unsigned char>(letter) < 0x20 || letter == '\x7F'; })) {
        return said("has a name with control characters");
    }
    if (path.find('\\') != std::string_view::npos) {
        return said("\"%1\" has a backslash in its path", path);
    }
    if (path.starts_with('/') || (path.size() > 1 && path[1] == ':')) {
        return said("\"%1\" has a path from the root of a disk", path);
    }
    for (std::size_t begin = 0; begin <= path.size();) {
        const auto end = std::min(path.find('/', begin), path.size());
        const auto part = path.substr(begin, end - begin);
        if (part.empty() || part == "." || part == "..") {
            return said("\"%1\" has an empty part, \".\" or \"..\" in its path", path);
        }
        if (part.size() > kLongestPart) {
            return said("has a part of over %1 bytes in its path", kLongestPart);
        }
        begin = end + 1;
    }
    return std::nullopt;
}

std::optional<std::string> clashing_path(std::span<const ZipEntry> files, const std::vector<std::string>& folders)
{
    std::unordered_set<std::string> taken;
    for (const auto& file : files) {
        if (!taken.insert(folded(file.name)).second) {
            return file.name;
        }
    }
    const auto is_file = [&](const std::string& folder) { return taken.contains(folder); };
    for (const auto& folder : folders) {
        if (is_file(folded(folder))) {
            return folder;
        }
    }
    for (const auto& file : files) {
        const auto name = folded(file.name);
        for (auto slash = name.rfind('/'); slash != std::string::npos && slash > 0; slash = name.rfind('/', slash - 1)) {
            if (is_file(name.substr(0, slash))) {
                return file.name;
            }
        }
    }
    return std::nullopt;
}

} // namespace lathhouse::exchange
