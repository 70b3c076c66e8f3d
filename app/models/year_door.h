#pragma once

#include "app/models/household_door.h"
#include "app/models/year_data.h"
#include "app/models/shown_units.h"

#include <filesystem>
#include <functional>
#include <memory>

namespace lathhouse::models {

/// The household in a folder; `load` reads what other pages read as well.
YearDoor year_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load,
                        calendar::Date today, ShownUnits units);
/// A household without a folder, shared with other pages.
YearDoor year_in_memory(std::shared_ptr<MemoryHousehold> household, calendar::Date today, ShownUnits units);

} // namespace lathhouse::models
