#pragma once

#include "app/cli/commands.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/plan/move_problem.h"
#include "core/plan/plan_wishes.h"

#include <span>

namespace lathhouse::cli {

void add_moves(Commands& commands);

/// The household's year of moves as text and JSON; accept: the plan is kept in the household. events: what happened, of which
/// days of hardening that were ticked are heeded (hardening_done.h).
Result<Answer> moves_of(const Globals& globals, const home::Household& household, calendar::Date from,
                        Probability risk, plan::Effort effort = plan::Effort::Fast,
                        const plan::PlanWishes& wishes = {}, bool accept = false,
                        std::span<const home::Event> events = {});

} // namespace lathhouse::cli
