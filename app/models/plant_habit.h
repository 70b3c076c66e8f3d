#pragma once

#include "core/plants/plant_kind.h"

namespace lathhouse::models {

/// How a plant is drawn until one of its photos is chosen.
enum class Habit {
    RoundCrown,     ///< A stem with a crown, fruit on citrus.
    Weeping,        ///< A stem with hanging twigs.
    Blades,         ///< Upright blades from the mix.
    SplitLeaves,    ///< Large leaves on stalks.
    ArchingOrchid,  ///< Strap leaves with an arching spike.
    FloweringBush,
    HangingFlowers, ///< A bush with small flowers that hang.
    Trumpets,       ///< A bush with large trumpets that hang.
    Fleshy,         ///< Thick leaves or a rosette.
    Jointed,        ///< Joints in chains, with flowers at their ends.
    ThinGrey,       ///< Thin grey leaves on twigs.
    Trailing,
    Seedlings       ///< Low leaves: herbs, vegetables and young plants.
};

/// The habit of a kind: by its species or genus where those look otherwise than their group, else by its group;
/// RoundCrown for a kind of the grower's own (nullptr). The drawing stands for the plant, it does not portray it.
Habit habit_of(const plants::PlantKind* kind);

/// Whether fruit is drawn: citrus and their like.
bool bears_fruit(const plants::PlantKind* kind);

} // namespace lathhouse::models
