#include "core/plan/round_parts.h"

#include "core/home/seedling.h"
#include "core/plan/hardening_done.h"
#include "core/plan/tray_progress.h"
#include "core/plan/spot_warmth.h"
#include "core/plan/whereabouts.h"

#include <algorithm>
#include <iterator>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr int kDaysOfColdLooks = 14; // The last look after a cold night (EP101, RH936: signs after 1 to 14 days).
constexpr int kDaysOfLooks = 35; // Looks at the water are foreseen that far.

/// The course of one plant that an event of a spot or of the whole household may have reached.
DamageCourse course_of_one(home::Event event, const home::Plant& plant, const HouseholdFacts& facts, const home::Household& household)
{
    event.plant = plant.id;
    return damage_course(case_of(event, household, facts.events));
}

/// Plants that were hit by a spray or harmed by a cold night, as long as nothing else is to trouble them. A spray that names no
/// plant counts for those that stood at its spot that day, and one without a spot for those that stood outdoors (reaches).
std::vector<Rest> rests_of(const home::Household& household, const HouseholdFacts& facts, const std::vector<DamageCourse>& damage,
                           const std::vector<ColdCourse>& cold, Date today)
{
    std::vector<Rest> rests;
    const auto add = [&](home::PlantId plant, Date until, RestWhy why, Date since) {
        if (until > today) {
            rests.push_back({plant, until, why, since});
        }
    };
    for (const auto& course : damage) {
        if (course.what.plant && course.feed_waits_for_growth) {
            add(*course.what.plant, course.no_feed_before, RestWhy::Sprayed, course.what.happened);
        }
    }
    for (const auto& event : facts.events) {
        if (event.kind != home::EventKind::ChemicalDamage || event.plant) {
            continue;
        }
        for (const auto& plant : household.plants) {
            if (reaches(event, Whereabouts{plant, facts.events, {}, today}, household)) {
                const auto course = course_of_one(event, plant, facts, household);
                if (course.feed_waits_for_growth) {
                    add(plant.id, course.no_feed_before, RestWhy::Sprayed, event.happened);
                }
            }
        }
    }
    for (const auto& course : cold) {
        const auto night = course.prognosis.nights.back().night;
        if (!course.new_growth && course.prognosis.outcome >= ColdOutcome::LeafDamagePossible) {
            add(course.plant, night + Days{kDaysOfColdLooks}, RestWhy::Chilled, night);
        }
    }
    return rests;
}

PlanWishes wishes_from(const PestCoursePlan& pests, std::vector<Rest> rests,
                       const std::optional<home::AcceptedPlan>& accepted, Date today)
{
    PlanWishes wishes;
    wishes.accepted = accepted;
    wishes.resting = std::move(rests);
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
    return home::with_young_plants(
        log.readings.empty() ? as_told : home::with_learned_offsets(as_told, log, climate.nights()), seeds);
}

PlanWishes wishes_of(const HouseholdFacts& facts, Date today)
{
    const auto household = facts.household();
    const home::SpotClimate spots{household, facts.climate, facts.log};
    const auto cold = cold_courses(household, facts.events, today, usual_night_of(spots), WithoutLow::TakenAsHurt);
    return wishes_from(plan_pest_courses(household, facts.events, warmth_of(spots), today),
                       rests_of(household, facts, damage_courses(household, facts.events), cold, today), facts.accepted, today);
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
                           wishes_from(parts.pests, rests_of(household, facts, parts.damage, parts.cold, today), facts.accepted, today));
    parts.ladders = ladders_ahead(household, spots, parts.plan, facts.events, facts.log, today);
    std::ranges::move(ladders_behind(household, spots, facts.events, today), std::back_inserter(parts.ladders));
    parts.water = water_looks(household, facts.climate, spots, facts.events, parts.plan.plants, today, kDaysOfLooks);
    parts.feeding = feeding_year(household, facts.climate, spots, facts.events, parts.plan.plants, {.from = today});
    const auto ahead = nights_of_forecast(facts.log.forecasts, today);
    parts.place_nights = chances.place_nights();
    parts.nights = plan_nights(facts.as_told, facts.log, nights, ahead, today, risk, &chances.place_nights());
    parts.tonight = coming_nights(facts.as_told, facts.log, nights, chances.place_nights(), today, risk);
    return parts;
}

} // namespace lathhouse::plan
