#pragma once

#include "app/words/words.h"
#include "core/plan/year_plan.h"

#include <string>

namespace lathhouse::words {

/// Why a stay begins, in a few words: "nights allow it: 1 in 10 for a night at or below 2.0 °C later".
std::string why(const plan::Reason& reason, UnitSystem units);
/// Why a plant stays indoors all year.
std::string refusal(const plan::Refusal& refusal, UnitSystem units);
/// What is otherwise than in the accepted plan: "Lemon: Cool landing instead of Balcony rail from 3 May to 9 May".
std::string change(const plan::PlanChange& change, const home::Household& household);
/// One sentence on what the plan could not keep to.
std::string breach(const plan::Breach& breach, const home::Household& household);

} // namespace lathhouse::words
