#include "core/plan/plan_wishes.h"

#include "core/plan/year_plan.h"

#include <algorithm>

namespace lathhouse::plan {

home::AcceptedPlan to_accept(const YearPlan& plan, calendar::Instant now)
{
    home::AcceptedPlan accepted{now, {}};
    for (const auto& year : plan.plants) {
        for (const auto& stay : year.stays) {
            accepted.stays.push_back({year.plant, stay.spot, stay.from, stay.to});
        }
    }
    return accepted;
}

std::vector<PlanChange> changes_between(const home::AcceptedPlan& accepted, const YearPlan& plan)
{
    std::vector<PlanChange> changes;
    for (const auto& year : plan.plants) {
        std::vector<home::PlannedStay> before;
        std::ranges::copy_if(accepted.stays, std::back_inserter(before),
                             [&](const home::PlannedStay& stay) { return stay.plant == year.plant; });
        for (const auto& stay : year.stays) {
            if (before.empty()) {
                changes.push_back({year.plant, stay.from, stay.to, std::nullopt, stay.spot});
                continue;
            }
            for (const auto& old : before) {
                const auto from = std::max(old.from, stay.from);
                const auto to = std::min(old.to, stay.to);
                if (from <= to && old.spot != stay.spot) {
                    changes.push_back({year.plant, from, to, old.spot, stay.spot});
                }
            }
        }
    }
    return changes;
}

} // namespace lathhouse::plan
