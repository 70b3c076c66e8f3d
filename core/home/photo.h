#pragma once

#include "core/calendar/date.h"
#include "core/home/household.h"
#include "core/units/position.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

using PhotoId = int;

/// Where the date of a photo came from.
enum class TakenFrom { Exif, FileTime, Given };
constexpr std::string_view to_string(TakenFrom from)
{
    return from == TakenFrom::Exif ? "exif" : from == TakenFrom::FileTime ? "file_time" : "given";
}
constexpr std::optional<TakenFrom> taken_from_of(std::string_view word)
{
    for (const auto from : {TakenFrom::Exif, TakenFrom::FileTime, TakenFrom::Given}) {
        if (to_string(from) == word) {
            return from;
        }
    }
    return std::nullopt;
}

/// A photo as the journal keeps it: the file unaltered under its SHA-256, and what is known of it.
struct Photo {
    PhotoId id;            ///< Given by the journal.
    std::string sha256;    ///< 64 hexadecimal digits.
    std::string extension; ///< "jpg", "png", "webp", "heic".
    std::int64_t bytes;
    int width; ///< Pixels once it is upright.
    int height;
    std::chrono::local_seconds taken; ///< By the clock where it was taken.
    std::optional<std::chrono::minutes> zone_offset; ///< Local time less UTC, where the camera said.
    TakenFrom taken_from;
    std::string original_name; ///< Of the file that was imported.
    std::optional<Position> position; ///< Where the camera said it was; leaves the folder only where the user says so.
    calendar::Instant entered;
    std::vector<PlantId> plants = {}; ///< Those that it shows, in the order of their ids.
    friend bool operator==(const Photo&, const Photo&) = default;

    calendar::Date date() const
    {
        return calendar::utc_date(calendar::Instant{taken.time_since_epoch()});
    }
};

} // namespace lathhouse::home
