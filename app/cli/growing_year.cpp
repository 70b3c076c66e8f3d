#include "app/cli/growing_year.h"

#include "app/cli/household_options.h"
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
    auto accepted = store->accepted_plan();
    if (!accepted) {
        return accepted.error();
    }
    const auto nights = climate->nights();
    auto household = home->log.readings.empty()
                         ? home->as_told
                         : home::with_learned_offsets(home->as_told, home->log, nights);
    home::SpotClimate spots{household, *climate, home->log};
    auto plan = plan::plan_year(household, *climate, plan::ColdChances{climate::PlaceNights::of(*climate)}, globals.today,
                                Probability::literal(0.1), plan::Effort::Fast,
                                {.accepted = std::move(accepted).value()});
    return GrowingYear{std::move(household), std::move(events).value(), std::move(climate).value(),
                       std::move(spots), std::move(plan)};
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

std::vector<std::string> caution_texts(std::span<const plan::CautionTopic> topics)
{
    std::vector<std::string> texts;
    for (const auto topic : topics) {
        for (const auto* caution : plan::cautions_for(topic)) {
            texts.push_back(caution->text);
        }
    }
    return texts;
}

std::string cautions_in_words(std::span<const plan::CautionTopic> topics)
{
    std::string text;
    for (const auto& caution : caution_texts(topics)) {
        text += "Take care: " + caution + "\n";
    }
    return text;
}

Json json_date(const std::optional<calendar::Date>& date)
{
    return date ? Json(calendar::to_text(*date)) : Json(nullptr);
}

} // namespace lathhouse::cli
