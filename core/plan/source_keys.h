#pragma once

#include <algorithm>
#include <string>
#include <vector>

// Of use inside core/plan alone.

namespace lathhouse::plan {

/// Adds those keys of sources that are not there yet, in their order.
inline void add_keys(std::vector<std::string>& all, const std::vector<std::string>& more)
{
    for (const auto& key : more) {
        if (std::ranges::find(all, key) == all.end()) {
            all.push_back(key);
        }
    }
}

} // namespace lathhouse::plan
