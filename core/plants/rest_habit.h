#pragma once

#include "core/plants/plant_kind.h"

namespace lathhouse::plants {

/// How a kind takes the winter of its own growing year.
enum class WinterHabit {
    Grows, ///< It has no rest, lives one year, or grows in the cool season.
    Slows, ///< It grows on, slower, as days and light allow.
    Rests  ///< It stands still or dies back, lamps or not.
};

/// What the words of the columns `rest` and `growth_season` amount to.
struct RestHabit {
    WinterHabit winter;
    bool summer_rest; ///< It stands still in the hot season.
    bool dry;         ///< It wants to be nearly dry while it rests.
    bool cool;        ///< It wants to be cool in winter.
    bool after_bloom; ///< It rests for a while after its flowers; no date can be known.
    friend constexpr bool operator==(const RestHabit&, const RestHabit&) = default;
};

/// Read from the words of the table: dormant, leafless, tuber, corm, rhizome, bulb times in weeks, "winter
/// rest", "dry winter" and "cold winter" are a rest; "slow", "semi-rest", "leaf loss" and any other winter
/// word ("cool winter or warm and bright" too) is a slower season; "summer dry", "summer rest" and "summer dormant" are a rest in summer.
RestHabit rest_habit(const PlantKind& kind);

} // namespace lathhouse::plants
