#pragma once

#include "core/home/demonstration.h"
#include "core/journal/household_store.h"

namespace lathhouse::journal {

/// Writes a demonstration with its story (demonstration_story.h) and its pictures (demonstration_photos.h; photos:
/// their number, else those of the story) into a new or an empty folder, or leaves nothing.
/// Errors: as home::demonstration and HouseholdStore::create.
Result<HouseholdStore> create_demonstration(const std::filesystem::path& folder,
                                            const home::DemonstrationOptions& options, std::optional<int> photos = 0);

} // namespace lathhouse::journal
