#pragma once

#include "core/calendar/date.h"
#include "core/home/household.h"

#include <vector>

namespace lathhouse::home {

/// Nights of a plan that a plant spends in one spot, as evenings, both included.
struct PlannedStay {
    PlantId plant;
    SpotId spot;
    calendar::Date from;
    calendar::Date to;
    friend bool operator==(const PlannedStay&, const PlannedStay&) = default;
};

/// A plan that the grower said yes to.
struct AcceptedPlan {
    calendar::Instant accepted;
    std::vector<PlannedStay> stays;
};

} // namespace lathhouse::home
