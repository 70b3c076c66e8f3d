#include "app/words/damage_words.h"

#include "app/words/phrase.h"
#include "app/words/course_words.h"
#include "core/plan/care_lines.h"

#include <array>
#include <utility>

namespace lathhouse::words {
namespace {

std::string days_between(double low, double high)
{
    if (high < 2.0) {
        return number(low * 24.0, 0) + " to " + number(high * 24.0, 0) + " hours";
    }
    return number(low, low < 1.0 ? 1 : 0) + " to " + number(high, 0) + " days";
}

std::string_view held(plan::InMix in_mix)
{
    switch (in_mix) {
    case plan::InMix::None:
        return "leaves no trace in the mix";
    case plan::InMix::Bound:
        return "is bound in the mix, so washing does not bring it out";
    case plan::InMix::Between:
        return "is partly bound in the mix";
    case plan::InMix::Mobile:
        return "moves with water through the mix";
    }
    return {};
}

std::string half_life(const plan::DamageMode& mode)
{
    if (mode.half_life_low_days && mode.half_life_high_days) {
        return ", half-life " + number(*mode.half_life_low_days, 0) + " to " +
               number(*mode.half_life_high_days, 0) + " days";
    }
    if (mode.half_life_low_days) {
        return ", half-life over " + number(*mode.half_life_low_days, 0) + " days";
    }
    return "";
}

std::string texts_of(const std::vector<std::string>& keys, const plan::DamageTable& table)
{
    std::string text;
    for (const auto& key : keys) {
        const auto* sign = table.sign(key);
        text += (text.empty() ? "" : "; ") + (sign == nullptr ? key : sign->text);
    }
    return text;
}

} // namespace

std::string damage_mode(const plan::DamageMode& mode)
{
    std::string text = mode.name;
    if (!mode.examples.empty()) {
        text += " (" + listed(mode.examples) + ")";
    }
    text += ": first signs after " + days_between(mode.first_days_low, mode.first_days_high);
    if (mode.is_weed_killer) {
        text += "; it " + std::string{mode.is_systemic ? "travels in the plant" : "hurts what it touched"} +
                " and " + std::string{held(mode.in_mix)} + half_life(mode);
        if (mode.as_vapour) {
            text += "; it may come as a vapour days later";
        }
    }
    text += ". " + mode.outlook + "\n";
    if (!mode.note.empty()) {
        text += "  " + mode.note + "\n";
    }
    if (!mode.conflict.empty()) {
        text += "  Sources disagree: " + mode.conflict + "\n";
    }
    return text;
}

std::string mode_fit(const plan::ModeFit& fit, const plan::DamageTable& table)
{
    std::string text = fit.closeness == plan::Closeness::Good   ? "fits well: "
                       : fit.closeness == plan::Closeness::Fair ? "fits: "
                                                                : "fits a little: ";
    text += fit.mode->name;
    auto seen = fit.typical;
    seen.insert(seen.end(), fit.possible.begin(), fit.possible.end());
    text += "; for it: " + texts_of(seen, table);
    if (!fit.against.empty()) {
        text += "; against it: " + texts_of(fit.against, table);
    }
    if (fit.time_fits) {
        text += *fit.time_fits ? "; the time fits" : "; the time does not fit";
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

std::string care_lines(std::string_view topic, const std::set<std::string>& cases)
{
    constexpr std::array<std::pair<std::string_view, std::string_view>, 9> kHeads{
        {{"tonight", "Tonight"},
         {"now", "Now"},
         {"leave", "Leave"},
         {"look", "Look"},
         {"rule_out", "Rule out first"},
         {"write_down", "Write down"},
         {"photograph", "Photograph"},
         {"ask", "Ask"},
         {"tell", "Tell"}}};
    std::string text;
    const auto lines = plan::care_lines_for(topic, cases);
    for (const auto& [list, head] : kHeads) {
        bool any = false;
        for (const auto* line : lines) {
            if (line->list == list) {
                text += any ? "" : std::string{head} + ":\n";
                any = true;
                text += "  " + line->text + "\n";
            }
        }
    }
    return text;
}

std::string cold_outcome(plan::ColdOutcome outcome)
{
    switch (outcome) {
    case plan::ColdOutcome::Nothing:
        return "Above the plant's safe night: nothing is to be expected.";
    case plan::ColdOutcome::Stress:
        return "Stress: below the safe night, above the line of damage. Often nothing shows.";
    case plan::ColdOutcome::GrowthLost:
        return "Growth is probably lost: long below the safe night stunts a plant without a sign on the leaves.";
    case plan::ColdOutcome::LeafDamagePossible:
        return "Leaf damage is possible: the line was crossed, though not for long.";
    case plan::ColdOutcome::LeafDamageLikely:
        return "Leaf damage is likely; the plant as a whole should live.";
    case plan::ColdOutcome::DeathPossible:
        return "Death is possible: the lethal line was reached. Wait for the looks before giving it up.";
    case plan::ColdOutcome::DeathLikely:
        return "Death is likely: the night went below the lethal line. Roots or base may yet live, so wait.";
    }
    return {};
}

std::string cold_doubt(plan::ColdDoubt doubt)
{
    switch (doubt) {
    case plan::ColdDoubt::NoPublishedTemperature:
        return "No temperature was ever published for this kind: its lines are common practice, so this is a "
               "guess.";
    case plan::ColdDoubt::RatingOnly:
        return "Its lines rest on a hardiness class, not on a measured injury.";
    case plan::ColdDoubt::GroupFigure:
        return "Its lines are those of its group or genus; sorts differ.";
    case plan::ColdDoubt::DarkTest:
        return "Its lines come from cold stores in the dark; light and wind make it worse.";
    case plan::ColdDoubt::OwnLines:
        return "Its lines are the household's own.";
    case plan::ColdDoubt::SeveralNights:
        return "Nights add up; by how much is known for few kinds.";
    case plan::ColdDoubt::CourseAssumed:
        return "How long it was cold was not measured; the night's course is a model with the usual swing of the spot at "
               "that time of the year where it is known, else with 8 K. A clear night's swing is wider and its cold "
               "shorter.";
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
