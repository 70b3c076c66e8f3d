#pragma once

#include "core/home/measurement.h"
#include "core/journal/household_store.h"

#include <vector>

namespace lathhouse::journal {

/// Each plant's measurements of the kind that it has most of (plan::measures_of puts that one first), plant by plant, each
/// by date: what a verdict for every plant needs, without the rest of the journal. Errors: Damaged, Locked.
Result<std::vector<home::Measurement>> leading_measurements(const HouseholdStore& store);

} // namespace lathhouse::journal
