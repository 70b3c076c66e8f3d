#include "app/models/photo_door.h"

#include "core/journal/household_store.h"
#include "core/journal/photo_book.h"

#include <algorithm>
#include <fstream>
#include <thread>
#include <utility>

namespace lathhouse::models {

namespace {

/// Folders stand for the photos in and below them; what is neither is kept, so that it is refused by name.
std::vector<std::filesystem::path> all_files(const std::vector<std::filesystem::path>& chosen)
{
    std::vector<std::filesystem::path> files;
    for (const auto& path : chosen) {
        const auto found = journal::photo_files_in(path);
        if (found) {
            files.insert(files.end(), found->begin(), found->end());
        } else {
            files.push_back(path);
        }
    }
    return files;
}

/// Whether a photo does not say when it was taken. What is none says nothing either, and is refused when it comes in.
bool lacks_date(const std::filesystem::path& file)
{
    constexpr std::size_t kHead = std::size_t{1} << 17U; // Cameras write it first; most of the file need not be read.
    photo::Bytes head(kHead);
    std::ifstream input{file, std::ios::binary};
    input.read(reinterpret_cast<char*>(head.data()), static_cast<std::streamsize>(kHead));
    head.resize(static_cast<std::size_t>(std::max<std::streamsize>(0, input.gcount())));
    const auto name = file.filename().string();
    if (const auto facts = photo::read_facts(head, name); facts && facts->exif.taken) {
        return false;
    }
    const auto bytes = photo::read_bytes(file);
    const auto facts = bytes ? photo::read_facts(*bytes, name) : Result<photo::PhotoFacts>{bytes.error()};
    return facts && !facts->exif.taken;
}

/// One processor stays for the window.
unsigned workers()
{
    return std::max(2U, std::thread::hardware_concurrency()) - 1;
}

struct OpenedFolder {
    journal::HouseholdStore store;
    home::Household household;
};
Result<OpenedFolder> opened_folder(const std::filesystem::path& folder)
{
    auto store = journal::HouseholdStore::open(folder);
    if (!store) {
        return store.error();
    }
    auto household = store->load();
    if (!household) {
        return household.error();
    }
    return OpenedFolder{std::move(*store), std::move(*household)};
}

} // namespace

std::optional<home::PlantId> plant_named_by(const std::filesystem::path& file, std::span<const home::Plant> plants)
{
    const auto begins_with_digit = [](const std::string& name) {
        return name.empty() || (name.front() >= '0' && name.front() <= '9');
    };
    if (!begins_with_digit(file.stem().string())) {
        if (const auto plant = journal::plant_by_name("{plant}*", file, plants)) {
            return plant;
        }
    }
    const auto folder = file.parent_path().filename();
    // Whole: what begins as a plant's name does is nobody's folder yet.
    return begins_with_digit(folder.string()) ? std::nullopt : journal::plant_by_name("{plant}", folder, plants);
}

PhotosAside aside_of(std::vector<home::Photo> listed, const home::Household& household)
{
    PhotosAside aside;
    for (auto& photo : listed) {
        if (std::ranges::none_of(photo.plants, [&](home::PlantId plant) { return household.plant(plant) != nullptr; })) {
            aside.of_no_plant.push_back(std::move(photo));
        }
    }
    for (const auto& plant : household.plants) {
        aside.plants.emplace_back(plant.id, plant.name);
    }
    return aside;
}

PhotoDoor photos_in_folder(std::filesystem::path folder)
{
    PhotoDoor door;
    door.file = [folder](const home::Photo& photo) -> Result<std::filesystem::path> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        return journal::PhotoBook{*store}.file_of(photo);
    };
    door.undated = [](const std::vector<std::filesystem::path>& chosen, const std::atomic<bool>& stop) -> Result<std::size_t> {
        const auto files = all_files(chosen);
        return static_cast<std::size_t>(std::ranges::count_if(files, [&stop](const auto& file) { return !stop && lacks_date(file); }));
    };
    door.import = [folder](const std::vector<std::filesystem::path>& chosen, home::PlantId plant,
                           std::optional<std::chrono::local_seconds> taken, calendar::Instant entered, const journal::ImportProgress& progress,
                           const std::atomic<bool>& stop) -> Result<journal::ImportReport> {
        auto opened = opened_folder(folder);
        if (!opened) {
            return opened.error();
        }
        auto& [store, household] = *opened;
        const journal::ImportWishes wishes{.plants = [plant](const std::filesystem::path&) { return std::vector{plant}; },
                                           .taken = taken,
                                           .time_zone = household.place.time_zone,
                                           .entered = entered,
                                           .workers = workers()};
        const auto files = all_files(chosen);
        auto report = journal::import_photos(store, files, wishes, progress, stop);
        const journal::PhotoBook book{store};
        for (auto& file : report.files) {
            if (file.outcome == journal::ImportOutcome::Known) {
                if (const auto kept = book.photo(file.photo->id)) {
                    file.photo->plants = kept->plants;
                }
            }
        }
        return report;
    };
    door.import_named = [folder](const std::vector<std::filesystem::path>& found, calendar::Instant entered,
                                 const journal::ImportProgress& progress,
                                 const std::atomic<bool>& stop) -> Result<journal::ImportReport> {
        auto opened = opened_folder(folder);
        if (!opened) {
            return opened.error();
        }
        auto& [store, household] = *opened;
        std::vector<std::filesystem::path> files;
        std::vector<journal::ImportedFile> nameless;
        for (const auto& file : found) {
            if (plant_named_by(file, household.plants)) {
                files.push_back(file);
            } else {
                nameless.push_back({.file = file, .outcome = journal::ImportOutcome::Refused, .photo = {}, .trouble = Said{kNamesNoPlant}});
            }
        }
        const journal::ImportWishes wishes{.plants = [&plants = household.plants](const std::filesystem::path& file) {
                                               const auto plant = plant_named_by(file, plants);
                                               return plant ? std::vector{*plant} : std::vector<home::PlantId>{};
                                           },
                                           .taken = {},
                                           .time_zone = household.place.time_zone,
                                           .entered = entered,
                                           .workers = workers()};
        auto report = journal::import_photos(store, files, wishes, progress, stop);
        report.files.insert(report.files.end(), nameless.begin(), nameless.end());
        return report;
    };
    door.write_out = [folder](std::optional<home::PlantId> plant, const std::filesystem::path& target, journal::PhotoPosition position,
                              const journal::ImportProgress& progress,
                              const std::atomic<bool>& stop) -> Result<journal::PhotoExport> {
        auto opened = opened_folder(folder);
        if (!opened) {
            return opened.error();
        }
        auto& [store, household] = *opened;
        const journal::PhotoBook book{store};
        const auto photos = book.photos(plant);
        if (!photos) {
            return photos.error();
        }
        return journal::export_photos(book, household, *photos, target, position, progress, stop);
    };
    door.aside = [folder]() -> Result<PhotosAside> {
        auto opened = opened_folder(folder);
        if (!opened) {
            return opened.error();
        }
        const journal::PhotoBook book{opened->store};
        auto listed = book.photos();
        auto withdrawn = listed ? book.withdrawn() : Result<std::vector<home::Photo>>{listed.error()};
        if (!withdrawn) {
            return withdrawn.error();
        }
        const auto gone = opened->store.gone_plants();
        if (!gone) {
            return gone.error();
        }
        auto aside = aside_of(*std::move(listed), opened->household);
        aside.withdrawn = *std::move(withdrawn);
        for (const auto& of : *gone) {
            aside.gone.emplace(of.plant.id, of.plant.name);
        }
        return aside;
    };
    return door;
}

PhotoDoor no_photos(Error why)
{
    return {.file = [why](const home::Photo&) -> Result<std::filesystem::path> { return why; },
            .undated = [why](const std::vector<std::filesystem::path>&, const std::atomic<bool>&) -> Result<std::size_t> { return why; },
            .import = [why](const std::vector<std::filesystem::path>&, home::PlantId, std::optional<std::chrono::local_seconds>, calendar::Instant,
                            const journal::ImportProgress&,
                            const std::atomic<bool>&) -> Result<journal::ImportReport> { return why; },
            .import_named = [why](const std::vector<std::filesystem::path>&, calendar::Instant, const journal::ImportProgress&,
                                  const std::atomic<bool>&) -> Result<journal::ImportReport> { return why; },
            .write_out = [why](std::optional<home::PlantId>, const std::filesystem::path&, journal::PhotoPosition, const journal::ImportProgress&,
                               const std::atomic<bool>&) -> Result<journal::PhotoExport> { return why; },
            .aside = [why]() -> Result<PhotosAside> { return why; }};
}

Result<void> change_photos(journal::HouseholdStore& store, const home::PhotoChange& change,
                           std::optional<std::chrono::local_seconds> taken)
{
    using enum home::PhotoChangeKind;
    journal::PhotoBook book{store};
    const bool needs_plant = change.kind == Assigned || change.kind == TakenOff || change.kind == Chosen ||
                             change.kind == DrawingChosen;
    if ((needs_plant && !change.plant) || (change.photos.empty() && change.kind != DrawingChosen)) {
        return Error{ErrorCode::WrongUsage, "this says neither which photo nor which plant"};
    }
    switch (change.kind) {
    case Assigned:
        return book.assign(change.photos.front(), *change.plant, journal::PhotoBook::Shows::Yes, change.entered);
    case TakenOff:
        return book.assign(change.photos.front(), *change.plant, journal::PhotoBook::Shows::No, change.entered);
    case Withdrawn:
        return book.withdraw(change.photos.front(), journal::PhotoBook::Withdrawn::Yes, change.entered);
    case BroughtBack:
        return book.withdraw(change.photos.front(), journal::PhotoBook::Withdrawn::No, change.entered);
    case Chosen:
        return book.choose_picture(*change.plant, change.photos.front(), change.entered);
    case DrawingChosen:
        return book.choose_picture(*change.plant, {}, change.entered);
    case Dated:
        if (taken) {
            return book.date(change.photos.front(), *taken, change.entered);
        }
        break;
    case Added:
        break;
    }
    return Error{ErrorCode::WrongUsage, "photos come in by an import, and are dated with a date"};
}

} // namespace lathhouse::models
