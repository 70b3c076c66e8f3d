#include "app/models/drawn_photos.h"

#include "app/words/phrase.h"
#include "core/base/sha256.h"
#include "core/journal/demonstration_pictures.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <utility>

namespace lathhouse::models {

DrawnPhotos::DrawnPhotos(std::vector<home::DemonstrationPhoto> drawn, home::Household household)
    : drawn_(std::move(drawn)), household_(std::move(household))
{
    for (const auto& one : drawn_) {
        const auto taken = calendar::start_of_day_utc(one.taken);
        photos_.push_back({.id = static_cast<int>(photos_.size()) + 1,
                           .sha256 = sha256_of(one.name),
                           .extension = "jpg",
                           .bytes = 0, // Not drawn yet.
                           .width = home::kDemonstrationPhotoWidth,
                           .height = home::kDemonstrationPhotoHeight,
                           .taken = std::chrono::local_seconds{taken.time_since_epoch()} + one.time,
                           .zone_offset = {},
                           .taken_from = home::TakenFrom::Exif,
                           .original_name = one.name,
                           .position = household_.place.position,
                           .entered = taken,
                           .plants = {one.plant}});
    }
}

std::vector<home::Photo> DrawnPhotos::photos() const
{
    return those(Listed::Yes);
}

std::vector<home::Photo> DrawnPhotos::withdrawn() const
{
    return those(Listed::No);
}

std::vector<home::Photo> DrawnPhotos::those(Listed listed) const
{
    const std::lock_guard lock(guard_);
    auto all = photos_;
    std::set<home::PhotoId> out;
    for (const auto& [change, taken] : changes_) {
        if (change.kind == home::PhotoChangeKind::Withdrawn) {
            out.insert(change.photos.front());
        } else if (change.kind == home::PhotoChangeKind::BroughtBack) {
            out.erase(change.photos.front());
        }
        for (auto& photo : all) {
            if (change.photos.empty() || photo.id != change.photos.front()) {
                continue;
            }
            if (change.kind == home::PhotoChangeKind::Dated && taken) {
                photo.taken = *taken;
                photo.taken_from = home::TakenFrom::Given;
            }
            if (!change.plant) {
                continue;
            }
            if (change.kind == home::PhotoChangeKind::TakenOff) {
                std::erase(photo.plants, *change.plant);
            } else if (change.kind == home::PhotoChangeKind::Assigned &&
                       std::ranges::find(photo.plants, *change.plant) == photo.plants.end()) {
                photo.plants.push_back(*change.plant);
                std::ranges::sort(photo.plants);
            }
        }
    }
    std::erase_if(all, [&](const home::Photo& photo) { return out.contains(photo.id) == (listed == Listed::Yes); });
    std::ranges::stable_sort(all, {}, &home::Photo::taken);
    return all;
}

std::map<home::PlantId, home::PhotoId> DrawnPhotos::pictures() const
{
    const std::lock_guard lock(guard_);
    std::map<home::PlantId, home::PhotoId> chosen;
    for (const auto& [change, taken] : changes_) {
        if (change.kind == home::PhotoChangeKind::Chosen && change.plant) {
            chosen[*change.plant] = change.photos.front();
        } else if (change.kind == home::PhotoChangeKind::DrawingChosen && change.plant) {
            chosen.erase(*change.plant);
        } else if (change.kind == home::PhotoChangeKind::TakenOff && change.plant) {
            const auto picture = chosen.find(*change.plant);
            if (picture != chosen.end() && picture->second == change.photos.front()) {
                chosen.erase(picture);
            }
        }
    }
    return chosen;
}

void DrawnPhotos::change(const home::PhotoChange& change, std::optional<std::chrono::local_seconds> taken)
{
    const std::lock_guard lock(guard_);
    changes_.push_back({change, taken});
}

void DrawnPhotos::take_back(const home::PhotoChange& change)
{
    const std::lock_guard lock(guard_);
    const auto last = std::ranges::find(changes_.rbegin(), changes_.rend(), change, &Done::change);
    if (last != changes_.rend()) {
        changes_.erase(std::next(last).base());
    }
}

Result<std::filesystem::path> DrawnPhotos::file(const home::Photo& photo) const
{
    const std::lock_guard lock(guard_);
    if (photo.id < 1 || photo.id > static_cast<int>(drawn_.size())) {
        return Error{ErrorCode::NotFound, words::phrase("a household in memory has no such photo")};
    }
    const auto& one = drawn_[static_cast<std::size_t>(photo.id) - 1];
    const auto path = std::filesystem::path{folder_.path().toStdString()} / one.name;
    std::error_code failure;
    if (!std::filesystem::exists(path, failure)) {
        const auto bytes = journal::demonstration_file(one, household_);
        std::ofstream out{path, std::ios::binary};
        out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
        out.close();
        if (!out) {
            std::filesystem::remove(path, failure);
            return Error{ErrorCode::Unwritable, words::phrase("the drawn photo could not be written to %1; make room where temporary files are kept",
                                                             path.string())};
        }
    }
    return path;
}

} // namespace lathhouse::models
