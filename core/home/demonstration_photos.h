#pragma once

#include "core/home/demonstration_story.h"
#include "core/photo/drawn_plant.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::home {

/// A picture that a demonstration's grower took: what is drawn, and when.
struct DemonstrationPhoto {
    PlantId plant;
    calendar::Date taken;
    std::chrono::minutes time; ///< Local, of the day.
    photo::DrawnPlant drawn;
    std::string name;          ///< "lemon-2026-06-17.jpg"
    bool measured = false;     ///< Its green cover is in the journal too, in the outline of `reach_cm`.
    double reach_cm = 0.0;     ///< Height of the outline round the leaves; the same for all pictures of a plant.
};
inline constexpr int kDemonstrationPhotoWidth = 640;
inline constexpr int kDemonstrationPhotoHeight = 480;

/// Pictures of a demonstration, oldest first: of the plants that the drift hit, each week while it mattered, with the
/// leaves, the yellow among them and the height that the story's own measurements tell; of the others now and then.
/// count: this many instead, those of the story first and then more of all plants; as a household of any size has no
/// story, it has none unless asked for. The same options and count give the same pictures.
std::vector<DemonstrationPhoto> demonstration_photos(const DemonstrationOptions& options, const Demonstration& made,
                                                     const Story& story, std::optional<int> count = {});

} // namespace lathhouse::home
