#include "core/plan/cold_chances.h"

namespace lathhouse::plan {

const climate::SeasonChances& ColdChances::season(Celsius line, climate::NightOffset offset) const
{
    const auto key = std::make_tuple(line.degrees(), offset.mean.kelvins(), offset.spread.kelvins());
    const auto found = kept_.find(key);
    if (found != kept_.end()) {
        return found->second;
    }
    return kept_.emplace(key, nights_.season(line, offset)).first->second;
}

} // namespace lathhouse::plan
