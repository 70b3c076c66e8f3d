#pragma once

#include "core/base/edit_distance.h"
#include "core/base/parse.h"

#include <algorithm>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plants {

/// Candidates that are written much like `name`, nearest first: at most `count`, and none that needs more
/// changed letters than a third of the longer name. Without case.
inline std::vector<std::string> nearest_names(std::string_view name,
                                              std::span<const std::string_view> candidates, std::size_t count)
{
    struct Near {
        std::size_t changes;
        std::string_view shown;
    };
    const auto wanted = lower_case(trimmed(name));
    std::vector<Near> near;
    for (const auto candidate : candidates) {
        const auto changes = edit_distance(wanted, lower_case(candidate));
        if (changes * 3 <= std::max(wanted.size(), candidate.size())) {
            near.push_back({changes, candidate});
        }
    }
    std::ranges::sort(near, [](const Near& a, const Near& b) {
        return a.changes != b.changes ? a.changes < b.changes : a.shown < b.shown;
    });
    std::vector<std::string> names;
    for (const auto& candidate : near) {
        if (names.size() == count) {
            break;
        }
        names.emplace_back(candidate.shown);
    }
    return names;
}

/// "A", "A or B", "A, B or C". Precondition: not empty.
inline Said any_of(const std::vector<std::string>& near)
{
    Said text{near.front()};
    for (std::size_t index = 1; index < near.size(); ++index) {
        text = index + 1 == near.size() ? said("%1 or %2", text, near[index]) : said("%1, %2", text, near[index]);
    }
    return text;
}

} // namespace lathhouse::plants
