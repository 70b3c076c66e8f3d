#pragma once

#include "core/home/seedling.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse {

/// Seedlings of a tray that became plants, each in a pot of its own. Knows no Qt, so that the command line asks in the
/// same way.
struct Potting {
    home::TrayId tray;
    int plants;
    calendar::Date on;
    std::string name = {};                 ///< Of one plant its name, of several the part before the number; empty: crop and tray.
    std::optional<home::SpotId> spot = {}; ///< Empty: where the tray stands.
};

/// The plants that it makes, without their ids. Errors: as home::seedlings_of.
inline Result<std::vector<home::Plant>> potted_plants(const home::SeedBook& book, const Potting& potting)
{
    auto plants = home::seedlings_of(book, potting.tray, potting.plants, potting.name);
    if (!plants) {
        return plants;
    }
    if (plants->size() == 1 && !potting.name.empty()) {
        plants->front().name = potting.name;
    }
    for (auto& plant : *plants) {
        plant.spot = potting.spot ? potting.spot : plant.spot;
    }
    return plants;
}

/// Those that came up, or were sown where nobody counted, and are in no pot yet.
inline int seedlings_left(const home::SeedBook& seeds, home::TrayId tray)
{
    const auto counted = seeds.latest_count(tray);
    const auto* of = seeds.tray(tray);
    const int came = counted ? counted->emerged : of != nullptr ? of->seeds : 0;
    return std::max(0, came - static_cast<int>(seeds.potted_from(tray)));
}

} // namespace lathhouse
