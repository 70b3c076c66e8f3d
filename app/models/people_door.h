#pragma once

#include "app/models/household_door.h"
#include "core/home/history.h"

#include <filesystem>
#include <functional>
#include <memory>

namespace lathhouse::models {

/// Where what is said of children and animals is written. Each is one short transaction, called from a thread.
struct PeopleDoor {
    std::function<Result<plan::HouseholdFacts>()> load;
    std::function<Result<void>(const home::Event&)> record;
    /// Takes that event back where it is the last that was entered, or lets it count again. Errors: NotFound where
    /// something else was written since.
    std::function<Result<void>(const home::Event&, calendar::Instant now)> take_back;
    std::function<Result<void>(const home::Event&, calendar::Instant now)> bring_back;
};
PeopleDoor people_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load);
PeopleDoor people_in_memory(std::shared_ptr<MemoryHousehold> household);

} // namespace lathhouse::models
