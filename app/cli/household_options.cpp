#include "app/cli/household_options.h"

#include "app/cli/household_facts.h"
#include "core/base/edit_distance.h"
#include "core/base/parse.h"
#include "app/cli/shipped_climate.h"
#include "core/home/demonstration.h"
#include "core/home/learned_offset.h"
#include "core/home/seedling.h"
#include "core/journal/household_store.h"

namespace lathhouse::cli {

bool has_household(const Globals& globals)
{
    std::error_code failure;
    return std::filesystem::exists(globals.home / "household.sqlite3", failure);
}

Result<HouseholdWithLog> household_with_log(const Globals& globals)
{
    if (!has_household(globals) && !globals.home_given) {
        return Error{ErrorCode::NotFound,
                     said("there is no household in %1 yet; name one with --home, or make an example with: lathhouse demo DIR",
                          globals.home.string())};
    }
    return journal::HouseholdStore::open(globals.home)
        .and_then([](const auto& store) -> Result<HouseholdWithLog> {
            auto household = store.load();
            if (!household) {
                return household.error();
            }
            auto log = store.night_log();
            if (!log) {
                return log.error();
            }
            const auto seeds = store.seeds();
            if (!seeds) {
                return seeds.error();
            }
            return HouseholdWithLog{home::with_young_plants(std::move(household).value(), *seeds), std::move(log).value()};
        });
}

Result<home::Household> household_of(const Globals& globals, WithoutHousehold without)
{
    if (!has_household(globals) && !globals.home_given && without == WithoutHousehold::ShowsDemonstration) {
        return home::demonstration({.today = globals.today}).transform([](const home::Demonstration& shown) {
            return shown.household;
        });
    }
    const auto loaded = household_with_log(globals);
    if (!loaded) {
        return loaded.error();
    }
    // The climate is looked up only where there is something to compare with it; a place without stations
    // keeps the offsets that it was given.
    if (!loaded->log.readings.empty()) {
        if (const auto climate = climate_of(loaded->as_told)) {
            return home::with_learned_offsets(loaded->as_told, loaded->log, climate->nights());
        }
    }
    return loaded->as_told;
}

Result<const home::Spot*> spot_called(const home::Household& household, const std::string& id_or_name)
{
    if (const auto* spot = household.spot_called(id_or_name)) {
        return spot;
    }
    return Error{ErrorCode::NotFound,
                 "there is no spot \"" + id_or_name + "\"; `lathhouse list spots` shows their ids"};
}

Result<std::optional<home::SpotId>> spot_asked(const home::Household& household, const std::string& id_or_name)
{
    if (id_or_name.empty()) {
        return std::optional<home::SpotId>{};
    }
    const auto spot = spot_called(household, id_or_name);
    if (!spot) {
        return spot.error();
    }
    return std::optional{(*spot)->id};
}

Result<const home::Plant*> plant_called(const home::Household& household, const std::string& id_or_name)
{
    if (const auto* plant = household.plant_called(id_or_name)) {
        return plant;
    }
    std::string near;
    for (const auto& plant : household.plants) {
        const auto letters = std::max(plant.name.size(), id_or_name.size());
        if (edit_distance(lower_case(plant.name), lower_case(id_or_name)) * 3 <= letters) {
            near += (near.empty() ? "; did you mean " : ", ") + plant.name;
        }
    }
    return Error{ErrorCode::NotFound, "there is no plant \"" + id_or_name + "\"" + near +
                                          "; `lathhouse list plants` shows their ids"};
}

Result<const home::Plant*> plant_asked(const home::Household& household, const std::string& id_or_name)
{
    if (id_or_name.empty()) {
        return static_cast<const home::Plant*>(nullptr);
    }
    return plant_called(household, id_or_name);
}

Result<plan::PlanWishes> wishes_of(const Globals& globals)
{
    if (!has_household(globals)) {
        return plan::PlanWishes{};
    }
    const auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    return plan::wishes_of(*facts, globals.today);
}

Result<climate::PlaceClimate> climate_of(const home::Household& household)
{
    std::optional<Said> not_used;
    if (household.own_record) {
        auto own = climate::climate_from_own(household.own_record, household.place.position,
                                             household.place.elevation);
        if (own) {
            return own;
        }
        not_used = said("the household's own record is not used: %1", own.error());
    }
    auto climate = shipped_climate(household.place.position, household.place.elevation);
    if (climate && not_used) {
        climate->warnings.push_back(*not_used);
    }
    return climate;
}

} // namespace lathhouse::cli
