#pragma once

#include "core/home/household.h"
#include "core/units/length.h"

namespace lathhouse::plan {

/// A pot as far as it is known.
struct PotSize {
    Litres volume;
    bool from_weight; ///< The volume is only guessed from the plant's weight.
    Metres width;     ///< Guessed from the volume.
};

/// Volume as the grower gave it, else 0.75 L a kilogram of the moist plant; width = (volume / 0.6)^(1/3).
/// Rough: rules pot_litres_per_kg and pot_shape (published pots give 0.36 and 0.70 for the latter, which
/// moves the width by a sixth either way).
PotSize pot_size(const home::Plant& plant);

} // namespace lathhouse::plan
