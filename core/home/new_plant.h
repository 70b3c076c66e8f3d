#pragma once

#include "core/base/result.h"
#include "core/home/household.h"
#include "core/plants/plant_kind.h"

namespace lathhouse::home {

/// What a grower knows better than the reference; what is left out comes from the kind.
struct OwnFigures {
    std::optional<std::string> name = {}; ///< Else the kind's first common name.
    std::optional<Celsius> safe_night = {};
    std::optional<Celsius> damage_begins = {};
    std::optional<Celsius> lethal = {};
    std::optional<Celsius> heat_limit = {};
    std::optional<DailyLight> light_to_survive = {};
    std::optional<DailyLight> light_to_thrive = {};
    std::optional<bool> must_dry = {};
    std::optional<bool> hazardous = {};
    std::optional<bool> sulks = {};
    std::optional<bool> wants_open_air = {};
    std::optional<double> pot_kilograms =
        {}; ///< Else 4 kg: an 18 cm pot, moist (common practice, no source).
};

/// Toxic or deadly to people or to pets. Skin irritants and low toxicity do not count.
bool is_hazardous(const plants::PlantKind& kind);

/// Whether growers keep the kind outdoors while the nights allow: those of the groups of porch plants, porch
/// bulbs, citrus and other fruit, herbs and vegetables. Common practice, no source.
bool is_grown_outdoors(const plants::PlantKind& kind);

/// A plant of the kind that stands nowhere yet. `safe_night` is raised to `damage_begins` where the grower
/// gave only the latter and it is the warmer one, and so on down to `lethal`: a single line given moves the
/// others out of its way.
/// Errors: OutOfRange where lines that were given contradict each other, light to survive is above light to
/// thrive, or the pot weighs nothing.
Result<Plant> make_plant(PlantId id, const plants::PlantKind& kind, const OwnFigures& own = {});

} // namespace lathhouse::home
