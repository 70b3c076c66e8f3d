#include "app/words/source_words.h"

#include "app/words/phrase.h"
#include "core/base/parse.h"
#include "core/plants/plant_kind.h"

#include <set>

namespace lathhouse::words {

std::vector<std::string> source_keys(std::string_view cell)
{
    std::vector<std::string> keys;
    for (const auto key : split(cell, ';')) {
        keys.emplace_back(trimmed(key));
    }
    return keys;
}

std::string sources_line(const std::vector<std::string>& keys)
{
    std::set<std::string> said;
    std::string line;
    bool common_practice = false;
    for (const auto& key : keys) {
        if (key == plants::kCommonPractice) {
            common_practice = true;
            continue;
        }
        if (!said.insert(key).second) {
            continue;
        }
        line += line.empty() ? "" : "; ";
        const auto* source = plants::PlantReference::built_in().source(key);
        if (source == nullptr) {
            line += key;
            continue;
        }
        std::string who = source->publisher;
        if (source->year) {
            who += (who.empty() ? "" : ", ") + std::to_string(*source->year);
        }
        line += source->title + (who.empty() ? "" : " (" + who + ")");
    }
    if (common_practice) {
        line += (line.empty() ? "" : "; ") + phrase("common practice, no source");
    }
    return line.empty() ? line : phrase("Sources: %1.", line) + "\n";
}

} // namespace lathhouse::words
