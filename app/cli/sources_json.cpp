#include "app/cli/sources_json.h"

#include "core/plan/growing_rules.h"

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

Json sources_json(std::span<const std::string_view> rules)
{
    Json list = Json::array();
    for (const auto* source : plan::GrowingRules::built_in().sources_of(rules)) {
        list.push_back(source_json(*source));
    }
    return list;
}

} // namespace lathhouse::cli
