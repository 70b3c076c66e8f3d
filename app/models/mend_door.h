#pragma once

#include "app/models/household_door.h"
#include "app/models/place_form.h"
#include "core/home/household_change.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace lathhouse::models {

/// Where changes of the household itself are read and written; as HouseholdDoor.
struct MendDoor {
    std::function<Result<plan::HouseholdFacts>()> load;
    /// Names of plants that are gone; a new plant has none of them.
    std::function<Result<std::vector<std::string>>()> gone_names;
    std::function<Result<void>(const home::HouseholdChange&, calendar::Date since, calendar::Instant now)> change;
    std::function<Result<void>(const home::SeedLot&, calendar::Date on, calendar::Instant now)> add_lot;
    PlaceDoor place;
    bool keeps = true;
};

MendDoor mend_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load, PlaceDoor place);
MendDoor mend_in_memory(std::shared_ptr<MemoryHousehold> household, PlaceDoor place);

} // namespace lathhouse::models
