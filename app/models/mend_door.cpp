#include "app/models/mend_door.h"

#include "app/models/gone_in_memory.h"
#include "core/journal/household_store.h"

#include <algorithm>

namespace lathhouse::models {

MendDoor mend_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load, PlaceDoor place)
{
    return {.load = std::move(load),
            .gone_names = [folder]() -> Result<std::vector<std::string>> {
                const auto gone = journal::HouseholdStore::open(folder).and_then([](const auto& store) { return store.gone_plants(); });
                if (!gone) {
                    return gone.error();
                }
                std::vector<std::string> names;
                for (const auto& of : *gone) {
                    names.push_back(of.plant.name);
                }
                return names;
            },
            .change = [folder](const home::HouseholdChange& change, calendar::Date since, calendar::Instant now) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                if (!store) {
                    return store.error();
                }
                const auto made = store->change(change, since, now);
                return made ? Result<void>{} : Result<void>{made.error()};
            },
            .add_lot = [folder](const home::SeedLot& lot, calendar::Date on, calendar::Instant now) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                if (!store) {
                    return store.error();
                }
                const auto added = store->add_lot(lot, on, now);
                return added ? Result<void>{} : Result<void>{added.error()};
            },
            .place = std::move(place),
            .keeps = true};
}

MendDoor mend_in_memory(std::shared_ptr<MemoryHousehold> household, PlaceDoor place)
{
    return {.load = [household]() -> Result<plan::HouseholdFacts> { return household->facts(); },
            .gone_names = [household]() -> Result<std::vector<std::string>> { return names_of_gone(household->facts()); },
            .change =
                [household, climate = place.climate](const home::HouseholdChange& change, calendar::Date since, calendar::Instant now) {
                    return household->change(change.words, [&](plan::HouseholdFacts& facts) -> Result<void> {
                        const auto known = facts.as_told.plants.size();
                        if (const auto made = home::make(change, facts.as_told); !made) {
                            return made.error();
                        }
                        for (auto plant = known; plant < facts.as_told.plants.size(); ++plant) {
                            const auto& added = facts.as_told.plants[plant];
                            if (added.spot) {
                                facts.events.push_back({added.id, home::EventKind::Moved, added.spot, since, now, "added"});
                            }
                        }
                        if (change.place) {
                            auto there = climate(change.place->position, change.place->elevation);
                            if (!there) {
                                return there.error();
                            }
                            facts.climate = std::move(*there);
                        }
                        return {};
                    });
                },
            .add_lot =
                [household](const home::SeedLot& lot, calendar::Date on, calendar::Instant) {
                    return household->change(lot.name, [&](plan::HouseholdFacts& facts) -> Result<void> {
                        if (const auto sound = home::check(lot, on); !sound) {
                            return sound.error();
                        }
                        if (facts.seeds.lot_called(lot.name) != nullptr) {
                            return Error{ErrorCode::OutOfRange,
                                         said("there is a lot \"%1\" already; give this one another name", lot.name)};
                        }
                        int id = 0;
                        for (const auto& other : facts.seeds.lots) {
                            id = std::max(id, other.id);
                        }
                        facts.seeds.lots.push_back(lot);
                        facts.seeds.lots.back().id = id + 1;
                        return {};
                    });
                },
            .place = std::move(place),
            .keeps = false};
}

} // namespace lathhouse::models
