#pragma once

#include "core/plan/feeding.h"
#include "core/plan/whereabouts.h"

#include <span>
#include <vector>

namespace lathhouse::plan {

/// The times in which events of the journal or moves of the plan forbid feeding; they may overlap. `to` is
/// none where an event ends it that has not been logged.
std::vector<Withheld> withheld_by_events(const home::Household& household, const home::Plant& plant,
                                         const Whereabouts& whereabouts, const home::SpotClimate& spots,
                                         std::span<const home::Event> events, calendar::Date from, int days);

/// Why the plant is not to be fed on that day; nullptr where it may be.
const Withheld* withheld_on(const PlantFeeding& feeding, calendar::Date day);

} // namespace lathhouse::plan
