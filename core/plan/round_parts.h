#pragma once

#include "core/home/event_list.h"
#include "core/home/learned_offset.h"
#include "core/home/planned_stays.h"
#include "core/home/seed_lot.h"
#include "core/plan/round.h"

#include <optional>

namespace lathhouse::plan {

/// Accepted chance of a damaging night, each way, where the grower named none.
inline constexpr auto kUsualRisk = Probability::literal(0.1);

/// What the journal and the climate know of a household.
struct HouseholdFacts {
    home::Household as_told; ///< With the offsets that it was given.
    home::NightLog log;
    home::EventList events;
    climate::PlaceClimate climate;
    std::optional<home::AcceptedPlan> accepted = {};
    home::SeedBook seeds = {};

    /// The household with the offsets that its thermometers have taught, and which of its plants are young.
    home::Household household() const;
};

/// What a plan of today has to heed: the accepted plan, and the plants that pests keep apart (until further notice
/// where no day of release can be named).
PlanWishes wishes_of(const HouseholdFacts& facts, calendar::Date today);

/// Everything that the round is made of. `nights` is the place's model and must outlive the answer.
RoundParts round_parts(const HouseholdFacts& facts, const climate::NightModel& nights, calendar::Date today,
                       Probability risk);

} // namespace lathhouse::plan
