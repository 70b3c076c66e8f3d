#include "app/words/plan_words.h"

namespace lathhouse::words {

std::string why(const plan::Reason& reason, UnitSystem units)
{
    const auto line = reason.line ? temperature(*reason.line, units) : std::string{};
    const auto odds = reason.chance ? chance(*reason.chance) : std::string{};
    switch (reason.kind) {
    case plan::ReasonKind::StandsThere:
        return "stands there";
    case plan::ReasonKind::PinnedThere:
        return "kept there by hand";
    case plan::ReasonKind::NightsAllow:
        return "from here on at most " + odds + " for a night at or below " + line;
    case plan::ReasonKind::BetterOutside:
        return "better off outside from now on";
    case plan::ReasonKind::NightsForbid:
        return "in before the chance of a night at or below " + line + " passes " + odds;
    case plan::ReasonKind::NightsTooCool:
        return "nights below " + line + " would hold it back";
    case plan::ReasonKind::BetterLight:
        return "suits it better there now";
    case plan::ReasonKind::MakesRoom:
        return "the better spots are full";
    }
    return {};
}

std::string breach(const plan::Breach& breach, const home::Household& household)
{
    const auto* plant = household.plant(breach.plant);
    const auto* spot = household.spot(breach.spot);
    const std::string who = plant != nullptr ? plant->name : "a plant";
    const std::string where = spot != nullptr ? spot->name : "a spot";
    const std::string when = day(breach.from) + " to " + day(breach.to);
    switch (breach.kind) {
    case plan::BreachKind::ColdNights:
        return who + " stands on " + where + " from " + when +
               " against the accepted risk, since no indoor spot takes it; add an indoor spot or room in one";
    case plan::BreachKind::InReach:
        return who + " can hurt a child or an animal and stands within reach on " + where + " from " + when +
               ", since no other spot takes it; find it a place out of reach";
    case plan::BreachKind::OverCapacity:
        return where + " has one pot too many from " + when + " (" + who + "); no other spot would do";
    }
    return {};
}

} // namespace lathhouse::words
