#include "app/words/ladder_words.h"

#include "app/words/growing_words.h"
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

std::string ladder_step(const plan::LadderItem& item)
{
    if (item.kind != plan::LadderItemKind::OutByDay) {
        return {};
    }
    const std::string hours = item.hours == 1 ? phrase("1 hour") : phrase("%1 hours", std::to_string(item.hours));
    switch (item.shade) {
    case plan::Shade::Full:
        return phrase("%1, full shade", hours);
    case plan::Shade::Half:
        return phrase("%1, morning sun", hours);
    case plan::Shade::None:
        return phrase("%1, where it shall stand", hours);
    }
    return hours;
}

std::string ladder_head(const plan::Ladder& ladder, const home::Household& household, UnitSystem units)
{
    const auto* plant = household.plant(ladder.plant);
    const auto* spot = household.spot(ladder.to);
    const std::string who = plant != nullptr ? plant->name : phrase("A plant");
    const std::string where = spot != nullptr ? spot->name : phrase("a spot");
    std::string text = ladder.direction == plan::Direction::Out
                           ? phrase("%1 goes out to %2 on %3", who, where, day(ladder.reached))
                           : phrase("%1 comes in to %2 on %3", who, where, day(ladder.reached));
    const double factor = std::exp2(std::abs(ladder.doublings));
    if (factor >= 1.2) {
        text = ladder.doublings > 0 ? phrase("%1, %2 times as light", text, number(factor, 1))
                                    : phrase("%1, %2 times darker", text, number(factor, 1));
    }
    const auto colder = ladder.colder;
    if (std::abs(colder.kelvins()) >= 1.0) {
        const auto by = temperature_difference(KelvinDelta::from_kelvins(std::abs(colder.kelvins())), units).substr(1);
        text = colder.kelvins() > 0 ? phrase("%1, nights %2 colder", text, by) : phrase("%1, nights %2 warmer", text, by);
    }
    return text;
}

std::vector<std::string> ladder_notes(const plan::Ladder& ladder, const home::Household& household,
                                      UnitSystem units)
{
    std::vector<std::string> notes;
    const auto* plant = household.plant(ladder.plant);
    if (ladder.direction == plan::Direction::Out && plant != nullptr) {
        notes.push_back(phrase("not on a windy day, and not below %1", temperature(plan::hardening_floor(plant->lines), units)));
        if (ladder.reached != ladder.planned) {
            notes.push_back(phrase("the nights would allow it from %1 on; the steps need until %2", day(ladder.planned),
                                   day(ladder.reached)));
        }
    }
    for (const auto date : ladder.paused) {
        notes.push_back(phrase("nothing on %1, the forecast is too cold for it", day(date)));
    }
    if (ladder.no_spot_apart) {
        notes.push_back(phrase("no spot indoors is apart from other plants: keep it an arm's length away from them"));
    }
    if (plant != nullptr && plant->pot_kilograms >= kHeavyKilograms) {
        notes.push_back(phrase("it weighs about %1: carry it with a second person or on wheels", weight(plant->pot_kilograms, units)));
    }
    if (plant != nullptr && plant->hazardous) {
        notes.push_back(phrase("it is poisonous: gloves where sap may run, out of reach of children and animals on the way"));
    }
    return notes;
}

} // namespace lathhouse::words
