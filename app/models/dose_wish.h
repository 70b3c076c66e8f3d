#pragma once

#include "core/plants/plant_kind.h"

#include <QString>

#include <optional>

namespace lathhouse::models {

/// What a plant is to be fed with, as its page or the round knows it.
struct DoseWish {
    QString plant;                           ///< Name.
    double ppm = 0.0;                        ///< Nitrogen; 0 where no strength is known.
    std::optional<plants::FeedClass> feeder; ///< nullopt for a kind that the tables do not know.
};

} // namespace lathhouse::models
