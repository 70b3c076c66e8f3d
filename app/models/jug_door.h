#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/jug.h"

#include <filesystem>
#include <functional>
#include <vector>

namespace lathhouse::models {

/// Where the household's cans and spoons are read and kept; as HouseholdDoor.
struct JugDoor {
    std::function<Result<std::vector<home::Jug>>()> load;
    /// One of that name is followed by it.
    std::function<Result<void>(const home::Jug&, calendar::Instant now)> keep;
};

JugDoor jugs_in_folder(std::filesystem::path folder);
/// They are gone with the window.
JugDoor jugs_in_memory();

} // namespace lathhouse::models
