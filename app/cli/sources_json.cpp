#include "app/cli/sources_json.h"

#include <set>

namespace lathhouse::cli {

Json source_json(const plants::Source& source)
{
    return {{"key", source.key},
            {"title", source.title},
            {"publisher", source.publisher.empty() ? Json(nullptr) : Json(source.publisher)},
            {"year", source.year ? Json(*source.year) : Json(nullptr)}};
}

Json sources_json(const std::vector<std::string>& keys)
{
    std::set<std::string> said;
    Json list = Json::array();
    for (const auto& key : keys) {
        if (!said.insert(key).second) {
            continue;
        }
        const auto* source = plants::PlantReference::built_in().source(key);
        list.push_back(source != nullptr
                           ? source_json(*source)
                           : Json{{"key", key}, {"title", nullptr}, {"publisher", nullptr}, {"year", nullptr}});
    }
    return list;
}

} // namespace lathhouse::cli
