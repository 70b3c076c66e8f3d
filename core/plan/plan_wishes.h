#pragma once

#include "core/calendar/date.h"
#include "core/home/planned_stays.h"
#include "core/plan/pest_course.h"

#include <optional>
#include <vector>

namespace lathhouse::plan {

/// Evenings, both included, on which a plant must stand apart from all others: pests were found on it or may be.
struct Isolation {
    home::PlantId plant;
    calendar::Date from;
    calendar::Date to;
    std::optional<calendar::Date> clear = {}; ///< First day on which it may be back; nullopt: cannot be said.
    PestState state = PestState::Infested;
    const plants::Pest* pest = nullptr; ///< nullptr where it has no known name.
};

enum class RestWhy { Sprayed, Chilled };
/// A plant that was harmed: nothing else is to trouble it, so that from indoors it does not go out, nor is hardened.
struct Rest {
    home::PlantId plant;
    calendar::Date until; ///< First day on which hardening may begin.
    RestWhy why;
    calendar::Date since;
};

/// What a plan heeds besides the household itself.
struct PlanWishes {
    std::vector<Isolation> isolated = {};
    /// The plan the grower said yes to: kept where changing it would not pay.
    std::optional<home::AcceptedPlan> accepted = {};
    std::vector<Rest> resting = {};
};

/// A plant stands otherwise than in the accepted plan, on those evenings, both included.
struct PlanChange {
    home::PlantId plant;
    calendar::Date from;
    calendar::Date to;
    std::optional<home::SpotId> was; ///< nullopt for a plant that the accepted plan did not have.
    home::SpotId is;
    friend bool operator==(const PlanChange&, const PlanChange&) = default;
};

struct YearPlan;
/// The plan as one to accept.
home::AcceptedPlan to_accept(const YearPlan& plan, calendar::Instant now);
/// Where the plan differs from the accepted one on the nights that both have, and new plants, by plant and date.
std::vector<PlanChange> changes_between(const home::AcceptedPlan& accepted, const YearPlan& plan);

} // namespace lathhouse::plan
