#include "core/plan/round_parts.h"

#include "core/plan/hardening_done.h"
#include "core/plan/tray_progress.h"
#include "core/plan/spot_warmth.h"

#include <algorithm>
#include <iterator>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr int kDaysOfLooks = 35; // Looks at the water are foreseen that far.

PlanWishes wishes_from(const PestCoursePlan& pests, const std::optional<home::AcceptedPlan>& accepted, Date today)
{
    PlanWishes wishes;
    wishes.accepted = accepted;
    for (const auto& need : pests.isolation) {
        const auto until = need.until ? *need.until - Days{1} : today + Days{kNightsOfAPlan};
        if (until >= today) {
            const auto condition = std::ranges::find(pests.plants, need.plant, &PlantCondition::plant);
            wishes.isolated.push_back({need.plant, std::max(need.from, today), until, need.until, need.state,
                                       condition != pests.plants.end() ? condition->pest : nullptr});
        }
    }
    return wishes;
}

} // namespace

home::Household HouseholdFacts::household() const
{
    return log.readings.empty() ? as_told : home::with_learned_offsets(as_told, log, climate.nights());
}

PlanWishes wishes_of(const HouseholdFacts& facts, Date today)
{
    const auto household = facts.household();
    const home::SpotClimate spots{household, facts.climate, facts.log};
    return wishes_from(plan_pest_courses(household, facts.events, warmth_of(spots), today), facts.accepted, today);
}

RoundParts round_parts(const HouseholdFacts& facts, const climate::NightModel& nights, Date today,
                       Probability risk)
{
    const auto household = facts.household();
    const home::SpotClimate spots{household, facts.climate, facts.log};
    RoundParts parts{.today = today,
                     .plan = {today, risk, {}, 0.0, {}, {}, {}},
                     .ladders = {},
                     .pests = plan_pest_courses(household, facts.events, warmth_of(spots), today),
                     .water = {},
                     .feeding = {},
                     .cold = cold_courses(household, facts.events, today, usual_night_of(spots), WithoutLow::TakenAsHurt),
                     .damage = damage_courses(household, facts.events),
                     .nights = {},
                     .sowing = SowingOutlook{today, facts.seeds, facts.climate, risk}};
    const ColdChances chances{climate::PlaceNights::of(facts.climate)};
    parts.plan = plan_year(household, facts.climate, chances, today, risk, Effort::Fast,
                           wishes_from(parts.pests, facts.accepted, today));
    parts.ladders = ladders_ahead(household, spots, parts.plan, facts.events, facts.log, today);
    std::ranges::move(ladders_behind(household, spots, facts.events, today), std::back_inserter(parts.ladders));
    parts.water = water_looks(household, facts.climate, spots, facts.events, parts.plan.plants, today, kDaysOfLooks);
    parts.feeding = feeding_year(household, facts.climate, spots, facts.events, parts.plan.plants, {.from = today});
    const auto ahead = nights_of_forecast(facts.log.forecasts, today);
    parts.nights = plan_nights(facts.as_told, facts.log, nights, ahead, today, risk);
    return parts;
}

} // namespace lathhouse::plan
