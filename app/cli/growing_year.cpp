#include "app/cli/growing_year.h"

#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"

namespace lathhouse::cli {

Result<GrowingYear> growing_year(const Globals& globals, const std::string& plant)
{
    auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    auto household = facts->household();
    const auto asked = plant_asked(household, plant);
    if (!asked) {
        return asked.error();
    }
    const auto only = *asked != nullptr ? std::optional{(*asked)->id} : std::nullopt;
    const auto wishes = plan::wishes_of(*facts, globals.today);
    home::SpotClimate spots{household, facts->climate, facts->log};
    auto plan = plan::plan_year(household, facts->climate,
                                plan::ColdChances{climate::PlaceNights::of(facts->climate)}, globals.today,
                                plan::kUsualRisk, plan::Effort::Fast, wishes);
    return GrowingYear{std::move(household), std::move(facts->events), std::move(facts->climate),
                       std::move(spots), std::move(plan), only};
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

} // namespace lathhouse::cli
