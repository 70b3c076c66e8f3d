#pragma once

#include "core/home/demonstration_photos.h"
#include "core/home/photo_change.h"

#include <QTemporaryDir>

#include <chrono>
#include <filesystem>
#include <map>
#include <mutex>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// The photos of a household in memory: drawn into a folder of their own when they are looked at, which goes with them.
/// Several threads may use it at once.
class DrawnPhotos {
public:
    DrawnPhotos(std::vector<home::DemonstrationPhoto> drawn, home::Household household);

    std::vector<home::Photo> photos() const; ///< Oldest first, without those that are out of the lists.
    std::vector<home::Photo> withdrawn() const; ///< Those.
    std::map<home::PlantId, home::PhotoId> pictures() const;
    /// What is done is kept in the order it was done in, and only the last of it can be taken back.
    /// taken: when a photo that is dated by hand was taken.
    void change(const home::PhotoChange& change, std::optional<std::chrono::local_seconds> taken = {});
    void take_back(const home::PhotoChange& change);
    /// Errors: NotFound, Unwritable.
    Result<std::filesystem::path> file(const home::Photo& photo) const;

private:
    enum class Listed { Yes, No };
    std::vector<home::Photo> those(Listed listed) const;

    mutable std::mutex guard_;
    std::vector<home::DemonstrationPhoto> drawn_; ///< By the number of the photo, from 1.
    home::Household household_;
    std::vector<home::Photo> photos_;
    struct Done {
        home::PhotoChange change;
        std::optional<std::chrono::local_seconds> taken;
    };
    std::vector<Done> changes_;
    QTemporaryDir folder_;
};

} // namespace lathhouse::models
