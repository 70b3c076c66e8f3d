#include "app/models/gone_in_memory.h"

#include "app/words/phrase.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr const char* kNameOfGone = "name"; ///< Of the event's details.

/// The pieces of a division stand beside the plant under the next free numbers, as the journal gives them.
Result<void> divide_in_memory(plan::HouseholdFacts& facts, const home::Plant& parent, const home::Event& event)
{
    auto pieces = home::pieces_of(parent, home::pieces_in(event.detail("into")));
    if (!pieces) {
        return pieces.error();
    }
    auto& all = facts.as_told.plants;
    home::PlantId next = free_plant_id(facts);
    for (auto& piece : *pieces) {
        if (facts.as_told.plant_called(piece.name) != nullptr) {
            return Error{ErrorCode::OutOfRange, words::phrase("there is a plant \"%1\" already", piece.name)};
        }
        piece.id = next++;
        if (piece.spot) {
            facts.events.push_back({piece.id, home::EventKind::Moved, piece.spot, event.happened, event.entered, ""});
        }
        all.push_back(std::move(piece));
    }
    return {};
}

} // namespace

bool ends_plant(home::EventKind kind)
{
    return kind == home::EventKind::Died || kind == home::EventKind::GivenAway || kind == home::EventKind::Removed;
}

Result<void> happen_in_memory(plan::HouseholdFacts& facts, const home::Event& event)
{
    if (!event.plant) {
        if (event.spot && facts.as_told.spot(*event.spot) == nullptr) {
            return Error{ErrorCode::NotFound, words::phrase("the spot is not there any more")};
        }
        facts.events.push_back(event);
        return {};
    }
    const auto plant =
        std::ranges::find_if(facts.as_told.plants, [&](const home::Plant& of) { return of.id == event.plant; });
    if (plant == facts.as_told.plants.end()) {
        const bool gone = std::ranges::any_of(facts.events, [&](const home::Event& of) { return of.plant == event.plant && ends_plant(of.kind); });
        if (gone && event.kind == home::EventKind::Noted) { // What one has to say of it goes on.
            facts.events.push_back(event);
            return {};
        }
        return Error{ErrorCode::NotFound, words::phrase("the plant is not there any more")};
    }
    if (event.kind == home::EventKind::Moved) {
        plant->spot = event.spot;
    }
    if (event.kind == home::EventKind::Divided) {
        const home::Plant parent = *plant; // The list of plants grows.
        if (const auto divided = divide_in_memory(facts, parent, event); !divided) {
            return divided;
        }
    }
    facts.events.push_back(event);
    if (ends_plant(event.kind)) {
        facts.events.edit().back().details[kNameOfGone] = plant->name;
        std::erase_if(facts.as_told.pins, [&](const home::Pin& pin) { return pin.plant == event.plant; });
        facts.as_told.plants.erase(plant);
    }
    return {};
}

home::PlantId free_plant_id(const plan::HouseholdFacts& facts)
{
    home::PlantId highest = 0;
    for (const auto& plant : facts.as_told.plants) {
        highest = std::max(highest, plant.id);
    }
    for (const auto& event : facts.events) {
        highest = std::max(highest, event.plant.value_or(0));
    }
    return highest + 1;
}

std::vector<home::Descent> descents_in_memory(const plan::HouseholdFacts& facts)
{
    std::vector<home::Descent> descents;
    for (const auto& event : facts.events) {
        if (event.kind != home::EventKind::Divided) {
            continue;
        }
        for (const auto& name : home::pieces_in(event.detail("into"))) {
            const auto* piece = facts.as_told.plant_called(name);
            if (piece != nullptr) {
                descents.push_back({piece->id, event.plant, {}});
            }
        }
    }
    return descents;
}

std::vector<std::string> names_of_gone(const plan::HouseholdFacts& facts)
{
    std::vector<std::string> names;
    for (const auto& event : facts.events) {
        if (ends_plant(event.kind)) {
            names.emplace_back(event.detail(kNameOfGone));
        }
    }
    return names;
}

std::vector<home::GonePlant> gone_in_memory(const plan::HouseholdFacts& facts, const std::map<home::PlantId, home::Plant>& known)
{
    std::vector<home::GonePlant> gone;
    for (const auto& event : facts.events) {
        if (const auto plant = ends_plant(event.kind) && event.plant ? known.find(*event.plant) : known.end(); plant != known.end()) {
            gone.push_back({plant->second,
                            event.kind == home::EventKind::Died        ? home::GoneHow::Died
                            : event.kind == home::EventKind::GivenAway ? home::GoneHow::GivenAway
                                                                       : home::GoneHow::Removed,
                            event.happened});
        }
    }
    return gone;
}

} // namespace lathhouse::models
