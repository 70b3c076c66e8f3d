#include "app/words/growing_words.h"

#include "app/words/phrase.h"
#include "core/plan/kitchen_measures.h"

namespace lathhouse::words {
namespace {

std::string reason(const plan::Withheld& withheld)
{
    const std::string since = withheld.since ? full_day(*withheld.since) : std::string{};
    switch (withheld.why) {
    case plan::WithheldWhy::UnknownKind:
        return phrase("its kind is not in the reference, so follow the label at half strength while it grows");
    case plan::WithheldWhy::NeverFed:
        return phrase("a kind that takes no feed");
    case plan::WithheldWhy::Nowhere:
        return phrase("it stands at no spot");
    case plan::WithheldWhy::ChemicalDamage:
        return withheld.since ? phrase("weed-killer or another chemical hit it on %1", since) : phrase("weed-killer or another chemical hit it");
    case plan::WithheldWhy::SickRoots:
        return withheld.since ? phrase("set apart with sick roots on %1", since) : phrase("set apart with sick roots");
    case plan::WithheldWhy::Chilled:
        return withheld.since ? phrase("a cold night hurt it on %1", since) : phrase("a cold night hurt it");
    case plan::WithheldWhy::Isolated:
        return withheld.since ? phrase("set apart on %1", since) : phrase("set apart");
    case plan::WithheldWhy::Repotted:
        return withheld.since ? phrase("repotted on %1; fresh mix holds feed", since) : phrase("repotted; fresh mix holds feed");
    case plan::WithheldWhy::Bought:
        return withheld.since ? phrase("bought on %1; its mix holds feed", since) : phrase("bought; its mix holds feed");
    case plan::WithheldWhy::Moved:
        return withheld.since ? phrase("moved into much brighter light on %1; it changes its leaves first", since) : phrase("moved into much brighter light; it changes its leaves first");
    case plan::WithheldWhy::Rests:
        return phrase("it rests");
    case plan::WithheldWhy::WetSeason:
        return phrase("rain keeps the pot wet and washes feed out");
    case plan::WithheldWhy::TooCool:
        return phrase("too cool to grow");
    case plan::WithheldWhy::TooWarm:
        return phrase("too hot to grow");
    case plan::WithheldWhy::TooDark:
        return phrase("too little light to grow");
    case plan::WithheldWhy::ShortDays:
        return phrase("days too short to grow");
    }
    return {};
}

} // namespace

std::string volume(Litres value, UnitSystem units)
{
    if (units.us_measures()) {
        return plan::us_measure(value);
    }
    return value.litres() < 1.0 ? phrase("%1 ml", number(value.millilitres(), 0))
                                : phrase("%1 L", number(value.litres(), 1));
}

std::string days(int count)
{
    return count == 1 ? phrase("1 day") : phrase("%1 days", std::to_string(count));
}

std::string why(const plan::Withheld& withheld)
{
    const auto text = reason(withheld);
    if (withheld.to) {
        return text;
    }
    switch (withheld.until) {
    case plan::WithheldUntil::NewGrowth:
        return phrase("%1; until new growth is logged", text);
    case plan::WithheldUntil::Release:
        return phrase("%1; until it is released", text);
    case plan::WithheldUntil::ReleaseAndNewGrowth:
        return phrase("%1; until it is released and new growth is logged", text);
    default:
        return text;
    }
}

std::string_view to_string(plan::WithheldWhy why)
{
    switch (why) {
    case plan::WithheldWhy::UnknownKind:
        return "unknown_kind";
    case plan::WithheldWhy::NeverFed:
        return "never_fed";
    case plan::WithheldWhy::Nowhere:
        return "nowhere";
    case plan::WithheldWhy::ChemicalDamage:
        return "chemical_damage";
    case plan::WithheldWhy::SickRoots:
        return "sick_roots";
    case plan::WithheldWhy::Chilled:
        return "chilled";
    case plan::WithheldWhy::Isolated:
        return "isolated";
    case plan::WithheldWhy::Repotted:
        return "repotted";
    case plan::WithheldWhy::Bought:
        return "bought";
    case plan::WithheldWhy::Moved:
        return "moved";
    case plan::WithheldWhy::Rests:
        return "rests";
    case plan::WithheldWhy::WetSeason:
        return "wet_season";
    case plan::WithheldWhy::TooCool:
        return "too_cool";
    case plan::WithheldWhy::TooWarm:
        return "too_warm";
    case plan::WithheldWhy::TooDark:
        return "too_dark";
    case plan::WithheldWhy::ShortDays:
        return "short_days";
    }
    return {};
}

std::string_view to_string(plan::WithheldUntil until)
{
    switch (until) {
    case plan::WithheldUntil::Date:
        return "date";
    case plan::WithheldUntil::NewGrowth:
        return "new_growth";
    case plan::WithheldUntil::Release:
        return "released";
    case plan::WithheldUntil::ReleaseAndNewGrowth:
        return "released_and_new_growth";
    case plan::WithheldUntil::Never:
        return "never";
    }
    return {};
}

std::string why(plan::LookWhy why)
{
    switch (why) {
    case plan::LookWhy::NoWateringLogged:
        return phrase("no watering is logged");
    case plan::LookWhy::Drawn:
        return phrase("by then it has drawn what it may");
    case plan::LookWhy::LongestGap:
        return phrase("it draws little; look all the same");
    case plan::LookWhy::WetSpell:
        return phrase("rain may keep it wet; feel 5 cm deep");
    }
    return {};
}

std::string_view to_string(plan::LookWhy why)
{
    switch (why) {
    case plan::LookWhy::NoWateringLogged:
        return "no_watering_logged";
    case plan::LookWhy::Drawn:
        return "drawn";
    case plan::LookWhy::LongestGap:
        return "longest_gap";
    case plan::LookWhy::WetSpell:
        return "wet_spell";
    }
    return {};
}

std::string_view to_string(plan::HeatOnRoots heat)
{
    switch (heat) {
    case plan::HeatOnRoots::None:
        return "no harm";
    case plan::HeatOnRoots::Slows:
        return "roots slow down";
    case plan::HeatOnRoots::Stops:
        return "roots stop";
    case plan::HeatOnRoots::Harms:
        return "roots are harmed within hours";
    }
    return {};
}

std::string_view to_string(plan::WinterQuarters quarters)
{
    switch (quarters) {
    case plan::WinterQuarters::CoolAndDim:
        return "cool and dim";
    case plan::WinterQuarters::CoolAndBright:
        return "cool and bright";
    case plan::WinterQuarters::WarmAndBright:
        return "warm and bright";
    case plan::WinterQuarters::WarmAndDim:
        return "warm and dim";
    }
    return {};
}

std::vector<std::string> advice(const plan::RootsOfPlant& roots, const home::Household& household,
                                UnitSystem units)
{
    std::vector<std::string> sentences;
    const auto spot = [&](home::SpotId id) { return household.spot(id)->name; };
    if (roots.cold) {
        sentences.push_back("Roots: in a pot they are at risk at " + temperature(roots.cold_line, units) +
                            "; a usual winter's lowest night at " + spot(roots.cold->spot) + " is " +
                            temperature(roots.cold->usual_lowest, units) +
                            ". Wrap the pot, stand it on the ground by a wall, or bring it in.");
    }
    if (roots.heat) {
        sentences.push_back("Roots: the mix at the pot's wall reaches about " +
                            temperature(roots.heat->mix, units) + " at " + spot(roots.heat->spot) +
                            " about " + day(roots.heat->worst) + " (rough), where " +
                            std::string{to_string(roots.heat->effect)} +
                            ". Shade the pot itself, set it into a larger light one, and water early.");
    }
    if (roots.winter && roots.winter->quarters == plan::WinterQuarters::WarmAndDim) {
        sentences.push_back("Winter: " + spot(roots.winter->spot) + " is warm (" +
                            temperature(roots.winter->mean, units) + ") and dim (" +
                            number(roots.winter->light.moles(), 1) +
                            " mol a day). Warm and dim weakens a plant: " +
                            (roots.winter->wants_cool ? "give it a cool place, or much more light."
                                                      : "more light, by a window or a lamp, or cooler and drier."));
    }
    return sentences;
}

std::string sources_line(std::span<const plants::Source* const> sources)
{
    std::string text;
    bool memory = false;
    for (const auto* source : sources) {
        if (source->key == plants::kCommonPractice) {
            memory = true;
            continue;
        }
        text += (text.empty() ? "" : "; ") + source->title +
                (source->publisher.empty() ? "" : " (" + source->publisher +
                                                      (source->year ? ", " + std::to_string(*source->year) : "") +
                                                      ")");
    }
    if (memory) {
        text += std::string{text.empty() ? "" : "; "} + "the rest is common practice without a source";
    }
    return "Sources: " + text + ".\n";
}

} // namespace lathhouse::words
