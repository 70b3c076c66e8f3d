#include "app/cli/sources_json.h"

#include "core/plants/plant_kind.h"

#include <set>

namespace lathhouse::cli {

Json sources_json(const std::vector<std::string>& keys)
{
    std::set<std::string> said;
    Json list = Json::array();
    for (const auto& key : keys) {
        if (!said.insert(key).second) {
            continue;
        }
        const auto* source = plants::PlantReference::built_in().source(key);
        Json row{{"key", key}, {"title", nullptr}, {"publisher", nullptr}, {"year", nullptr}};
        if (source != nullptr) {
            row["title"] = source->title;
            row["publisher"] = source->publisher.empty() ? Json(nullptr) : Json(source->publisher);
            row["year"] = source->year ? Json(*source->year) : Json(nullptr);
        }
        list.push_back(std::move(row));
    }
    return list;
}

} // namespace lathhouse::cli
