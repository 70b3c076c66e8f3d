#pragma once

#include "core/home/demonstration.h"
#include "core/journal/household_store.h"

namespace lathhouse::journal {

/// Writes a demonstration with its story (demonstration_story.h) into a new or an empty folder, or leaves nothing.
/// Errors: as home::demonstration and HouseholdStore::create.
Result<HouseholdStore> create_demonstration(const std::filesystem::path& folder,
                                            const home::DemonstrationOptions& options);

} // namespace lathhouse::journal
