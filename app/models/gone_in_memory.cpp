#include "app/models/gone_in_memory.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr const char* kNameOfGone = "name"; ///< Of the event's details.

} // namespace

bool ends_plant(home::EventKind kind)
{
    return kind == home::EventKind::Died || kind == home::EventKind::GivenAway || kind == home::EventKind::Removed;
}

Result<void> happen_in_memory(plan::HouseholdFacts& facts, const home::Event& event)
{
    const auto plant =
        std::ranges::find_if(facts.as_told.plants, [&](const home::Plant& of) { return of.id == event.plant; });
    if (plant == facts.as_told.plants.end()) {
        return Error{ErrorCode::NotFound, "the plant is not there any more"};
    }
    if (event.kind == home::EventKind::Moved) {
        plant->spot = event.spot;
    }
    facts.events.push_back(event);
    if (ends_plant(event.kind)) {
        facts.events.back().details[kNameOfGone] = plant->name;
        std::erase_if(facts.as_told.pins, [&](const home::Pin& pin) { return pin.plant == event.plant; });
        facts.as_told.plants.erase(plant);
    }
    return {};
}

std::vector<std::string> gone_in_memory(const plan::HouseholdFacts& facts)
{
    std::vector<std::string> names;
    for (const auto& event : facts.events) {
        if (ends_plant(event.kind)) {
            names.emplace_back(event.detail(kNameOfGone));
        }
    }
    return names;
}

} // namespace lathhouse::models
