#pragma once

#include "app/cli/commands.h"
#include "core/home/household.h"
#include "core/plan/move_problem.h"
#include "core/plan/plan_wishes.h"

namespace lathhouse::cli {

void add_moves(Commands& commands);

/// The household's year of moves as text and JSON; accept: the plan is kept in the household.
Result<Answer> moves_of(const Globals& globals, const home::Household& household, calendar::Date from,
                        Probability risk, plan::Effort effort = plan::Effort::Full,
                        const plan::PlanWishes& wishes = {}, bool accept = false);

} // namespace lathhouse::cli
