#pragma once

#include "core/home/photo.h"
#include "core/journal/household_store.h"

#include <filesystem>
#include <map>
#include <span>
#include <vector>

namespace lathhouse::journal {

/// The photos of a household. Every call is one short transaction; nothing is ever overwritten. What is done here is
/// undone and redone in the order of entry with all else (HouseholdStore::turn_last).
class PhotoBook {
public:
    /// The store must outlive the book.
    explicit PhotoBook(HouseholdStore& store) : store_(&store) {}

    /// Those that count, oldest first, of one plant or of all. Errors: Damaged, Locked.
    Result<std::vector<home::Photo>> photos(std::optional<home::PlantId> plant = {}) const;
    /// Those that were taken out of the lists, with the plants that they showed, oldest first. Errors: Damaged, Locked.
    Result<std::vector<home::Photo>> withdrawn() const;
    /// Errors: NotFound, Damaged, Locked.
    Result<home::Photo> photo(home::PhotoId id) const;

    /// Adds photos whose files are in place, all or nothing, with the plants that they show. One that is known by its
    /// SHA-256 stays as it is, but comes back where it was withdrawn and shows those plants too.
    /// Errors: NotFound for an unknown plant, Locked, Unwritable.
    struct Kept {
        home::PhotoId id;
        bool was_known;
    };
    Result<std::vector<Kept>> keep(std::span<const home::Photo> photos);

    enum class Shows { Yes, No };
    /// Says that a photo shows a plant, or no longer. Errors: NotFound, Locked, Unwritable.
    Result<void> assign(home::PhotoId photo, home::PlantId plant, Shows shows, calendar::Instant now);
    /// Sets a date by hand. Errors: NotFound, Locked, Unwritable.
    Result<void> date(home::PhotoId photo, std::chrono::local_seconds taken, calendar::Instant now);
    enum class Withdrawn { Yes, No };
    /// Takes a photo out of the lists, or brings it back; its file stays. Errors: NotFound, Locked, Unwritable.
    Result<void> withdraw(home::PhotoId photo, Withdrawn withdrawn, calendar::Instant now);
    /// Undoes or redoes the coming of these photos, all or nothing; one that is so already stays so, whatever was entered
    /// since. Errors: NotFound, Locked, Unwritable.
    Result<void> turn_added(std::span<const home::PhotoId> photos, HouseholdStore::Direction direction,
                            calendar::Instant now);
    /// The photos that stand for plants, by plant. Errors: Damaged, Locked.
    Result<std::map<home::PlantId, home::PhotoId>> pictures() const;
    /// Has a photo stand for a plant, or its drawing again. Errors: NotFound where the photo is not in the lists or
    /// does not show the plant, Locked, Unwritable.
    Result<void> choose_picture(home::PlantId plant, std::optional<home::PhotoId> photo, calendar::Instant now);
    /// The plant that a photo was last assigned to; nullopt where none was. Errors: Damaged, Locked.
    Result<std::optional<home::PlantId>> last_plant() const;

    /// Where the photo's file lies, and the small one that may be deleted at any time.
    std::filesystem::path file_of(const home::Photo& photo) const;
    std::filesystem::path thumbnail_of(const home::Photo& photo) const;
    /// That small one, made anew where it is missing. Errors: as photo::thumbnail_of, Unwritable.
    Result<std::filesystem::path> thumbnail(const home::Photo& photo) const;

    const std::filesystem::path& folder() const { return store_->folder(); }

private:
    HouseholdStore* store_;
};

} // namespace lathhouse::journal
