#include "app/cli/household_options.h"

#include "core/home/demonstration.h"
#include "core/journal/household_store.h"

namespace lathhouse::cli {

bool has_household(const Globals& globals)
{
    std::error_code failure;
    return std::filesystem::exists(globals.home / "household.sqlite3", failure);
}

Result<home::Household> household_of(const Globals& globals, WithoutHousehold without)
{
    if (!has_household(globals) && !globals.home_given) {
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
    std::optional<std::string> not_used;
    if (household.own_record) {
        auto own = climate::climate_from_own(household.own_record, household.place.position,
                                             household.place.elevation);
        if (own) {
            return own;
        }
        not_used = "the household's own record is not used: " + own.error().message;
    }
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    auto climate = climate::climate_at(**table, household.place.position, household.place.elevation);
    if (climate && not_used) {
        climate->warnings.push_back(*not_used);
    }
    return climate;
}

} // namespace lathhouse::cli
