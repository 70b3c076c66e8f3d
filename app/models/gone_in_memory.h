#pragma once

#include "core/home/lineage.h"
#include "core/plan/round_parts.h"

#include <map>
#include <string>
#include <vector>

namespace lathhouse::models {

/// Whether a plant is off every list after it.
bool ends_plant(home::EventKind kind);

/// Writes an event of a plant, of a spot or of all into a household without a folder. One that ends the plant takes it off the list and keeps
/// its name with the event, since nothing else in memory remembers it. A division makes its pieces. Errors: NotFound where
/// the plant or the spot is not there; OutOfRange where a piece's name is taken.
Result<void> happen_in_memory(plan::HouseholdFacts& facts, const home::Event& event);

/// The next number of a plant; that of one that is gone is not given again, since what happened to it stays told.
home::PlantId free_plant_id(const plan::HouseholdFacts& facts);

/// What plants came of, by the divisions among what happened.
std::vector<home::Descent> descents_in_memory(const plan::HouseholdFacts& facts);

/// Names of those that died, were given away or taken off the list.
std::vector<std::string> names_of_gone(const plan::HouseholdFacts& facts);

/// Those that died, were given away or taken off the list, in the order in which they went; of the plants that are known.
std::vector<home::GonePlant> gone_in_memory(const plan::HouseholdFacts& facts, const std::map<home::PlantId, home::Plant>& known);

} // namespace lathhouse::models
