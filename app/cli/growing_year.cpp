#include "app/cli/growing_year.h"

#include "app/cli/household_options.h"
#include "core/base/parse.h"
#include "core/home/learned_offset.h"
#include "core/journal/household_store.h"

#include <algorithm>

namespace lathhouse::cli {

Result<GrowingYear> growing_year(const Globals& globals)
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
    const auto nights = climate->nights();
    auto household = home->log.readings.empty()
                         ? home->as_told
                         : home::with_learned_offsets(home->as_told, home->log, nights);
    home::SpotClimate spots{household, *climate, home->log};
    auto plan = plan::plan_year(household, *climate, plan::ColdChances{nights}, globals.today,
                                Probability::literal(0.1), plan::Effort::Fast);
    return GrowingYear{std::move(household), std::move(events).value(), std::move(climate).value(),
                       std::move(spots), std::move(plan)};
}

Result<const home::Plant*> plant_called(const home::Household& household, const std::string& id_or_name)
{
    const auto id = parse_integer(id_or_name);
    const auto name = lower_case(trimmed(id_or_name));
    for (const auto& plant : household.plants) {
        if ((id && plant.id == *id) || lower_case(plant.name) == name) {
            return &plant;
        }
    }
    return Error{ErrorCode::NotFound,
                 "there is no plant \"" + id_or_name + "\"; `lathhouse list plants` shows their ids"};
}

Json sources_json(std::span<const std::string_view> rules)
{
    Json sources = Json::array();
    for (const auto* source : plan::GrowingRules::built_in().sources_of(rules)) {
        sources.push_back({{"key", source->key},
                           {"title", source->title},
                           {"publisher", source->publisher},
                           {"year", source->year ? Json(*source->year) : Json(nullptr)}});
    }
    return sources;
}

Json json_date(const std::optional<calendar::Date>& date)
{
    return date ? Json(calendar::to_text(*date)) : Json(nullptr);
}

} // namespace lathhouse::cli
