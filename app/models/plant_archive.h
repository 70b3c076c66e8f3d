#pragma once

#include "core/base/result.h"
#include "core/journal/plant_page.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <utility>
#include <vector>

namespace lathhouse::models {

/// Reads a journal's measurements and photos plant by plant, and of those what is shown: a journal of ten years has two
/// hundred thousand of them, a page a few hundred. Lists that were asked for last are kept as they were read; several
/// threads may ask at once.
class PlantArchive {
public:
    using Measurements = std::vector<home::Measurement>;
    using Photos = std::vector<home::Photo>;
    using Kind = std::optional<home::MeasurementKind>;
    /// Where it reads; an archive in memory and one in a folder differ in these alone.
    struct Source {
        std::function<Result<journal::PlantPage>(home::PlantId, const journal::PlantAsked&)> page;
        std::function<Result<Measurements>(home::PlantId, Kind)> measurements;
        std::function<Result<Photos>(home::PlantId)> photos;
        std::function<Result<Measurements>()> leading;
    };

    explicit PlantArchive(Source source) : source_(std::move(source)) {}

    /// Errors: as what reads it, here and below.
    Result<journal::PlantPage> page(home::PlantId plant, const journal::PlantAsked& asked) const
    {
        return source_.page(plant, asked);
    }
    /// Of one kind or of all, by date; nothing where it cannot be read. Never null.
    std::shared_ptr<const Measurements> measurements(home::PlantId plant, Kind kind = {}) const;
    /// Oldest first; nothing where they cannot be read. Never null.
    std::shared_ptr<const Photos> photos(home::PlantId plant) const;
    /// Of every plant its measurements of the kind that it has most of, by date.
    Result<Measurements> leading() const { return source_.leading(); }

private:
    template <class Key, class List>
    using Kept = std::vector<std::pair<Key, std::shared_ptr<const List>>>;
    template <class Key, class List, class Read>
    std::shared_ptr<const List> kept(Kept<Key, List>& lists, const Key& key, const Read& read) const;

    Source source_;
    mutable std::mutex guard_;
    /// The ones asked for last stand last.
    mutable Kept<std::pair<home::PlantId, Kind>, Measurements> measurements_;
    mutable Kept<home::PlantId, Photos> photos_;
};

/// Of lists that are there as a whole; photos of any plants.
std::shared_ptr<const PlantArchive> archive_of(std::vector<home::Measurement> measurements, std::vector<home::Photo> photos);

} // namespace lathhouse::models
