#include "app/words/plan_words.h"

#include "app/words/course_words.h"
#include "app/words/phrase.h"

namespace lathhouse::words {
namespace {

/// Until when a plant stands apart, and why.
std::string apart_until(const plan::Isolation& apart)
{
    const auto pest = pest_name(apart.pest);
    const bool found = apart.state == plan::PestState::Infested;
    if (!found && apart.pest == nullptr) {
        return apart.clear ? phrase("stays apart until %1 at least: it is watched for pests", day(*apart.clear))
                           : phrase("stays apart until no pest is found any more: it is watched for pests");
    }
    if (!apart.clear) {
        return found ? phrase("stays apart until no pest is found any more: %1 found", pest)
                     : phrase("stays apart until no pest is found any more: it may have %1", pest);
    }
    return found ? phrase("stays apart until %1 at least: %2 found", day(*apart.clear), pest)
                 : phrase("stays apart until %1 at least: it may have %2", day(*apart.clear), pest);
}

} // namespace

std::string why(const plan::Reason& reason, UnitSystem units)
{
    const auto line = reason.line ? temperature(*reason.line, units) : std::string{};
    const auto odds = reason.chance ? chance(*reason.chance) : std::string{};
    switch (reason.kind) {
    case plan::ReasonKind::StandsThere:
        return phrase("stands there");
    case plan::ReasonKind::PinnedThere:
        return phrase("kept there by hand");
    case plan::ReasonKind::NightsAllow:
        return phrase("from here on at most %1 for a night at or below %2", odds, line);
    case plan::ReasonKind::BetterOutside:
        return phrase("better off outside from now on");
    case plan::ReasonKind::NightsForbid:
        return phrase("in before the chance of a night at or below %1 passes %2", line, odds);
    case plan::ReasonKind::NightsTooCool:
        return phrase("nights below %1 would hold it back", line);
    case plan::ReasonKind::BetterLight:
        return phrase("suits it better there now");
    case plan::ReasonKind::MakesRoom:
        return phrase("the better spots are full");
    case plan::ReasonKind::StandsApart:
        return reason.apart ? apart_until(*reason.apart) : std::string{};
    case plan::ReasonKind::Rests:
        if (!reason.rest) {
            return {};
        }
        return reason.rest->why == plan::RestWhy::Sprayed
                   ? phrase("stays in and is not hardened before %1: hit by a spray on %2", day(reason.rest->until), day(reason.rest->since))
                   : phrase("stays in and is not hardened before %1: harmed by the cold night of %2", day(reason.rest->until),
                            day(reason.rest->since));
    case plan::ReasonKind::CarriedToNobody:
        return reason.apart ? phrase("%1; it is carried to no clean plants", apart_until(*reason.apart)) : std::string{};
    case plan::ReasonKind::NoneApart:
        return reason.apart ? phrase("%1; no spot apart takes it, so keep it away from the others there", apart_until(*reason.apart))
                            : std::string{};
    case plan::ReasonKind::LeavesSpotApart:
        return phrase("leaves the spot apart to plants with pests or under watch");
    case plan::ReasonKind::OutOfReach:
        return phrase("out of reach of children and animals there");
    case plan::ReasonKind::KeptFromPests:
        return phrase("where it would do better, pests were found or may be");
    }
    return {};
}

std::string refusal(const plan::Refusal& refusal, UnitSystem units)
{
    switch (refusal.kind) {
    case plan::RefusalKind::PinnedIndoors:
        return phrase("stays in all year: kept there by hand");
    case plan::RefusalKind::OnlyInReach:
        return phrase("stays in all year: every spot outdoors is within reach of a child or an animal");
    case plan::RefusalKind::NightsForbid:
        return phrase("stays in all year: at no time is the chance of a night at or below %1 within %2 for three weeks",
                      refusal.line ? temperature(*refusal.line, units) : phrase("its line"),
                      refusal.chance ? chance(*refusal.chance) : phrase("the risk"));
    case plan::RefusalKind::KeptApart:
        return phrase("stays in all year: pests keep it from the others, and when it is clear cannot be said yet");
    case plan::RefusalKind::Full:
        return phrase("stays in all year: outdoors it would be better off, and the spots are full");
    case plan::RefusalKind::BetterInside:
        return phrase("stays in all year: going out would not make up for the carry");
    }
    return {};
}

std::string change(const plan::PlanChange& change, const home::Household& household)
{
    const auto name = [&](home::SpotId id) {
        const auto* spot = household.spot(id);
        return spot != nullptr ? spot->name : phrase("a spot that is gone");
    };
    const auto* plant = household.plant(change.plant);
    const std::string who = plant != nullptr ? plant->name : phrase("a plant");
    const std::string when = change.from == change.to
                                 ? phrase("on %1", day(change.from))
                                 : phrase("from %1 to %2", day(change.from), day(change.to));
    return change.was ? phrase("%1: %2 instead of %3 %4", who, name(change.is), name(*change.was), when)
                      : phrase("%1 (new): %2 %3", who, name(change.is), when);
}

std::string breach(const plan::Breach& breach, const home::Household& household)
{
    const auto* plant = household.plant(breach.plant);
    const auto* spot = household.spot(breach.spot);
    const std::string who = plant != nullptr ? plant->name : phrase("a plant");
    const std::string where = spot != nullptr ? spot->name : phrase("a spot");
    const std::string when = phrase("%1 to %2", day(breach.from), day(breach.to));
    switch (breach.kind) {
    case plan::BreachKind::ColdNights:
        return phrase("%1 stands on %2 from %3 against the accepted risk, since no indoor spot takes it; add an indoor spot "
                      "or room in one",
                      who, where, when);
    case plan::BreachKind::InReach:
        return phrase("%1 can hurt a child or an animal and stands within reach on %2 from %3, since no other spot takes it; "
                      "find it a place out of reach",
                      who, where, when);
    case plan::BreachKind::OverCapacity:
        return phrase("%2 has one pot too many from %3 (%1); no other spot would do", who, where, when);
    case plan::BreachKind::NotApart:
        return phrase("%1 ought to stand apart from other plants from %2, and no spot apart takes it; keep it as far from them as "
                      "you can, visit it last and wash your hands, or name such a spot with `lathhouse add spot --apart`",
                      who, when);
    case plan::BreachKind::PinsDisagree:
        return phrase("%1 is pinned to two places from %3; the pin entered last (%2) holds, and `lathhouse unpin` takes both "
                      "back",
                      who, where, when);
    }
    return {};
}

} // namespace lathhouse::words
