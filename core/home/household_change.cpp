#include "core/home/household_change.h"

#include "core/base/parse.h"

#include <algorithm>

namespace lathhouse::home {
namespace {

/// The id of the next thing of its kind.
template <class Things>
int next_id_of(const Things& things)
{
    int id = 0;
    for (const auto& thing : things) {
        id = std::max(id, thing.id);
    }
    return id + 1;
}

template <class Things>
Result<void> put_things(const Things& changed, Things& things)
{
    constexpr bool kAreSpots = std::is_same_v<typename Things::value_type, Spot>;
    for (const auto& thing : changed) {
        if (trimmed(thing.name).empty()) {
            return Error{ErrorCode::OutOfRange, kAreSpots ? said("a spot needs a name") : said("a plant needs a name")};
        }
        const auto same = std::ranges::find_if(things, [&](const auto& other) {
            return other.id != thing.id && lower_case(trimmed(other.name)) == lower_case(trimmed(thing.name));
        });
        if (same != things.end()) {
            return Error{ErrorCode::OutOfRange,
                         kAreSpots ? said("there is a spot \"%1\" already; give this one another name", same->name)
                                   : said("there is a plant \"%1\" already; give this one another name", same->name)};
        }
        if (thing.id == 0) {
            things.push_back(thing);
            things.back().id = next_id_of(things);
            continue;
        }
        const auto there = std::ranges::find(things, thing.id, [](const auto& other) { return other.id; });
        if (there == things.end()) {
            return Error{ErrorCode::NotFound, kAreSpots ? said("the spot \"%1\" is no longer there", thing.name)
                                   : said("the plant \"%1\" is no longer there", thing.name)};
        }
        *there = thing;
    }
    return {};
}

} // namespace

Result<void> make(const HouseholdChange& change, Household& household)
{
    Household made = household;
    if (change.name) {
        made.name = *change.name;
    }
    if (change.place) {
        if (trimmed(change.place->time_zone).empty()) {
            return Error{ErrorCode::OutOfRange, said("a place needs a time zone")};
        }
        made.place = *change.place;
    }
    if (const auto put = put_things(change.spots, made.spots); !put) {
        return put.error();
    }
    auto plants = change.plants;
    for (auto& plant : plants) {
        if (const auto* there = made.plant(plant.id)) {
            plant.spot = there->spot;
        }
    }
    if (const auto put = put_things(plants, made.plants); !put) {
        return put.error();
    }
    for (const auto id : change.spots_gone) {
        const auto there = std::ranges::find(made.spots, id, &Spot::id);
        if (there == made.spots.end()) {
            return Error{ErrorCode::NotFound, said("the spot is no longer there")};
        }
        for (const auto& plant : made.plants) {
            if (plant.spot == id || plant.pinned_spot == id) {
                return Error{ErrorCode::OutOfRange,
                             plant.spot == id ? said("%1 stands at %2; move it first", plant.name, there->name)
                                              : said("%1 is kept at %2; move it first", plant.name, there->name)};
            }
        }
        if (const auto pin = std::ranges::find(made.pins, id, &Pin::spot); pin != made.pins.end()) {
            const auto* plant = made.plant(pin->plant);
            return Error{ErrorCode::OutOfRange, said("%1 is kept at %2; move it first",
                                                     plant == nullptr ? std::to_string(pin->plant) : plant->name, there->name)};
        }
        made.spots.erase(there);
    }
    for (const auto id : change.unpinned) {
        const auto there = std::ranges::find(made.plants, id, &Plant::id);
        if (there == made.plants.end()) {
            return Error{ErrorCode::NotFound, said("the plant is no longer there")};
        }
        there->pinned_spot.reset();
        std::erase_if(made.pins, [id](const Pin& pin) { return pin.plant == id; });
    }
    for (const auto& pin : change.pins) {
        if (made.plant(pin.plant) == nullptr || made.spot(pin.spot) == nullptr) {
            return Error{ErrorCode::NotFound,
                         said("nothing was pinned; the plant and the spot must be of the household")};
        }
        if (pin.to < pin.from) {
            return Error{ErrorCode::OutOfRange, said("nothing was pinned; its last night lies before its first")};
        }
        made.pins.push_back(pin);
    }
    household = std::move(made);
    return {};
}

const Pin* contradicting(const Household& household, const Pin& wanted)
{
    const auto found = std::ranges::find_if(household.pins, [&](const Pin& known) {
        return known.plant == wanted.plant && known.spot != wanted.spot && known.from <= wanted.to && wanted.from <= known.to;
    });
    return found == household.pins.end() ? nullptr : &*found;
}

} // namespace lathhouse::home
