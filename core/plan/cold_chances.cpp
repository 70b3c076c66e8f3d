#include "core/plan/cold_chances.h"

#include "core/base/side_by_side.h"

#include <optional>
#include <vector>

namespace lathhouse::plan {

ColdChances::Key ColdChances::key_of(Celsius line, climate::NightOffset offset)
{
    return {line.degrees(), offset.mean.kelvins(), offset.spread.kelvins()};
}

const climate::SeasonChances& ColdChances::season(Celsius line, climate::NightOffset offset) const
{
    const auto key = key_of(line, offset);
    const auto found = kept_.find(key);
    if (found != kept_.end()) {
        return found->second;
    }
    return kept_.emplace(key, nights_.season(line, offset)).first->second;
}

void ColdChances::prepare(std::span<const Asked> asked) const
{
    std::map<Key, Asked> missing;
    for (const auto& one : asked) {
        if (const auto key = key_of(one.line, one.offset); !kept_.contains(key)) {
            missing.emplace(key, one);
        }
    }
    const std::vector<std::pair<Key, Asked>> wanted{missing.begin(), missing.end()};
    std::vector<std::optional<climate::SeasonChances>> found(wanted.size());
    side_by_side(wanted.size(), [&](std::size_t at) {
        found[at] = nights_.season(wanted[at].second.line, wanted[at].second.offset);
    });
    for (std::size_t at = 0; at < wanted.size(); ++at) {
        kept_.emplace(wanted[at].first, *found[at]);
    }
}

void ColdChances::prepare(const home::Household& household) const
{
    std::vector<Asked> asked;
    for (const auto& plant : household.plants) {
        for (const auto& spot : household.spots) {
            if (home::is_outdoors(spot.kind)) {
                asked.push_back({plant.lines.damage_begins, spot.offset});
                asked.push_back({plant.lines.lethal, spot.offset});
            }
        }
    }
    prepare(asked);
}

} // namespace lathhouse::plan
