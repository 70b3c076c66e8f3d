#pragma once

#include "core/home/draws.h"
#include "core/home/new_plant.h"

#include <string>
#include <vector>

// What the sources of the demonstration share; of use inside core/home only.

namespace lathhouse::home {

/// A plant with where it usually stands; the household itself knows only where it stands now.
struct KeptPlant {
    Plant plant;
    const plants::PlantKind* kind;
    SpotId in_winter;
    SpotId in_summer; ///< The same where it is never carried.
};

struct DrawnHousehold {
    std::vector<Spot> spots;
    std::vector<KeptPlant> plants;
};

/// Lows of a room at night, Celsius.
struct IndoorTemperatures {
    double winter;
    double summer;
};
Spot indoor_spot(SpotId id, std::string name, std::string short_name, IndoorTemperatures night_low, double summer_moles,
                 double winter_moles, int capacity);
Spot outdoor_spot(SpotId id, std::string name, std::string short_name, SpotKind kind, double summer_moles,
                  double winter_moles, int capacity);

/// A household of any size, drawn at random.
DrawnHousehold drawn_household(int spot_count, int plant_count, Draws& draws);

} // namespace lathhouse::home
