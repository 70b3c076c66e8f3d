#include "app/cli/household_facts.h"

#include "app/cli/household_options.h"
#include "core/journal/household_store.h"

namespace lathhouse::cli {

Result<plan::HouseholdFacts> household_facts(const Globals& globals)
{
    auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    auto climate = climate_of(home->as_told);
    if (!climate) {
        return climate.error();
    }
    const auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    auto events = store->events();
    if (!events) {
        return events.error();
    }
    auto accepted = store->accepted_plan();
    if (!accepted) {
        return accepted.error();
    }
    auto seeds = store->seeds();
    if (!seeds) {
        return seeds.error();
    }
    return plan::HouseholdFacts{.as_told = std::move(home->as_told),
                                .log = std::move(home->log),
                                .events = std::move(events).value(),
                                .climate = std::move(climate).value(),
                                .accepted = std::move(accepted).value(),
                                .seeds = std::move(seeds).value()};
}

} // namespace lathhouse::cli
