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
    case plan::ReasonKind::StandsApart:
        return "apart from the others until no pest is found any more";
    }
    return {};
}

std::string refusal(const plan::Refusal& refusal, UnitSystem units)
{
    switch (refusal.kind) {
    case plan::RefusalKind::PinnedIndoors:
        return "stays in all year: kept there by hand";
    case plan::RefusalKind::OnlyInReach:
        return "stays in all year: every spot outdoors is within reach of a child or an animal";
    case plan::RefusalKind::NightsForbid:
        return "stays in all year: at no time is the chance of a night at or below " +
               (refusal.line ? temperature(*refusal.line, units) : std::string{"its line"}) + " within " +
               (refusal.chance ? chance(*refusal.chance) : std::string{"the risk"}) + " for three weeks";
    case plan::RefusalKind::Full:
        return "stays in all year: outdoors it would be better off, and the spots are full";
    case plan::RefusalKind::BetterInside:
        return "stays in all year: going out would not make up for the carry";
    }
    return {};
}

std::string change(const plan::PlanChange& change, const home::Household& household)
{
    const auto name = [&](home::SpotId id) {
        const auto* spot = household.spot(id);
        return spot != nullptr ? spot->name : std::string{"a spot that is gone"};
    };
    const auto* plant = household.plant(change.plant);
    const std::string who = plant != nullptr ? plant->name : "a plant";
    const std::string when = change.from == change.to ? "on " + day(change.from)
                                                      : "from " + day(change.from) + " to " + day(change.to);
    return change.was ? who + ": " + name(change.is) + " instead of " + name(*change.was) + " " + when
                      : who + " (new): " + name(change.is) + " " + when;
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
    case plan::BreachKind::NotApart:
        return who + " ought to stand apart from other plants from " + when +
               ", and no spot is apart; keep it as far from them as you can, visit it last and wash your hands, or "
               "name such a spot with `lathhouse add spot --apart`";
    case plan::BreachKind::PinsDisagree:
        return who + " is pinned to two places from " + when + "; the pin entered last (" + where +
               ") holds, and `lathhouse unpin` takes both back";
    }
    return {};
}

} // namespace lathhouse::words
