#include "core/exchange/bag_tags.h"

#include "core/base/parse.h"
#include "core/exchange/bag_path.h"

#include <algorithm>
#include <unordered_set>

namespace lathhouse::exchange {
namespace {

/// Lines without their ends, which are LF, CR or both.
std::vector<std::string_view> lines_of(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = std::min(text.find_first_of("\r\n"), text.size());
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end);
        if (text.starts_with("\r\n")) {
            text.remove_prefix(1);
        }
        if (!text.empty()) {
            text.remove_prefix(1);
        }
    }
    return lines;
}

bool is_blank(char letter)
{
    return letter == ' ' || letter == '\t';
}

/// The three characters that a manifest writes as their number, and nothing else: a `%` that was not written so stays.
std::string unescaped(std::string_view path)
{
    std::string result;
    for (std::size_t at = 0; at < path.size(); ++at) {
        const auto code = path.substr(at, 3);
        const char meant = code == "%0D" || code == "%0d" ? '\r' : code == "%0A" || code == "%0a" ? '\n' : code == "%25" ? '%' : '\0';
        if (meant != '\0') {
            result += meant;
            at += 2;
        } else {
            result += path[at];
        }
    }
    return result;
}

} // namespace

std::string manifest_text(const std::vector<ManifestLine>& lines)
{
    std::string text;
    for (const auto& line : lines) {
        text += line.sha256 + "  ";
        for (const char letter : line.path) {
            if (letter == '\r') {
                text += "%0D";
            } else if (letter == '\n') {
                text += "%0A";
            } else if (letter == '%') {
                text += "%25";
            } else {
                text += letter;
            }
        }
        text += '\n';
    }
    return text;
}

Result<std::vector<ManifestLine>> read_manifest_text(std::string_view text)
{
    constexpr std::size_t kDigits = 64;
    std::vector<ManifestLine> lines;
    std::unordered_set<std::string> paths;
    std::size_t number = 0;
    for (const auto line : lines_of(text)) {
        ++number;
        const auto fail = [&](const Said& what) -> Error {
            return {ErrorCode::Malformed, said("line %1 %2", number, what)};
        };
        if (line.empty()) {
            continue;
        }
        std::string digest{line.substr(0, kDigits)};
        std::ranges::transform(digest, digest.begin(), [](char letter) {
            return letter >= 'A' && letter <= 'F' ? static_cast<char>(letter - 'A' + 'a') : letter;
        });
        if (line.size() < kDigits + 2 || !is_blank(line[kDigits]) ||
            digest.find_first_not_of("0123456789abcdef") != std::string::npos) {
            return fail(said("has no digest of 64 hexadecimal digits and a path"));
        }
        auto path = line.substr(kDigits);
        while (!path.empty() && is_blank(path.front())) {
            path.remove_prefix(1);
        }
        if (path.starts_with('*')) { // The mark of tools that tell binary from text.
            path.remove_prefix(1);
        }
        if (path.starts_with("./")) { // RFC 8493, 2.1.3, lets it pass.
            path.remove_prefix(2);
        }
        auto name = unescaped(path);
        if (const auto fault = bag_path_fault(name)) {
            return fail(*fault);
        }
        if (!paths.insert(name).second) {
            return fail(said("lists \"%1\" again", name));
        }
        lines.push_back({std::move(digest), std::move(name)});
    }
    return lines;
}

std::string bag_info_text(const std::vector<BagLabel>& labels)
{
    std::string text;
    for (const auto& [name, value] : labels) {
        text += name + ": " + value + "\n";
    }
    return text;
}

std::vector<BagLabel> read_bag_info(std::string_view text)
{
    std::vector<BagLabel> labels;
    for (const auto line : lines_of(text)) {
        if (line.empty()) {
            continue;
        }
        if (is_blank(line.front())) {
            if (!labels.empty()) {
                labels.back().value += " " + std::string{trimmed(line)};
            }
            continue;
        }
        if (const auto colon = line.find(':'); colon != std::string_view::npos) {
            labels.push_back({std::string{trimmed(line.substr(0, colon))}, std::string{trimmed(line.substr(colon + 1))}});
        }
    }
    return labels;
}

std::string bag_folder_name(std::string_view archive_stem)
{
    std::string name{archive_stem.substr(0, 100)};
    std::ranges::replace_if(
        name,
        [](char letter) {
            return !((letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                     (letter >= '0' && letter <= '9') || letter == '-' || letter == '_' || letter == '.');
        },
        '_');
    // What is left has no meaning to any system, and begins with no point.
    return name.empty() || name.front() == '.' ? "household" + name : name;
}

} // namespace lathhouse::exchange
