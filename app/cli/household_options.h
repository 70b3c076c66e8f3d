#pragma once

#include "app/cli/commands.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"
#include "core/home/thermometer.h"
#include "core/plan/plan_wishes.h"

#include <optional>
#include <string>

namespace lathhouse::cli {

/// The household in the caller's folder. Where none was named and the user's data folder has none, the
/// demonstration household if `or_demonstration` says so.
enum class WithoutHousehold { IsAnError, ShowsDemonstration };
/// Spots have the offsets that the thermometer log has taught.
Result<home::Household> household_of(const Globals& globals, WithoutHousehold without);

/// Whether the caller's folder holds a household.
bool has_household(const Globals& globals);

/// The household with the offsets it was given, and what its thermometers said.
struct HouseholdWithLog {
    home::Household as_told;
    home::NightLog log;
};
/// Errors: as household_of where there is none.
Result<HouseholdWithLog> household_with_log(const Globals& globals);
/// The spot of that id or name. Errors: NotFound.
Result<const home::Spot*> spot_called(const home::Household& household, const std::string& id_or_name);
/// The same spot's id; nothing where the caller named no spot.
Result<std::optional<home::SpotId>> spot_asked(const home::Household& household, const std::string& id_or_name);
/// The plant of that id or name. Errors: NotFound, with names written much like it.
Result<const home::Plant*> plant_called(const home::Household& household, const std::string& id_or_name);

/// What a plan has to heed besides the household: the plan that was accepted, and the plants that pests keep apart.
/// Nothing where there is no household of the caller's. Errors: as household_facts.
Result<plan::PlanWishes> wishes_of(const Globals& globals);

/// As plant_called; nullptr where the caller asked for no plant in particular.
Result<const home::Plant*> plant_asked(const home::Household& household, const std::string& id_or_name);

/// Climate of the household's place: by its own record where it has one that reaches, else from the shipped
/// table (with a warning where there is a record that cannot answer).
Result<climate::PlaceClimate> climate_of(const home::Household& household);

} // namespace lathhouse::cli
