#pragma once

#include "core/calendar/date.h"
#include "core/home/household.h"
#include "core/plan/cold_chances.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::plan {

/// Nights in a row that a plant spends in one spot. A date stands for the night that begins in its evening,
/// so a plant carried out on `from` sleeps there that same night, and on the day after `to` it is carried on.
struct Stay {
    home::SpotId spot;
    calendar::Date from;
    calendar::Date to; ///< Included.
    std::string why;   ///< Why it begins there then, in a few words.
    /// Chance of a night at or below the plant's damage line from `from` to the turn; none indoors.
    std::optional<Probability> risk_out;
    /// Chance of one from the turn to the end of the stay; none indoors.
    std::optional<Probability> risk_in;
};

struct PlantYear {
    home::PlantId plant;
    std::vector<Stay> stays; ///< Cover the 365 nights once, in order.
};

struct YearPlan {
    calendar::Date from;
    Probability risk;
    std::vector<PlantYear> plants;
    double gap; ///< (cost - bound) / cost, as docs/methods.md defines it; 0 is the best plan there can be.
    std::chrono::duration<double, std::milli> solve_time;
    std::vector<std::string> warnings;
};

/// Plans 365 nights from `from`. Deterministic.
YearPlan plan_year(const home::Household& household, const ColdChances& chances, calendar::Date from,
                   Probability risk);

} // namespace lathhouse::plan
