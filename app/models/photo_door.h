#pragma once

#include "core/home/photo_change.h"
#include "core/journal/photo_export.h"

#include <atomic>
#include <chrono>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace lathhouse::models {

/// Photos that no plant's page shows.
struct PhotosAside {
    std::vector<home::Photo> withdrawn;   ///< Out of the lists.
    std::vector<home::Photo> of_no_plant; ///< In the lists, of no plant that is there.
    std::map<home::PlantId, std::string> gone; ///< Names of plants that are gone.
    std::vector<std::pair<home::PlantId, std::string>> plants; ///< Those that are there.
};

/// Where the pages read photos and bring new ones in; as PlantDoor, whose folder it shares.
struct PhotoDoor {
    /// The unaltered file of a photo.
    std::function<Result<std::filesystem::path>(const home::Photo&)> file;
    /// How many of the files, and of what lies in folders, do not say when they were taken. Errors: where none can come in.
    std::function<Result<std::size_t>(const std::vector<std::filesystem::path>&, const std::atomic<bool>& stop)> undated;
    /// Takes files and what lies in folders in, for one plant; as journal::import_photos. taken: when those were taken that do
    /// not say so themselves; without it the file's own time counts. One that was known comes with all the plants that it
    /// shows now. Errors: as opening the household.
    std::function<Result<journal::ImportReport>(const std::vector<std::filesystem::path>&, home::PlantId,
                                                std::optional<std::chrono::local_seconds> taken, calendar::Instant entered, const journal::ImportProgress&,
                                                const std::atomic<bool>& stop)>
        import;
    /// Takes files in, each for the plant that its name begins with, else for the one that its folder is called after; a
    /// file that names neither is left where it is and refused. Errors: as opening the household.
    std::function<Result<journal::ImportReport>(const std::vector<std::filesystem::path>&, calendar::Instant entered,
                                                const journal::ImportProgress&, const std::atomic<bool>& stop)>
        import_named;
    /// Writes the photos of a plant, or all of them, into a folder, which is made; as journal::export_photos. Errors: as opening the household.
    std::function<Result<journal::PhotoExport>(std::optional<home::PlantId>, const std::filesystem::path& folder, journal::PhotoPosition,
                                               const journal::ImportProgress&, const std::atomic<bool>& stop)>
        write_out;
    /// Each group oldest first.
    std::function<Result<PhotosAside>()> aside;
};

/// Photos of the household in a folder.
PhotoDoor photos_in_folder(std::filesystem::path folder);
/// None can be read or brought in; everything gives that error.
PhotoDoor no_photos(Error why);

/// Of the photos in the lists those of no plant of the household, and its plants; withdrawn and gone are left empty.
PhotosAside aside_of(std::vector<home::Photo> listed, const home::Household& household);

/// Why import_named refuses a file that names no plant; said in the window's language by whoever shows it.
inline constexpr const char* kNamesNoPlant = "names no plant";

/// The plant that a photo's file names: at the beginning of its name ("Lemon in May.jpg"), else by the folder in which it
/// lies. Numbers name none: cameras number their photos.
std::optional<home::PlantId> plant_named_by(const std::filesystem::path& file, std::span<const home::Plant> plants);

/// Does what is said to photos of an open household; taken: when one that is dated was taken. Errors: as PhotoBook; WrongUsage
/// for Added, which an import does, and for a dating without its date.
Result<void> change_photos(journal::HouseholdStore& store, const home::PhotoChange& change,
                           std::optional<std::chrono::local_seconds> taken = {});

} // namespace lathhouse::models
