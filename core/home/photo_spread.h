#pragma once

#include "core/home/photo.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lathhouse::home {

/// A few of many photos, spread over their time.
struct PhotoSpread {
    std::size_t count = 0;                ///< Of all there are.
    std::optional<calendar::Date> oldest; ///< nullopt where there is none.
    std::vector<Photo> photos;            ///< Oldest first; the newest of all is the last.
};

/// Places of the few among so many, rising, each once: with two or more the first and the last are among them, with one
/// it is the last.
inline std::vector<std::size_t> spread_places(std::size_t count, std::size_t most)
{
    std::vector<std::size_t> places;
    const std::size_t shown = count < most ? count : most;
    for (std::size_t at = 0; at < shown; ++at) {
        places.push_back(shown == 1 ? count - 1 : at * (count - 1) / (shown - 1));
    }
    return places;
}

} // namespace lathhouse::home
