#include "core/journal/sound_memo.h"

#include "core/base/csv.h"
#include "core/journal/durable_file.h"

#include <cstdint>
#include <optional>
#include <string>

#include <sys/stat.h>

namespace lathhouse::journal {

namespace {

constexpr std::int64_t kLargeBytes = 8'000'000;
constexpr std::int64_t kCoarseSeconds = 2;

/// What tells a state of a file from every other; empty where it is small or cannot be asked.
std::string state_in_words(const std::filesystem::path& file)
{
    struct stat state{};
    if (::stat(file.c_str(), &state) != 0 || static_cast<std::int64_t>(state.st_size) < kLargeBytes) {
        return {};
    }
    return std::to_string(state.st_dev) + ' ' + std::to_string(state.st_ino) + ' ' + std::to_string(state.st_size) + ' ' +
           std::to_string(state.st_mtim.tv_sec) + ' ' + std::to_string(state.st_mtim.tv_nsec) + '\n';
}

std::optional<std::int64_t> written_second(const std::filesystem::path& file)
{
    struct stat state{};
    return ::stat(file.c_str(), &state) == 0 ? std::optional{static_cast<std::int64_t>(state.st_mtim.tv_sec)} : std::nullopt;
}

std::filesystem::path sound_memo_of(const std::filesystem::path& file)
{
    return file.parent_path() / "thumbnails" / "database-found-sound";
}

} // namespace

bool was_found_sound(const std::filesystem::path& file)
{
    const auto now = state_in_words(file);
    if (now.empty()) {
        return false;
    }
    const auto memo = sound_memo_of(file);
    const auto then = read_text_file(memo);
    const auto looked = written_second(memo);
    const auto written = written_second(file);
    return then && *then == now && looked && written && *looked - *written > kCoarseSeconds;
}

void remember_sound(const std::filesystem::path& file)
{
    const auto state = state_in_words(file);
    if (!state.empty()) {
        write_cached(sound_memo_of(file), {reinterpret_cast<const std::uint8_t*>(state.data()), state.size()});
    }
}

} // namespace lathhouse::journal
