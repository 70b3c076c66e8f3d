#include "core/plan/whereabouts.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

constexpr int kAlways = 36525; // Days: longer than any journal.

} // namespace

Whereabouts::Whereabouts(const home::Plant& plant, std::span<const home::Event> events,
                         std::span<const Stay> stays, calendar::Date today)
    : plant_(plant.id)
{
    for (const auto& event : events) {
        if (event.kind == home::EventKind::Moved && event.plant == plant.id && event.spot &&
            event.happened <= today) {
            moves_.push_back({event.happened, *event.spot});
        }
    }
    std::ranges::stable_sort(moves_, {}, &Move::from);
    if (plant.spot && moves_.empty()) {
        moves_.push_back({today - calendar::Days{kAlways}, *plant.spot});
    } else if (plant.spot && moves_.back().spot != *plant.spot) {
        moves_.push_back({today, *plant.spot}); // The journal knows where it stands, not since when.
    }
    for (const auto& stay : stays) {
        if (stay.to >= today && (moves_.empty() || moves_.back().spot != stay.spot)) {
            moves_.push_back({std::max(stay.from, today), stay.spot});
        }
    }
}

std::optional<home::SpotId> Whereabouts::on(calendar::Date date) const
{
    std::optional<home::SpotId> spot;
    for (const auto& move : moves_) {
        if (move.from <= date) {
            spot = move.spot;
        }
    }
    return spot;
}

bool Whereabouts::concerns(const home::Event& event) const
{
    if (event.plant) {
        return *event.plant == plant_;
    }
    return event.spot && on(event.happened) == event.spot;
}

bool reaches(const home::Event& event, const Whereabouts& whereabouts, const home::Household& household)
{
    if (event.plant || event.spot) {
        return whereabouts.concerns(event);
    }
    const auto spot = whereabouts.on(event.happened);
    const auto* stood = spot ? household.spot(*spot) : nullptr;
    return stood != nullptr && home::is_outdoors(stood->kind);
}

std::optional<home::SpotId> shelter_of(home::PlantId plant, std::span<const PlantYear> plan, const home::Household& household,
                                       calendar::Date today)
{
    const auto year = std::ranges::find(plan, plant, &PlantYear::plant);
    if (year == plan.end()) {
        return std::nullopt;
    }
    const auto* kept = household.plant(plant);
    const auto stay = std::ranges::find_if(year->stays, [&](const Stay& of) {
        const auto* spot = household.spot(of.spot);
        return of.to >= today && spot != nullptr && !home::is_outdoors(spot->kind) && (kept == nullptr || kept->spot != of.spot);
    });
    return stay != year->stays.end() ? std::optional{stay->spot} : std::nullopt;
}

} // namespace lathhouse::plan
