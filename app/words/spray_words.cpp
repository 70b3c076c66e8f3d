#include "app/words/spray_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"

namespace lathhouse::words {
namespace {

std::string degrees(double celsius, UnitSystem units)
{
    return temperature(Celsius::from_degrees(celsius), units);
}

std::string limit(const plan::SprayFinding& finding, UnitSystem units)
{
    const std::string given = degrees(*finding.given, units);
    return finding.check == plan::SprayCheck::TemperatureHigh
               ? phrase("Wait for other weather: %1 is above %2.", given, degrees(*finding.high, units))
               : phrase("Wait for other weather: %1 is below %2.", given, degrees(*finding.low, units));
}

/// "Crassulaceae: The wax bloom comes off." in the reader's language. Groups of the plant table have a small letter; what has
/// a large one is the botanical name of a family, a genus or a kind.
std::string kind_note(const std::string& note)
{
    const auto colon = note.find(": ");
    const auto name = note.substr(0, colon);
    const bool is_group = !name.empty() && name.front() >= 'a' && name.front() <= 'z';
    return (is_group ? table_text(name) : name) + (colon == std::string::npos ? "" : ": " + table_text(note.substr(colon + 2)));
}

} // namespace

std::string spray_finding(const plan::SprayFinding& finding, UnitSystem units)
{
    switch (finding.check) {
    case plan::SprayCheck::Label:
        return phrase("Read the label first: it stands above everything here.");
    case plan::SprayCheck::LabelForbids:
        return phrase("The label forbids this plant, pest or place, so it is not to be used here.");
    case plan::SprayCheck::TestLeaf:
        return phrase("Try one leaf and wait 24 to 48 hours before the rest.");
    case plan::SprayCheck::TestLeafHurt:
        return phrase("The tried leaf was hurt: take another way for this plant.");
    case plan::SprayCheck::TemperatureLow:
    case plan::SprayCheck::TemperatureHigh:
        return limit(finding, units);
    case plan::SprayCheck::DirectSun:
        return phrase("Out of the sun first, and keep it there until it is dry.");
    case plan::SprayCheck::DryOrWilted:
        return phrase("Water first and spray when the leaves stand again.");
    case plan::SprayCheck::JustRepotted:
        return phrase("It was repotted less than two weeks ago: let the roots take hold first.");
    case plan::SprayCheck::Seedling:
        return phrase("Seedlings burn easily: wash or pick the pests off.");
    case plan::SprayCheck::Windy:
        return phrase("Wait for still air; wind carries it to people, ponds and other plants.");
    case plan::SprayCheck::RainSoon:
        return phrase("Rain would wash it off: wait for a dry day.");
    case plan::SprayCheck::OpenFlowersOutdoors:
        return phrase("Open flowers outdoors: not while bees can reach them; wait until the flowers are over.");
    case plan::SprayCheck::OpenFlowers:
        return phrase("Not on a plant in flower: what roots take up stays in nectar and pollen.");
    case plan::SprayCheck::ChildNear:
        return phrase("Keep children away until it is dry and aired.");
    case plan::SprayCheck::AnimalNear:
        return phrase("Keep animals away until it is dry and aired; cover fish tanks and stop their pumps.");
    case plan::SprayCheck::AsthmaOrPregnant:
        return phrase("Let somebody else do it, and stay out until it is aired; ask the doctor where in doubt.");
    case plan::SprayCheck::NoFreshAir:
        return phrase("Not without fresh air: open a window or carry it out.");
    case plan::SprayCheck::FlameNear:
        return phrase("Never near a flame, a stove or a spark: alcohol burns.");
    case plan::SprayCheck::Edible:
        return phrase("For eating: keep the waiting time of the label, and wash the harvest.");
    case plan::SprayCheck::EdibleNotOnLabel:
        return phrase("The crop does not stand on the label: never on what is eaten.");
    case plan::SprayCheck::Homemade:
        return phrase("Household detergents burn more often than plant soaps, and in some places they may not be used.");
    case plan::SprayCheck::MixedHours:
        return phrase("It was mixed too long ago: mix afresh.");
    case plan::SprayCheck::SensitiveKind:
        return finding.verdict == plan::SprayVerdict::Never
                   ? phrase("This kind is known to be hurt by it (%1): take another way.", kind_note(finding.note))
               : finding.verdict == plan::SprayVerdict::Wait
                   ? phrase("This kind may be hurt by it (%1): only after a leaf that stood 48 hours.", kind_note(finding.note))
                   : phrase("This kind may be hurt by it (%1); the tried leaf stood.", kind_note(finding.note));
    case plan::SprayCheck::Place:
        break;
    }
    return {};
}

std::string spray_question(plan::SprayCheck check)
{
    switch (check) {
    case plan::SprayCheck::Label:
        return phrase("Was the label read?");
    case plan::SprayCheck::LabelForbids:
        return phrase("Does the label forbid this plant, pest or place?");
    case plan::SprayCheck::TestLeaf:
        return phrase("How many hours ago was one leaf tried?");
    case plan::SprayCheck::TestLeafHurt:
        return phrase("Was the tried leaf hurt?");
    case plan::SprayCheck::TemperatureLow:
    case plan::SprayCheck::TemperatureHigh:
        return phrase("How warm does it get until it is dry?");
    case plan::SprayCheck::DirectSun:
        return phrase("Is it in direct sun?");
    case plan::SprayCheck::DryOrWilted:
        return phrase("Is it dry or wilted?");
    case plan::SprayCheck::JustRepotted:
        return phrase("How many days since it was repotted?");
    case plan::SprayCheck::Seedling:
        return phrase("Is it a seedling?");
    case plan::SprayCheck::Windy:
        return phrase("Is it windy?");
    case plan::SprayCheck::RainSoon:
        return phrase("Is rain near?");
    case plan::SprayCheck::OpenFlowersOutdoors:
    case plan::SprayCheck::OpenFlowers:
        return phrase("Are flowers open?");
    case plan::SprayCheck::ChildNear:
        return phrase("Are children near?");
    case plan::SprayCheck::AnimalNear:
        return phrase("Are animals near, fish too?");
    case plan::SprayCheck::AsthmaOrPregnant:
        return phrase("Has anyone near asthma, or is anyone pregnant?");
    case plan::SprayCheck::NoFreshAir:
        return phrase("Is there fresh air?");
    case plan::SprayCheck::FlameNear:
        return phrase("Is a flame, stove or spark near?");
    case plan::SprayCheck::Edible:
        return phrase("Is any of it eaten?");
    case plan::SprayCheck::EdibleNotOnLabel:
        return phrase("Does the crop stand on the label?");
    case plan::SprayCheck::Homemade:
        return phrase("Is it homemade?");
    case plan::SprayCheck::MixedHours:
        return phrase("How many hours ago was it mixed?");
    case plan::SprayCheck::Place:
        return phrase("Is it sprayed outdoors?");
    case plan::SprayCheck::SensitiveKind:
        break;
    }
    return {};
}

std::string spray_conflict(const plan::SprayConflict& conflict, UnitSystem units)
{
    return phrase("Sources disagree on the heat limit: %1 and %2; the lower one decides here.", degrees(conflict.strict, units),
                  degrees(conflict.usual, units));
}

std::string spray_verdict(const plan::SprayDecision& decision)
{
    if (decision.verdict == plan::SprayVerdict::Go) {
        return phrase("Go: nothing speaks against it.");
    }
    if (decision.verdict == plan::SprayVerdict::Never) {
        return phrase("Never: not like this.");
    }
    return decision.findings.empty() || decision.findings.front().verdict < plan::SprayVerdict::Wait
               ? phrase("Wait: questions are open.")
               : phrase("Wait.");
}

std::string spray_go()
{
    return phrase("Gloves on; wet both sides of the leaves; keep it out of sun until it is dry; look again after a day. The "
                  "label and local rules come first.");
}

} // namespace lathhouse::words
