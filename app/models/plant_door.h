#pragma once

#include "app/models/household_door.h"
#include "app/models/plant_archive.h"
#include "app/models/photo_door.h"
#include "core/home/demonstration_photos.h"
#include "core/home/lineage.h"
#include "core/home/measurement.h"
#include "core/home/photo.h"

#include <chrono>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// All that the page Plants reads at once, and where it reads what belongs to one plant.
struct PlantBook {
    plan::HouseholdFacts facts;
    std::shared_ptr<const PlantArchive> archive; ///< Never null.
    std::map<home::PlantId, home::Photo> pictures = {}; ///< Photos that stand for plants.
    std::vector<home::Descent> descents = {}; ///< What plants were divided from.
    std::vector<home::GonePlant> gone = {}; ///< That died, were given away or taken off the list.
};

/// What is written at once and taken back at once. A division stands alone: its event names the pieces (home::pieces_in).
struct PlantEntries {
    std::vector<home::Event> events;
    std::vector<home::Measurement> measurements;
    std::optional<home::PhotoChange> photos = {}; ///< One that came in is not recorded, only taken back.
    std::optional<std::chrono::local_seconds> taken = {}; ///< When a photo that is dated by hand was taken.
};

/// Where the page Plants reads the household and writes what was seen; as HouseholdDoor.
struct PlantDoor {
    std::function<Result<PlantBook>()> load;
    /// All of it or nothing.
    std::function<Result<void>(const PlantEntries&)> record;
    /// Takes entries back that were written last, or writes them again that were taken back last. Errors: NotFound
    /// where something else was written since; then nothing is changed.
    std::function<Result<void>(const PlantEntries&, calendar::Instant now)> take_back;
    std::function<Result<void>(const PlantEntries&, calendar::Instant now)> bring_back;
    /// The small picture of a photo, made where it is missing.
    std::function<Result<std::filesystem::path>(const home::Photo&)> thumbnail;
    PhotoDoor photos = {};
    /// Whether what is written outlasts the window.
    bool keeps = true;
};

/// The household in a folder; `load` reads what other pages read as well.
PlantDoor plants_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load);
/// A household without a folder, shared with other pages. Its photos are drawn, and none can be brought in.
PlantDoor plants_in_memory(std::shared_ptr<MemoryHousehold> household, std::vector<home::Measurement> measurements = {},
                           std::vector<home::DemonstrationPhoto> photos = {});
/// No household at all; everything gives that error.
PlantDoor no_plants(Error why);

} // namespace lathhouse::models
