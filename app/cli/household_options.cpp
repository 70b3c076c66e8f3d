#include "app/cli/household_options.h"

#include "core/home/demonstration.h"
#include "core/journal/household_store.h"

namespace lathhouse::cli {

Result<home::Household> household_of(const Globals& globals, WithoutHousehold without)
{
    const bool there = std::filesystem::exists(globals.home / "household.sqlite3");
    if (!there && !globals.home_given) {
        if (without == WithoutHousehold::ShowsDemonstration) {
            return home::demonstration({.today = globals.today})
                .transform([](const home::Demonstration& shown) { return shown.household; });
        }
        return Error{ErrorCode::NotFound,
                     "there is no household in " + globals.home.string() +
                         " yet; name one with --home, or make an example with: lathhouse demo DIR"};
    }
    return journal::HouseholdStore::open(globals.home).and_then([](const auto& store) {
        return store.load();
    });
}

Result<climate::PlaceClimate> climate_of(const home::Household& household)
{
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    return climate::climate_at(**table, household.place.position, household.place.elevation);
}

} // namespace lathhouse::cli
