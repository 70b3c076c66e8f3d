#pragma once

#include "core/home/lineage.h"
#include "core/plan/round_parts.h"

#include <string>
#include <vector>

namespace lathhouse::models {

/// Whether a plant is off every list after it.
bool ends_plant(home::EventKind kind);

/// Writes an event of a plant, of a spot or of all into a household without a folder. One that ends the plant takes it off the list and keeps
/// its name with the event, since nothing else in memory remembers it. A division makes its pieces. Errors: NotFound where
/// the plant or the spot is not there; OutOfRange where a piece's name is taken.
Result<void> happen_in_memory(plan::HouseholdFacts& facts, const home::Event& event);

/// What plants came of, by the divisions among what happened.
std::vector<home::Descent> descents_in_memory(const plan::HouseholdFacts& facts);

/// Names of those that died or were given away, in the order in which they went.
std::vector<std::string> gone_in_memory(const plan::HouseholdFacts& facts);

} // namespace lathhouse::models
