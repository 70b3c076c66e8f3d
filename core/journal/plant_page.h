#pragma once

#include "core/base/result.h"
#include "core/home/measurement.h"
#include "core/home/photo_spread.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <vector>

namespace lathhouse::journal {

/// How often something was measured.
struct MeasuredKind {
    home::MeasurementKind kind;
    int count;
    friend bool operator==(const MeasuredKind&, const MeasuredKind&) = default;
};

/// How much of a plant's past is asked for.
struct PlantAsked {
    std::optional<home::MeasurementKind> kind = {}; ///< One that was never measured counts as none: the first there is.
    std::size_t newest = 8;
    std::size_t photos = 6;
};

/// What a page of a plant shows of what was measured and photographed of it; what was undone is not among it.
struct PlantPage {
    std::vector<MeasuredKind> kinds;       ///< The most first, of equals as the kinds are ordered.
    std::vector<home::Measurement> series; ///< Of the kind that is shown, as HouseholdStore::measurements.
    std::vector<home::Measurement> newest; ///< Of all kinds, the newest first.
    home::PhotoSpread photos;
};

/// The kind that is shown; nullopt where nothing was measured.
std::optional<home::MeasurementKind> shown_kind(const std::vector<MeasuredKind>& kinds,
                                                std::optional<home::MeasurementKind> asked);

/// Reads that of a household, at one moment, without the rows that are not shown: a plant of ten years has thousands.
/// Errors: NotFound, NotAHousehold, TooNew, Damaged, Locked.
Result<PlantPage> read_plant_page(const std::filesystem::path& folder, home::PlantId plant, const PlantAsked& asked);

} // namespace lathhouse::journal
