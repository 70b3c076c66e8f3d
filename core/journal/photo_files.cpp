#include "core/base/parse.h"
#include "core/journal/photo_import.h"

#include <algorithm>
#include <array>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

bool ends_as_photos_do(const fs::path& file)
{
    static constexpr std::array<std::string_view, 6> kEndings{".jpg", ".jpeg", ".png", ".webp", ".heic", ".heif"};
    return std::ranges::find(kEndings, lower_case(file.extension().string())) != kEndings.end();
}

bool hidden(const fs::path& path)
{
    return path.filename().string().starts_with('.');
}

std::string plain(std::string_view text)
{
    auto letters = lower_case(text);
    for (char& letter : letters) {
        letter = letter == ' ' || letter == '_' ? '-' : letter;
    }
    return letters;
}

/// `*` stands for any letters. Linear in both but for going back to the last star.
bool fits(std::string_view pattern, std::string_view text)
{
    std::size_t p = 0;
    std::size_t t = 0;
    std::optional<std::pair<std::size_t, std::size_t>> star;
    while (t < text.size()) {
        if (p < pattern.size() && pattern[p] == '*') {
            star = {p++, t};
        } else if (p < pattern.size() && pattern[p] == text[t]) {
            ++p;
            ++t;
        } else if (star) {
            p = star->first + 1;
            t = ++star->second;
        } else {
            return false;
        }
    }
    while (p < pattern.size() && pattern[p] == '*') {
        ++p;
    }
    return p == pattern.size();
}

} // namespace

Result<std::vector<fs::path>> photo_files_in(const fs::path& file_or_folder)
{
    std::error_code failure;
    const auto status = fs::status(file_or_folder, failure);
    if (!fs::exists(status)) {
        return Error{ErrorCode::NotFound, said("there is no file or folder %1", file_or_folder.string())};
    }
    if (!fs::is_directory(status)) {
        return std::vector<fs::path>{file_or_folder};
    }
    std::vector<fs::path> files;
    fs::recursive_directory_iterator entry{file_or_folder, fs::directory_options::skip_permission_denied, failure};
    if (failure) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read; check its rights", file_or_folder.string())};
    }
    while (entry != fs::recursive_directory_iterator{}) {
        std::error_code gone; // Files may come and go meanwhile.
        if (hidden(entry->path())) {
            entry.disable_recursion_pending();
        } else if (entry->is_regular_file(gone) && ends_as_photos_do(entry->path())) {
            files.push_back(entry->path());
        }
        entry.increment(failure);
        if (failure) {
            break;
        }
    }
    std::ranges::sort(files);
    return files;
}

Result<std::vector<fs::path>> FolderWatch::settled()
{
    const auto files = photo_files_in(folder_);
    if (!files) {
        return files.error();
    }
    std::map<fs::path, State> now;
    std::vector<fs::path> ready;
    for (const auto& file : *files) {
        std::error_code failure;
        const State state{fs::file_size(file, failure), fs::last_write_time(file, failure)};
        if (failure) {
            continue;
        }
        now.emplace(file, state);
        const auto before = seen_.find(file);
        const auto given = given_.find(file);
        if (before != seen_.end() && before->second == state && (given == given_.end() || given->second != state)) {
            given_[file] = state;
            ready.push_back(file);
        }
    }
    seen_ = std::move(now);
    return ready;
}

std::optional<home::PlantId> plant_by_name(const std::string& pattern, const fs::path& file,
                                           std::span<const home::Plant> plants)
{
    static constexpr std::string_view kPlant = "{plant}";
    const auto at = pattern.find(kPlant);
    if (at == std::string::npos) {
        return std::nullopt;
    }
    const auto name = plain(file.stem().string());
    const auto before = plain(pattern.substr(0, at));
    const auto after = plain(pattern.substr(at + kPlant.size()));
    std::optional<home::PlantId> best;
    std::size_t longest = 0;
    for (const auto& plant : plants) {
        for (const auto& called : {plain(plant.name), std::to_string(plant.id)}) {
            if (called.size() > longest && fits(before + called + after, name)) {
                best = plant.id;
                longest = called.size();
            }
        }
    }
    return best;
}

} // namespace lathhouse::journal
