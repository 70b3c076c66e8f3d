#pragma once

#include "core/home/history.h"
#include "core/plan/year_plan.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// Where a plant stood and will stand: its moves up to today, from then on the plan's stays. A plant without a
/// logged move has always stood where it stands.
class Whereabouts {
public:
    /// events: of any plants, oldest first. stays: may be empty; then it stays where it stands.
    Whereabouts(const home::Plant& plant, std::span<const home::Event> events, std::span<const Stay> stays,
                calendar::Date today);

    /// nullopt where nobody knows: before its first move, or where it stands nowhere.
    std::optional<home::SpotId> on(calendar::Date date) const;
    /// Whether an event concerns the plant: its own, or one of the spot where it stood that day.
    bool concerns(const home::Event& event) const;

private:
    struct Move {
        calendar::Date from;
        home::SpotId spot;
    };
    home::PlantId plant_;
    std::vector<Move> moves_; ///< In order of date.
};

/// Whether what came with the air reached the plant: an event that concerns it, or one of the whole household on a day on
/// which it stood outdoors.
bool reaches(const home::Event& event, const Whereabouts& whereabouts, const home::Household& household);

/// Where a plant that stands outdoors is carried for a cold night: the first spot indoors that the plan has for it from today
/// on, and not the one where it stands. nullopt where the plan has none. That its place is free that night is not asked: for one night pots stand closer.
std::optional<home::SpotId> shelter_of(home::PlantId plant, std::span<const PlantYear> plan, const home::Household& household,
                                       calendar::Date today);

} // namespace lathhouse::plan
