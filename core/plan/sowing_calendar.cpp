#include "core/plan/sowing_calendar.h"

namespace lathhouse::plan {

std::vector<SowingNow> sowing_calendar(const climate::PlaceClimate& place, const SowingClimate& climate,
                                       const SowingWishes& wishes, calendar::Date today, int days)
{
    const auto last = today + calendar::Days{days - 1};
    std::vector<SowingNow> sowings;
    for (const auto& kind : plants::SeedReference::built_in().kinds()) {
        const auto plan = plan_sowing(kind, place, climate, wishes);
        if (!plan.season) {
            continue;
        }
        const auto add = [&](SowingMethod method, const std::optional<DateSpan>& sow, const std::optional<DateSpan>& ready) {
            if (sow && sow->from <= last) {
                sowings.push_back({&kind, method, *sow, ready});
            }
        };
        add(SowingMethod::Indoors, plan.season->sow_indoors, plan.season->ready);
        add(SowingMethod::Outdoors, plan.season->sow_outdoors, plan.season->ready_outdoors);
    }
    return sowings;
}

} // namespace lathhouse::plan
