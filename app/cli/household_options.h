#pragma once

#include "app/cli/commands.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"

namespace lathhouse::cli {

/// The household in the caller's folder. Where none was named and the user's data folder has none, the
/// demonstration household if `or_demonstration` says so.
enum class WithoutHousehold { IsAnError, ShowsDemonstration };
Result<home::Household> household_of(const Globals& globals, WithoutHousehold without);

/// Climate of the household's place from the shipped table.
Result<climate::PlaceClimate> climate_of(const home::Household& household);

} // namespace lathhouse::cli
