#include "app/words/mix_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "core/plan/cautions.h"
#include "core/plan/growing_rules.h"
#include "core/plan/kitchen_measures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>

namespace lathhouse::words {
namespace {

constexpr double kTeaspoonsInATablespoon = 3.0;
/// A vessel of the household up to that is a spoon; common practice, no source.
constexpr double kLargestSpoonMillilitres = 50.0;
/// Below that a spoon cannot be halved by eye any more, so drops say more; common practice, no source.
constexpr double kSmallestSpoonful = 0.25;

/// 2.5, 12, 0.31: what a kitchen scale or a syringe can show of it.
std::string kitchen_number(double amount)
{
    const bool halves = amount < 20.0 && std::abs(amount - std::round(amount)) > 0.05;
    return number(amount, amount < 1.0 ? 2 : amount < 10.0 || halves ? 1 : 0);
}

/// The largest spoon of the household that holds it at least half.
const home::Jug* spoon_for(Litres volume, std::span<const home::Jug> spoons)
{
    const home::Jug* best = nullptr;
    for (const auto& spoon : spoons) {
        const double size = spoon.volume.millilitres();
        if (size <= kLargestSpoonMillilitres && volume.millilitres() >= 0.5 * size &&
            (best == nullptr || size > best->volume.millilitres())) {
            best = &spoon;
        }
    }
    return best;
}

std::string about(const plan::Mix& mix, std::span<const home::Jug> spoons)
{
    if (const auto* spoon = spoon_for(*mix.volume, spoons)) {
        return phrase("%1 × %2", fraction(mix.volume->millilitres() / spoon->volume.millilitres()), spoon->name);
    }
    if (mix.drops_about && mix.volume->teaspoons() < kSmallestSpoonful) {
        return phrase("%1 drops", number(*mix.drops_about, 0));
    }
    return spoonful(*mix.volume);
}

std::string too_strong(plants::FeedClass feeder, const std::string& ppm, const std::string& low, const std::string& high)
{
    switch (feeder) {
    case plants::FeedClass::Light:
        return phrase("%1 ppm is too strong for a light feeder, which gets %2 to %3 ppm.", ppm, low, high);
    case plants::FeedClass::Medium:
        return phrase("%1 ppm is too strong for a medium feeder, which gets %2 to %3 ppm.", ppm, low, high);
    default:
        return phrase("%1 ppm is too strong for a heavy feeder, which gets %2 to %3 ppm.", ppm, low, high);
    }
}

std::string too_weak(plants::FeedClass feeder, const std::string& ppm, const std::string& low, const std::string& high)
{
    switch (feeder) {
    case plants::FeedClass::Light:
        return phrase("%1 ppm is weak for a light feeder, which gets %2 to %3 ppm; in a dim room half of that is right.", ppm, low, high);
    case plants::FeedClass::Medium:
        return phrase("%1 ppm is weak for a medium feeder, which gets %2 to %3 ppm; in a dim room half of that is right.", ppm, low, high);
    default:
        return phrase("%1 ppm is weak for a heavy feeder, which gets %2 to %3 ppm; in a dim room half of that is right.", ppm, low, high);
    }
}

std::vector<std::string> texts_of(std::initializer_list<plan::CautionTopic> topics)
{
    std::vector<std::string> texts;
    for (const auto topic : topics) {
        for (const auto* caution : plan::cautions_for(topic)) {
            texts.push_back(table_text(caution->text));
        }
    }
    return texts;
}

} // namespace

std::string fraction(double count)
{
    constexpr std::array<std::pair<std::string_view, const char*>, 7> kParts{{{"1/8", "⅛"},
                                                                              {"1/4", "¼"},
                                                                              {"3/8", "⅜"},
                                                                              {"1/2", "½"},
                                                                              {"5/8", "⅝"},
                                                                              {"3/4", "¾"},
                                                                              {"7/8", "⅞"}}};
    std::string text = plan::spoons(count);
    if (text.starts_with("less")) {
        return phrase("less than ⅛");
    }
    for (const auto& [plain, sign] : kParts) {
        if (text.ends_with(plain)) {
            text.resize(text.size() - plain.size());
            if (text.ends_with(' ')) {
                text.pop_back();
            }
            return text + sign;
        }
    }
    return text;
}

std::string spoonful(Litres volume)
{
    constexpr double kStillOne = 1.125; // As the fractions are rounded.
    const double teaspoons = volume.teaspoons();
    if (teaspoons >= kTeaspoonsInATablespoon) {
        const double tablespoons = teaspoons / kTeaspoonsInATablespoon;
        return tablespoons < kStillOne ? phrase("%1 tablespoon", fraction(tablespoons))
                                       : phrase("%1 tablespoons", fraction(tablespoons));
    }
    return teaspoons < kStillOne ? phrase("%1 teaspoon", fraction(teaspoons)) : phrase("%1 teaspoons", fraction(teaspoons));
}

std::string feed_dose(const plan::Mix& mix, const FeedAtHand& feed, const std::string& water,
                      std::span<const home::Jug> spoons, UnitSystem units)
{
    const std::string grams = kitchen_number(*mix.grams);
    if (!mix.volume) {
        return phrase("%1 g of %2 into %3 of water", grams, feed.name, water);
    }
    if (units.us_measures()) {
        return phrase("about %1 (%2 g) of %3 into %4 of water", about(mix, spoons), grams, feed.name, water);
    }
    if (feed.form == plan::FeedForm::Liquid) {
        return phrase("%1 ml of %2, about %3, into %4 of water", kitchen_number(mix.volume->millilitres()), feed.name,
                      about(mix, spoons), water);
    }
    return phrase("%1 g of %2, about %3, into %4 of water", grams, feed.name, about(mix, spoons), water);
}

std::string spray_dose(const plan::Mix& mix, const std::string& water, UnitSystem units)
{
    const std::string millilitres = kitchen_number(mix.volume->millilitres());
    return units.us_measures() ? phrase("about %1 (%2 ml) into %3 of water", about(mix, {}), millilitres, water)
                               : phrase("%1 ml, about %2, into %3 of water", millilitres, about(mix, {}), water);
}

std::string feed_makes(const plan::Mix& mix, double nitrogen_ppm)
{
    return phrase("Makes %1 ppm nitrogen, %2 ppm phosphorus, %3 ppm potassium.", number(nitrogen_ppm, 0),
                  number(*mix.phosphorus_ppm, 0), number(*mix.potassium_ppm, 0));
}

std::string feed_on_a_meter(const plan::ConductivityHint& hint)
{
    return phrase("A conductivity meter shows about %1 mS/cm more than the water alone (%2 where the nitrogen is urea, %3 "
                  "where it is calcium nitrate); the label's figure goes before it.",
                  number(hint.usual, 2), number(hint.least, 2), number(hint.highest, 2));
}

std::vector<std::string> feed_warnings(const plan::Mix& mix, plan::FeedForm form, double nitrogen_ppm,
                                       std::optional<plants::FeedClass> feeder)
{
    std::vector<std::string> warnings;
    const std::string ppm = number(nitrogen_ppm, 0);
    if (feeder) {
        const auto usual = plan::usual_nitrogen(*feeder);
        if (!usual) {
            warnings.push_back(phrase("A plant of a kind that takes no feed needs none of it."));
        } else if (nitrogen_ppm > usual->high) {
            warnings.push_back(too_strong(*feeder, ppm, number(usual->low, 0), number(usual->high, 0)));
        } else if (nitrogen_ppm < usual->low * plan::growing_figure("feed_home_share")) {
            warnings.push_back(too_weak(*feeder, ppm, number(usual->low, 0), number(usual->high, 0)));
        }
    }
    if (nitrogen_ppm > plan::growing_figure("feed_greenhouse_ppm")) {
        warnings.push_back(phrase("More than %1 ppm of nitrogen is above what greenhouses give at every watering; pots at home get half or less.",
                                  number(plan::growing_figure("feed_greenhouse_ppm"), 0)));
    }
    if (!mix.volume) {
        warnings.push_back(form == plan::FeedForm::Liquid
                               ? phrase("Without the weight of a millilitre (on the label) only grams are known.")
                               : phrase("Without the weight of a level teaspoon only grams are known: spoons of powder differ by kind from 3.8 to 6.8 g."));
    }
    return warnings;
}

std::vector<std::string> spray_warnings(double percent, plan::SprayStuff stuff)
{
    std::vector<std::string> warnings;
    const auto* usual = plan::GrowingRules::built_in().find(stuff == plan::SprayStuff::Soap ? "soap_percent" : "neem_percent");
    if (percent > plan::growing_figure("oil_percent_most")) {
        warnings.push_back(phrase("More than %1 percent burns leaves of many plants; the label's strength counts.",
                                  number(plan::growing_figure("oil_percent_most"), 0)));
    } else if (usual != nullptr && percent > *usual->high) {
        warnings.push_back(phrase("Stronger than usual, which is %1 to %2 percent; the label's strength counts.",
                                  number(*usual->low, 1), number(*usual->high, 1)));
    } else if (usual != nullptr && percent < *usual->low) {
        warnings.push_back(phrase("Weaker than usual, which is %1 to %2 percent, so it may do nothing; the label's strength counts.",
                                  number(*usual->low, 1), number(*usual->high, 1)));
    }
    return warnings;
}

std::vector<std::string> feed_cautions()
{
    return texts_of({plan::CautionTopic::Label, plan::CautionTopic::FertiliserStorage});
}

std::vector<std::string> spray_cautions(plan::SprayStuff stuff)
{
    using plan::CautionTopic;
    auto texts = texts_of({CautionTopic::Label, CautionTopic::TestLeaf, CautionTopic::SprayWeather, CautionTopic::Bees,
                           CautionTopic::Ventilation, CautionTopic::Breathing, CautionTopic::ChildOrAnimal});
    const auto more = stuff == plan::SprayStuff::Soap ? texts_of({CautionTopic::Soap, CautionTopic::HomemadeMix})
                                                      : texts_of({CautionTopic::Oil, CautionTopic::Neem});
    texts.insert(texts.end(), more.begin(), more.end());
    return texts;
}

} // namespace lathhouse::words
