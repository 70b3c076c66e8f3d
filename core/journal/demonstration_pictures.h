#pragma once

#include "core/home/demonstration_photos.h"
#include "core/journal/household_store.h"
#include "core/photo/exif.h"

namespace lathhouse::journal {

/// A demonstration's picture as a file of a camera: JPEG with date, place and orientation in its EXIF.
photo::Bytes demonstration_file(const home::DemonstrationPhoto& photo, const home::Household& household);
/// Draws pictures, puts their files into the household's folder and enters them, with the green cover of those that are
/// to be measured, as the program measures any photo. Errors: Unwritable, Locked; as HouseholdStore::record.
Result<void> take_pictures(HouseholdStore& store, const home::Household& household,
                           const std::vector<home::DemonstrationPhoto>& photos);

} // namespace lathhouse::journal
