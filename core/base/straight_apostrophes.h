#pragma once

#include <string>
#include <string_view>

namespace lathhouse {

/// Names as a typewriter writes them: the curly marks U+2018 and U+2019 become ', so that a name is found however it was typed.
inline std::string straight_apostrophes(std::string_view words)
{
    std::string straight;
    straight.reserve(words.size());
    for (std::size_t at = 0; at < words.size(); ++at) {
        const auto three = words.substr(at, 3);
        if (three == "\xE2\x80\x98" || three == "\xE2\x80\x99") {
            straight += '\'';
            at += 2;
        } else {
            straight += words[at];
        }
    }
    return straight;
}

} // namespace lathhouse
