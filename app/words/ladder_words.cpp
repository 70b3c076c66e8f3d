#include "app/words/ladder_words.h"

#include "app/words/phrase.h"

#include <cmath>

namespace lathhouse::words {

std::string ladder_item(const plan::LadderItem& item)
{
    switch (item.kind) {
    case plan::LadderItemKind::OutByDay: {
        const std::string hours = item.hours == 1 ? phrase("out for 1 hour")
                                                  : phrase("out for %1 hours", std::to_string(item.hours));
        switch (item.shade) {
        case plan::Shade::Full:
            return phrase("%1 in full shade, in for the night", hours);
        case plan::Shade::Half:
            return phrase("%1 with morning sun only, in for the night", hours);
        case plan::Shade::None:
            return phrase("%1 where it shall stand, in for the night", hours);
        }
        return hours;
    }
    case plan::LadderItemKind::FirstNightOut:
        return phrase("first night out");
    case plan::LadderItemKind::IntoShade:
        return phrase("into deeper shade outdoors");
    case plan::LadderItemKind::Inspect:
        return phrase("look under every leaf, in the axils and at the pot's rim and holes");
    case plan::LadderItemKind::Soak:
        return phrase("stand the pot in lukewarm water for 15 minutes and let it drain");
    case plan::LadderItemKind::CarryIn:
        return phrase("carry it in");
    case plan::LadderItemKind::KeepApart:
        return phrase("keep it apart from the others, visit it last");
    case plan::LadderItemKind::StepDown:
        return phrase("from the brightest window step by step to its place; less water, no feed");
    }
    return {};
}

std::string ladder_head(const plan::Ladder& ladder, const home::Household& household, UnitSystem units)
{
    const auto* plant = household.plant(ladder.plant);
    const auto* to = household.spot(ladder.to);
    const bool out = ladder.direction == plan::Direction::Out;
    std::string text = (plant != nullptr ? plant->name : std::string{"A plant"}) +
                       (out ? " goes out to " : " comes in to ") + (to != nullptr ? to->name : "a spot") + " on " +
                       day(ladder.reached);
    const double factor = std::exp2(std::abs(ladder.doublings));
    if (factor >= 1.2) {
        text += ", " + number(factor, 1) + (ladder.doublings > 0 ? " times as light" : " times darker");
    }
    const auto colder = ladder.colder;
    if (std::abs(colder.kelvins()) >= 1.0) {
        text += ", nights " +
                temperature_difference(KelvinDelta::from_kelvins(std::abs(colder.kelvins())), units).substr(1) +
                (colder.kelvins() > 0 ? " colder" : " warmer");
    }
    return text;
}

std::vector<std::string> ladder_notes(const plan::Ladder& ladder, const home::Household& household,
                                      UnitSystem units)
{
    std::vector<std::string> notes;
    const auto* plant = household.plant(ladder.plant);
    if (ladder.direction == plan::Direction::Out && plant != nullptr) {
        notes.push_back("not on a windy day, and not below " +
                        temperature(plan::hardening_floor(plant->lines), units));
        if (ladder.reached != ladder.planned) {
            notes.push_back("the nights would allow it from " + day(ladder.planned) + " on; the steps need until " +
                            day(ladder.reached));
        }
    }
    for (const auto date : ladder.paused) {
        notes.push_back("nothing on " + day(date) + ", the forecast is too cold for it");
    }
    if (ladder.no_spot_apart) {
        notes.push_back("no spot indoors is apart from other plants: keep it an arm's length away from them");
    }
    if (plant != nullptr && plant->pot_kilograms >= kHeavyKilograms) {
        notes.push_back("it weighs about " + number(plant->pot_kilograms, 0) +
                        " kg: carry it with a second person or on wheels");
    }
    if (plant != nullptr && plant->hazardous) {
        notes.push_back("it is poisonous: gloves where sap may run, out of reach of children and animals on the way");
    }
    return notes;
}

} // namespace lathhouse::words
