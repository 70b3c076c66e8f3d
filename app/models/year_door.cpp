#include "app/models/year_door.h"

#include "app/models/household_year.h"
#include "app/models/year_sowings.h"
#include "core/home/household_change.h"
#include "core/journal/household_store.h"

#include <utility>

namespace lathhouse::models {

YearDoor year_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load,
                        calendar::Date today, ShownUnits units)
{
    YearDoor door;
    door.sowings_from = [load](calendar::Date from) {
        return load().transform([from](const plan::HouseholdFacts& facts) { return year_sowings(facts, from); });
    };
    door.sowings = [from = door.sowings_from, today] { return from(today); };
    door.load_from = [load, today, units](calendar::Date from) {
        return load().transform([&](const plan::HouseholdFacts& facts) { return household_year(facts, today, units, from); });
    };
    door.load = [load = std::move(load), today, units] {
        return load().transform(
            [today, units](const plan::HouseholdFacts& facts) { return household_year(facts, today, units); });
    };
    const auto enter = [folder, today](const home::HouseholdChange& change, calendar::Instant now) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        const auto made = store->change(change, today, now);
        return made ? Result<void>{} : Result<void>{made.error()};
    };
    door.pin = [enter](const std::vector<home::Pin>& pins, const std::string& words, calendar::Instant now) {
        return enter({.words = words, .pins = pins}, now);
    };
    door.unpin = [enter](home::PlantId plant, const std::string& words, calendar::Instant now) {
        return enter({.words = words, .unpinned = {plant}}, now);
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
    door.load_from = [household, today, units](calendar::Date from) -> Result<HouseholdYear> {
        return household_year(household->facts(), today, units, from);
    };
    door.sowings = [household, today]() -> Result<std::vector<YearSowing>> {
        return year_sowings(household->facts(), today);
    };
    door.sowings_from = [household](calendar::Date from) -> Result<std::vector<YearSowing>> {
        return year_sowings(household->facts(), from);
    };
    const auto enter = [household](const home::HouseholdChange& change) {
        return household->change(change.words,
                                 [&change](plan::HouseholdFacts& facts) { return home::make(change, facts.as_told); });
    };
    door.pin = [enter](const std::vector<home::Pin>& pins, const std::string& words, calendar::Instant) {
        return enter({.words = words, .pins = pins});
    };
    door.unpin = [enter](home::PlantId plant, const std::string& words, calendar::Instant) {
        return enter({.words = words, .unpinned = {plant}});
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
