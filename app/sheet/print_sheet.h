#pragma once

#include "app/models/plant_door.h"
#include "app/models/year_words.h"
#include "app/sheet/sheet_wish.h"

#include <string>

namespace lathhouse::sheet {

struct PrintedSheet {
    std::string pdf;
    int pages;
};

/// Reads the household by the door, works the sheet out and draws it. Needs a QGuiApplication; may run in any thread.
/// The name of the place is printed, coordinates of the home and of photos never are.
///
/// Errors: as the door's load; NotFound for a plant that is not there.
Result<PrintedSheet> print_sheet(const models::PlantDoor& door, const SheetWish& wish, calendar::Date today,
                                 const models::YearWords& words);

} // namespace lathhouse::sheet
