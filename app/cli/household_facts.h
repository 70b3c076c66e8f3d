#pragma once

#include "app/cli/commands.h"
#include "core/plan/round_parts.h"

namespace lathhouse::cli {

/// All that the household's folder and the climate table know. Errors: as household_of and climate_of.
Result<plan::HouseholdFacts> household_facts(const Globals& globals);

} // namespace lathhouse::cli
