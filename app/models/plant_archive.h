#pragma once

#include "core/base/result.h"
#include "core/home/measurement.h"
#include "core/home/photo.h"

#include <functional>
#include <memory>
#include <mutex>
#include <utility>
#include <vector>

namespace lathhouse::models {

/// What was measured and photographed of one plant.
struct PlantRecords {
    std::vector<home::Measurement> measurements; ///< By date.
    std::vector<home::Photo> photos;             ///< Oldest first.
};

/// Reads a journal's measurements and photos plant by plant: a journal of ten years has two hundred thousand of them, a
/// page shows those of one plant. The last few that were read are kept, and stay as they were read; several threads may
/// ask at once.
class PlantArchive {
public:
    using Read = std::function<Result<PlantRecords>(home::PlantId)>;
    using ReadLeading = std::function<Result<std::vector<home::Measurement>>()>;

    PlantArchive(Read read, ReadLeading leading) : read_(std::move(read)), leading_(std::move(leading)) {}

    /// Errors: as what reads it; never null.
    Result<std::shared_ptr<const PlantRecords>> of(home::PlantId plant) const;
    /// As `of`, with nothing in it where it cannot be read.
    std::shared_ptr<const PlantRecords> readable_of(home::PlantId plant) const;
    /// Of every plant its measurements of the kind that it has most of, by date.
    Result<std::vector<home::Measurement>> leading() const { return leading_(); }

private:
    Read read_;
    ReadLeading leading_;
    mutable std::mutex guard_;
    /// The one asked for last stands last.
    mutable std::vector<std::pair<home::PlantId, std::shared_ptr<const PlantRecords>>> kept_;
};

/// Of lists that are there as a whole; photos of any plants.
std::shared_ptr<const PlantArchive> archive_of(std::vector<home::Measurement> measurements, std::vector<home::Photo> photos);

} // namespace lathhouse::models
