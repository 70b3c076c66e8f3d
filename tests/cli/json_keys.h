#pragma once

#include <nlohmann/json.hpp>

#include <set>
#include <string>

namespace lathhouse::cli {

inline std::set<std::string> keys(const nlohmann::json& object)
{
    std::set<std::string> found;
    for (const auto& [key, value] : object.items()) {
        found.insert(key);
    }
    return found;
}

} // namespace lathhouse::cli
