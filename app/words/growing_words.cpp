#include "app/words/growing_words.h"

#include "app/words/phrase.h"
#include "app/words/us_units.h"
#include "core/plan/kitchen_measures.h"

#include <array>

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
    case plan::WithheldWhy::Infested:
        return withheld.since ? phrase("pests were found on it on %1", since) : phrase("pests were found on it");
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

std::string water_of_day(Litres value, UnitSystem units)
{
    return units.us_measures() ? phrase("%1 qt", number(value.litres() / kLitresInAQuart, 2))
                               : phrase("%1 L", number(value.litres(), 2));
}

std::string weight(double kilograms, UnitSystem units)
{
    return units.us_measures() ? phrase("%1 lb", number(kilograms / kKilogramsInAPound, 0)) : phrase("%1 kg", number(kilograms, 0));
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
    case plan::WithheldUntil::NoPests:
        return phrase("%1; until no pest is found any more", text);
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
    case plan::WithheldWhy::Infested:
        return "infested";
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
    case plan::WithheldUntil::NoPests:
        return "no_pests";
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
        sentences.push_back(phrase("Roots: in a pot they are at risk at %1; a usual winter's lowest night at %2 is %3. Wrap the "
                                   "pot, stand it on the ground by a wall, or bring it in.",
                                   temperature(roots.cold_line, units), spot(roots.cold->spot),
                                   temperature(roots.cold->usual_lowest, units)));
    }
    if (roots.heat) {
        const char* effect = roots.heat->effect == plan::HeatOnRoots::Slows   ? said_later("roots slow down")
                             : roots.heat->effect == plan::HeatOnRoots::Stops ? said_later("roots stop")
                                                                              : said_later("roots are harmed within hours");
        sentences.push_back(phrase("Roots: the mix at the pot's wall reaches about %1 at %2 about %3 (rough), where %4. Shade the "
                                   "pot itself, set it into a larger light one, and water early.",
                                   temperature(roots.heat->mix, units), spot(roots.heat->spot), day(roots.heat->worst),
                                   phrase(effect)));
    }
    if (roots.winter && roots.winter->quarters == plan::WinterQuarters::WarmAndDim) {
        const auto mean = temperature(roots.winter->mean, units);
        const auto light = number(roots.winter->light.moles(), 1);
        sentences.push_back(roots.winter->wants_cool
                                ? phrase("Winter: %1 is warm (%2) and dim (%3 mol a day). Warm and dim weakens a plant: give it a "
                                         "cool place, or much more light.",
                                         spot(roots.winter->spot), mean, light)
                                : phrase("Winter: %1 is warm (%2) and dim (%3 mol a day). Warm and dim weakens a plant: more light, "
                                         "by a window or a lamp, or cooler and drier.",
                                         spot(roots.winter->spot), mean, light));
    }
    return sentences;
}

std::span<const std::string_view> water_rules()
{
    static constexpr std::array<std::string_view, 22> kWaterRules{
        "pot_litres_per_kg", "pot_shape",      "available_share", "draw_factor",  "draw_succulent",
        "dry_keep_moist",    "dry_top_inch",   "dry_right_out",   "look_top_inch", "finger_depth",
        "wet_month_rain",    "wet_season",     "roots_zones",     "roots_young",  "roots_air",
        "roots_slow",        "roots_stop",     "roots_injury",    "pot_dark_excess", "pot_light_less",
        "winter_match",      "leach_saucer"};
    return kWaterRules;
}

std::string winter_words(plan::WinterQuarters quarters)
{
    switch (quarters) {
    case plan::WinterQuarters::CoolAndDim:
        return phrase("cool and dim");
    case plan::WinterQuarters::CoolAndBright:
        return phrase("cool and bright");
    case plan::WinterQuarters::WarmAndBright:
        return phrase("warm and bright");
    case plan::WinterQuarters::WarmAndDim:
        return phrase("warm and dim");
    }
    return {};
}

std::string wet_season(const std::string& spells)
{
    return phrase("Wet season for pots in the open: %1. Cacti and succulents under a roof, pots on feet, saucers empty, no feed; "
                  "look for fungus. The top may look dry while the roots stand wet: feel 5 cm deep.",
                  spells);
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
        text += (text.empty() ? "" : "; ") + phrase("the rest is common practice without a source");
    }
    return phrase("Sources: %1.", text) + "\n";
}

} // namespace lathhouse::words
