#pragma once

#include "core/home/photo.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

/// What can be done with photos and undone again.
enum class PhotoChangeKind {
    Added,         ///< They came in together.
    Assigned,      ///< Shows the plant.
    TakenOff,      ///< Shows the plant no longer.
    Dated,         ///< Dated by hand.
    Withdrawn,     ///< Taken out of the lists.
    BroughtBack,   ///< Back in the lists.
    Chosen,        ///< Stands for the plant.
    DrawingChosen, ///< The plant's drawing stands for it again.
};
constexpr std::string_view to_string(PhotoChangeKind kind)
{
    switch (kind) {
    case PhotoChangeKind::Added:
        return "photos_added";
    case PhotoChangeKind::Assigned:
        return "photo_assigned";
    case PhotoChangeKind::TakenOff:
        return "photo_taken_off";
    case PhotoChangeKind::Dated:
        return "photo_dated";
    case PhotoChangeKind::Withdrawn:
        return "photo_withdrawn";
    case PhotoChangeKind::BroughtBack:
        return "photo_brought_back";
    case PhotoChangeKind::Chosen:
        return "picture_chosen";
    case PhotoChangeKind::DrawingChosen:
        return "drawing_chosen";
    }
    return "";
}

/// One thing that was done with a photo, or photos that came in together.
struct PhotoChange {
    PhotoChangeKind kind;
    std::vector<PhotoId> photos;   ///< One but for Added; none for DrawingChosen.
    std::optional<PlantId> plant;  ///< Whom it concerns.
    std::string name;              ///< Of the first photo's file as it was imported.
    calendar::Date taken;          ///< Of the first photo, as it was imported; of entry for DrawingChosen.
    calendar::Instant entered;
    friend bool operator==(const PhotoChange&, const PhotoChange&) = default;
};

} // namespace lathhouse::home
