#include "app/words/damage_words.h"

#include "app/words/course_words.h"
#include "app/words/phrase.h"
#include "app/words/table_words.h"

#include <array>
#include <utility>

namespace lathhouse::words {
namespace {

std::string days_between(double low, double high)
{
    if (high < 2.0) {
        return phrase("%1 to %2 hours", number(low * 24.0, 0), number(high * 24.0, 0));
    }
    return phrase("%1 to %2 days", number(low, low < 1.0 ? 1 : 0), number(high, 0));
}

std::string held(plan::InMix in_mix)
{
    switch (in_mix) {
    case plan::InMix::None:
        return phrase("It leaves no trace in the mix.");
    case plan::InMix::Bound:
        return phrase("It is bound in the mix, so washing does not bring it out.");
    case plan::InMix::Between:
        return phrase("It is partly bound in the mix.");
    case plan::InMix::Mobile:
        return phrase("It moves with water through the mix.");
    }
    return {};
}

std::string half_life(const plan::DamageMode& mode)
{
    if (mode.half_life_low_days && mode.half_life_high_days) {
        return phrase("Its half-life there is %1 to %2 days.", number(*mode.half_life_low_days, 0),
                      number(*mode.half_life_high_days, 0));
    }
    if (mode.half_life_low_days) {
        return phrase("Its half-life there is over %1 days.", number(*mode.half_life_low_days, 0));
    }
    return "";
}

std::string texts_of(const std::vector<std::string>& keys, const plan::DamageTable& table)
{
    std::string text;
    for (const auto& key : keys) {
        const auto* sign = table.sign(key);
        text += (text.empty() ? "" : "; ") + (sign == nullptr ? key : table_text(sign->text));
    }
    return text;
}

} // namespace

ModeWords mode_words(const plan::DamageMode& mode)
{
    std::vector<std::string> examples;
    for (const auto& substance : mode.examples) {
        examples.push_back(table_text(substance));
    }
    const std::string name = table_text(mode.name);
    const std::string days = days_between(mode.first_days_low, mode.first_days_high);
    ModeWords words{name, {}, table_text(mode.note), {}};
    const bool alone = examples.empty() || (examples.size() == 1 && examples.front() == name);
    words.told = alone ? phrase("%1: first signs after %2.", name, days)
                       : phrase("%1 (%2): first signs after %3.", name, listed(examples), days);
    const auto add = [&](const std::string& sentence) {
        if (!sentence.empty()) {
            words.told += ' ' + sentence;
        }
    };
    if (mode.is_weed_killer) {
        add(mode.is_systemic ? phrase("It travels in the plant.") : phrase("It hurts what it touched."));
        add(held(mode.in_mix));
        add(half_life(mode));
        if (mode.as_vapour) {
            add(phrase("It may come as a vapour days later."));
        }
    }
    add(table_text(mode.outlook));
    if (!mode.conflict.empty()) {
        words.conflict = phrase("Sources disagree: %1", table_text(mode.conflict));
    }
    return words;
}

std::string damage_mode(const plan::DamageMode& mode)
{
    const auto words = mode_words(mode);
    std::string text = words.told + "\n";
    for (const auto& more : {words.note, words.conflict}) {
        if (!more.empty()) {
            text += "  " + more + "\n";
        }
    }
    return text;
}

std::vector<std::string> fit_words(const plan::ModeFit& fit, const plan::DamageTable& table)
{
    const std::string name = table_text(fit.mode->name);
    std::vector<std::string> said{fit.closeness == plan::Closeness::Good   ? phrase("fits well: %1", name)
                                  : fit.closeness == plan::Closeness::Fair ? phrase("fits: %1", name)
                                                                           : phrase("fits a little: %1", name)};
    auto seen = fit.typical;
    seen.insert(seen.end(), fit.possible.begin(), fit.possible.end());
    said.push_back(phrase("for it: %1", texts_of(seen, table)));
    if (!fit.against.empty()) {
        said.push_back(phrase("against it: %1", texts_of(fit.against, table)));
    }
    if (fit.time_fits) {
        said.push_back(*fit.time_fits ? phrase("the time fits") : phrase("the time does not fit"));
    }
    return said;
}

std::string mode_fit(const plan::ModeFit& fit, const plan::DamageTable& table)
{
    std::string text;
    for (const auto& piece : fit_words(fit, table)) {
        text += (text.empty() ? "" : "; ") + piece;
    }
    return text;
}

std::string damage_step(plan::DamageAct act)
{
    switch (act) {
    case plan::DamageAct::Rinse:
        return phrase("rinse the wet leaves, gloves on, the pot tipped");
    case plan::DamageAct::Photograph:
        return phrase("photograph and write down");
    case plan::DamageAct::AskAndTell:
        return phrase("ask whoever sprayed, and tell whom it concerns");
    case plan::DamageAct::Leach:
        return phrase("wash the mix through and catch the water");
    case plan::DamageAct::Bioassay:
        return phrase("sow beans or peas in three pots of that mix and three of clean mix");
    case plan::DamageAct::ReadBioassay:
        return phrase("compare the two sets of pots; bent or cupped leaves in one set alone mean a trace in the mix");
    case plan::DamageAct::Look:
        return phrase("look, photograph and log new growth");
    }
    return {};
}

std::set<std::string> cold_cases(const plan::ColdPrognosis& prognosis, const plants::PlantKind* kind)
{
    std::set<std::string> cases{"soft"};
    // What kinds have wood is not in the table; soft and woody advice are both short.
    const bool soft = kind != nullptr && (kind->group == "succulent" || kind->group == "vegetable" ||
                                          kind->group == "annual_porch" || kind->group == "bulb_porch");
    if (!soft) {
        cases.insert("woody");
    }
    if (prognosis.outcome >= plan::ColdOutcome::DeathPossible) {
        cases.insert("severe");
    }
    if (prognosis.roots_at_risk) {
        cases.insert("roots");
    }
    return cases;
}

std::vector<CareList> care_lists(std::string_view topic, const std::set<std::string>& cases)
{
    constexpr std::array<std::pair<std::string_view, const char*>, 9> kHeads{
        {{"tonight", said_later("Tonight")},
         {"now", said_later("Now")},
         {"leave", said_later("Leave")},
         {"look", said_later("Look")},
         {"rule_out", said_later("Rule out first")},
         {"write_down", said_later("Write down")},
         {"photograph", said_later("Photograph")},
         {"ask", said_later("Ask")},
         {"tell", said_later("Tell")}}};
    std::vector<CareList> lists;
    const auto lines = plan::care_lines_for(topic, cases);
    for (const auto& [list, head] : kHeads) {
        CareList of{phrase(head), {}};
        for (const auto* line : lines) {
            if (line->list == list) {
                of.lines.push_back(line);
            }
        }
        if (!of.lines.empty()) {
            lists.push_back(std::move(of));
        }
    }
    return lists;
}

std::string care_lines(std::string_view topic, const std::set<std::string>& cases)
{
    std::string text;
    for (const auto& list : care_lists(topic, cases)) {
        text += list.head + ":\n";
        for (const auto* line : list.lines) {
            text += "  " + table_text(line->text) + "\n";
        }
    }
    return text;
}

std::string cold_outcome(plan::ColdOutcome outcome)
{
    switch (outcome) {
    case plan::ColdOutcome::Nothing:
        return phrase("Above the plant's safe night: nothing is to be expected.");
    case plan::ColdOutcome::Stress:
        return phrase("Stress: below the safe night, above the line of damage. Often nothing shows.");
    case plan::ColdOutcome::GrowthLost:
        return phrase("Growth is probably lost: long below the safe night stunts a plant without a sign on the leaves.");
    case plan::ColdOutcome::LeafDamagePossible:
        return phrase("Leaf damage is possible: the line was crossed, though not for long.");
    case plan::ColdOutcome::LeafDamageLikely:
        return phrase("Leaf damage is likely; the plant as a whole should live.");
    case plan::ColdOutcome::DeathPossible:
        return phrase("Death is possible: the lethal line was reached. Wait for the looks before giving it up.");
    case plan::ColdOutcome::DeathLikely:
        return phrase("Death is likely: the night went below the lethal line. Roots or base may yet live, so wait.");
    }
    return {};
}

std::string cold_doubt(plan::ColdDoubt doubt)
{
    switch (doubt) {
    case plan::ColdDoubt::NoPublishedTemperature:
        return phrase("No temperature was ever published for this kind: its lines are common practice, so this is a guess.");
    case plan::ColdDoubt::RatingOnly:
        return phrase("Its lines rest on a hardiness class, not on a measured injury.");
    case plan::ColdDoubt::GroupFigure:
        return phrase("Its lines are those of its group or genus; sorts differ.");
    case plan::ColdDoubt::DarkTest:
        return phrase("Its lines come from cold stores in the dark; light and wind make it worse.");
    case plan::ColdDoubt::OwnLines:
        return phrase("Its lines are the household's own.");
    case plan::ColdDoubt::SeveralNights:
        return phrase("Nights add up; by how much is known for few kinds.");
    case plan::ColdDoubt::CourseAssumed:
        return phrase("How long it was cold was not measured; the night's course is a model with the usual swing of the spot "
                      "at that time of the year where it is known, else with 8 K. A clear night's swing is wider and its "
                      "cold shorter.");
    }
    return {};
}

std::string cold_step(plan::ColdAct act)
{
    switch (act) {
    case plan::ColdAct::Look:
        return phrase("look at leaves and stems, photograph");
    case plan::ColdAct::ScratchTest:
        return phrase("scratch test on woody stems: green and moist is alive");
    case plan::ColdAct::ExpectGrowth:
        return phrase("new growth by now is a sign of life; log it, then feeding may begin again");
    }
    return {};
}

} // namespace lathhouse::words
