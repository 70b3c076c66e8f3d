#include "app/words/spray_words.h"

namespace lathhouse::words {
namespace {

std::string degrees(double celsius, UnitSystem units)
{
    return temperature(Celsius::from_degrees(celsius), units);
}

std::string limit(const plan::SprayFinding& finding, UnitSystem units)
{
    const bool high = finding.check == plan::SprayCheck::TemperatureHigh;
    const auto bound = high ? finding.high : finding.low;
    return degrees(*finding.given, units) + " is " + (high ? "above " : "below ") + degrees(*bound, units);
}

} // namespace

std::string spray_finding(const plan::SprayFinding& finding, UnitSystem units)
{
    switch (finding.check) {
    case plan::SprayCheck::Label:
        return "Read the label first: it stands above everything here.";
    case plan::SprayCheck::LabelForbids:
        return "The label forbids this plant, pest or place, so it is not to be used here.";
    case plan::SprayCheck::TestLeaf:
        return "Try one leaf and wait 24 to 48 hours before the rest.";
    case plan::SprayCheck::TestLeafHurt:
        return "The tried leaf was hurt: take another way for this plant.";
    case plan::SprayCheck::TemperatureLow:
    case plan::SprayCheck::TemperatureHigh:
        return "Wait for other weather: " + limit(finding, units) + ".";
    case plan::SprayCheck::DirectSun:
        return "Out of the sun first, and keep it there until it is dry.";
    case plan::SprayCheck::DryOrWilted:
        return "Water first and spray when the leaves stand again.";
    case plan::SprayCheck::JustRepotted:
        return "It was repotted less than two weeks ago: let the roots take hold first.";
    case plan::SprayCheck::Seedling:
        return "Seedlings burn easily: wash or pick the pests off.";
    case plan::SprayCheck::Windy:
        return "Wait for still air; wind carries it to people, ponds and other plants.";
    case plan::SprayCheck::RainSoon:
        return "Rain would wash it off: wait for a dry day.";
    case plan::SprayCheck::OpenFlowersOutdoors:
        return "Open flowers outdoors: not while bees can reach them; wait until the flowers are over.";
    case plan::SprayCheck::OpenFlowers:
        return "Not on a plant in flower: what roots take up stays in nectar and pollen.";
    case plan::SprayCheck::ChildNear:
        return "Keep children away until it is dry and aired.";
    case plan::SprayCheck::AnimalNear:
        return "Keep animals away until it is dry and aired; cover fish tanks and stop their pumps.";
    case plan::SprayCheck::AsthmaOrPregnant:
        return "Let somebody else do it, and stay out until it is aired; ask the doctor where in doubt.";
    case plan::SprayCheck::NoFreshAir:
        return "Not without fresh air: open a window or carry it out.";
    case plan::SprayCheck::FlameNear:
        return "Never near a flame, a stove or a spark: alcohol burns.";
    case plan::SprayCheck::Edible:
        return "For eating: keep the waiting time of the label, and wash the harvest.";
    case plan::SprayCheck::EdibleNotOnLabel:
        return "The crop does not stand on the label: never on what is eaten.";
    case plan::SprayCheck::Homemade:
        return "Household detergents burn more often than plant soaps, and in some places they may not be used.";
    case plan::SprayCheck::MixedHours:
        return "It was mixed too long ago: mix afresh.";
    case plan::SprayCheck::SensitiveKind:
        return finding.verdict == plan::SprayVerdict::Never
                   ? "This kind is known to be hurt by it (" + finding.note + "): take another way."
               : finding.verdict == plan::SprayVerdict::Wait
                   ? "This kind may be hurt by it (" + finding.note + "): only after a leaf that stood 48 hours."
                   : "This kind may be hurt by it (" + finding.note + "); the tried leaf stood.";
    case plan::SprayCheck::Place:
        break;
    }
    return {};
}

std::string spray_question(plan::SprayCheck check)
{
    switch (check) {
    case plan::SprayCheck::Label:
        return "Was the label read? (--label-read)";
    case plan::SprayCheck::LabelForbids:
        return "Does the label forbid this plant, pest or place? (--label-forbids)";
    case plan::SprayCheck::TestLeaf:
        return "How many hours ago was one leaf tried? (--test-leaf)";
    case plan::SprayCheck::TestLeafHurt:
        return "Was the tried leaf hurt? (--leaf-hurt)";
    case plan::SprayCheck::TemperatureLow:
    case plan::SprayCheck::TemperatureHigh:
        return "How warm does it get until it is dry? (--temperature)";
    case plan::SprayCheck::DirectSun:
        return "Is it in direct sun? (--sun)";
    case plan::SprayCheck::DryOrWilted:
        return "Is it dry or wilted? (--dry)";
    case plan::SprayCheck::JustRepotted:
        return "How many days since it was repotted? (--repotted-days)";
    case plan::SprayCheck::Seedling:
        return "Is it a seedling? (--seedling)";
    case plan::SprayCheck::Windy:
        return "Is it windy? (--wind)";
    case plan::SprayCheck::RainSoon:
        return "Is rain near? (--rain)";
    case plan::SprayCheck::OpenFlowersOutdoors:
    case plan::SprayCheck::OpenFlowers:
        return "Are flowers open? (--flowers)";
    case plan::SprayCheck::ChildNear:
        return "Are children near? (--children)";
    case plan::SprayCheck::AnimalNear:
        return "Are animals near, fish too? (--animals)";
    case plan::SprayCheck::AsthmaOrPregnant:
        return "Has anyone near asthma, or is anyone pregnant? (--asthma)";
    case plan::SprayCheck::NoFreshAir:
        return "Is there fresh air? (--fresh-air)";
    case plan::SprayCheck::FlameNear:
        return "Is a flame, stove or spark near? (--flame)";
    case plan::SprayCheck::Edible:
        return "Is any of it eaten? (--edible)";
    case plan::SprayCheck::EdibleNotOnLabel:
        return "Does the crop stand on the label? (--crop-on-label)";
    case plan::SprayCheck::Homemade:
        return "Is it homemade? (--homemade)";
    case plan::SprayCheck::MixedHours:
        return "How many hours ago was it mixed? (--mixed-hours)";
    case plan::SprayCheck::Place:
        return "Indoors or outdoors? (--outdoors)";
    case plan::SprayCheck::SensitiveKind:
        break;
    }
    return {};
}

std::string spray_conflict(const plan::SprayConflict& conflict, UnitSystem units)
{
    return "Sources disagree on the heat limit: " + degrees(conflict.strict, units) + " and " +
           degrees(conflict.usual, units) + "; the lower one decides here.";
}

} // namespace lathhouse::words
