#pragma once

#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/home/seed_lot.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lathhouse::home {

/// A packet of the story with the day it was entered.
struct StoryLot {
    SeedLot lot;
    calendar::Date on;
};

/// Seedlings of a tray that became plants, and when those were gone again.
struct StoryPotting {
    std::size_t tray; ///< Place in `trays`.
    std::vector<Plant> plants;
    calendar::Date on;
    std::optional<calendar::Date> gone;
};

/// A plant that was divided, and when the piece was given away.
struct StoryDivision {
    PlantId parent;
    Plant piece;
    calendar::Date on;
    std::optional<calendar::Date> given;
};

/// What a demonstration's grower wrote down beyond moves and care.
struct Story {
    std::vector<Plant> gone;               ///< Plants that the household had besides those that it has.
    std::vector<Event> events;             ///< In order of date.
    std::vector<Measurement> measurements; ///< In order of date.
    std::vector<StoryLot> lots;
    std::vector<Tray> trays;        ///< `lot` is the place in `lots`, from 0.
    std::vector<TrayCount> counts;  ///< `tray` is the place in `trays`, from 0; by date within a tray.
    std::vector<StoryPotting> potted;
    std::vector<StoryDivision> divisions;
};

/// The story of a demonstration without sizes: heights, widths and counts of leaves, each week where it grows and
/// each month where it does not, of most plants; weed-killer that drifted over the rail one summer, with leaves that
/// yellow, fall and come back; a cold night that a geranium did not outlive; mealybugs found, treated and gone;
/// packets of seed, trays, counts, tomatoes that were potted on; a snake plant that was divided.
/// Each is told once there has been time for its end, so that nothing of it is still open on `today`. Households of
/// any size have monthly heights only, of their first forty plants. The same options give the same story.
Story tell_story(const DemonstrationOptions& options, const Demonstration& made);

} // namespace lathhouse::home
