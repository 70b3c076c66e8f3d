#pragma once

#include "app/models/plant_door.h"
#include "app/sheet/sheet_wish.h"
#include "app/words/words.h"

#include <filesystem>

namespace lathhouse {

/// Prints a sheet into a PDF file without a window and without a display; returns its number of pages. The file is
/// the whole sheet or as it was before. Errors: as sheet::print_sheet, Unwritable.
Result<int> print_to_file(char** argv, const models::PlantDoor& door, const sheet::SheetWish& wish, calendar::Date today,
                          words::UnitSystem units, const std::filesystem::path& file);

} // namespace lathhouse
