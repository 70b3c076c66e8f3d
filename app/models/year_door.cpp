#include "app/models/year_door.h"

#include "app/models/household_year.h"
#include "app/models/year_sowings.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <utility>

namespace lathhouse::models {

YearDoor year_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load,
                        calendar::Date today, ShownUnits units)
{
    YearDoor door;
    door.sowings = [load, today] {
        return load().transform([today](const plan::HouseholdFacts& facts) { return year_sowings(facts, today); });
    };
    door.load = [load = std::move(load), today, units] {
        return load().transform(
            [today, units](const plan::HouseholdFacts& facts) { return household_year(facts, today, units); });
    };
    door.pin = [folder](const std::vector<home::Pin>& pins, calendar::Instant now) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        for (const home::Pin& pin : pins) {
            if (auto kept = store->pin(pin, now); !kept) {
                return kept;
            }
        }
        return {};
    };
    door.unpin = [folder](home::PlantId plant, calendar::Instant now) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        const auto count = store->take_back_pins(plant, now);
        return count ? Result<void>{} : Result<void>{count.error()};
    };
    door.accept = [folder = std::move(folder)](const home::AcceptedPlan& plan) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        return store ? store->accept(plan) : Result<void>{store.error()};
    };
    return door;
}

YearDoor year_in_memory(std::shared_ptr<MemoryHousehold> household, calendar::Date today, ShownUnits units)
{
    YearDoor door;
    door.load = [household, today, units]() -> Result<HouseholdYear> {
        return household_year(household->facts(), today, units);
    };
    door.sowings = [household, today]() -> Result<std::vector<YearSowing>> {
        return year_sowings(household->facts(), today);
    };
    door.pin = [household](const std::vector<home::Pin>& pins, calendar::Instant) {
        return household->change("pin", [&pins](plan::HouseholdFacts& facts) -> Result<void> {
            facts.as_told.pins.insert(facts.as_told.pins.end(), pins.begin(), pins.end());
            return {};
        });
    };
    door.unpin = [household](home::PlantId plant, calendar::Instant) {
        return household->change("unpin", [plant](plan::HouseholdFacts& facts) -> Result<void> {
            std::erase_if(facts.as_told.pins, [plant](const home::Pin& pin) { return pin.plant == plant; });
            for (home::Plant& of : facts.as_told.plants) {
                if (of.id == plant) {
                    of.pinned_spot.reset();
                }
            }
            return {};
        });
    };
    door.accept = [household](const home::AcceptedPlan& plan) {
        return household->change("accept", [&plan](plan::HouseholdFacts& facts) -> Result<void> {
            facts.accepted = plan;
            return {};
        });
    };
    return door;
}

} // namespace lathhouse::models
