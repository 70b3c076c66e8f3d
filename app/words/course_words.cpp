#include "app/words/course_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "app/words/words.h"

#include <cmath>

namespace lathhouse::words {
namespace {

std::string name_of(const home::Household& household, home::PlantId id)
{
    const auto* plant = household.plant(id);
    return plant == nullptr ? "plant " + std::to_string(id) : plant->name;
}

std::string lower_first(std::string text)
{
    if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z') {
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    }
    return text;
}

std::string pest_name(const plants::Pest* pest)
{
    return pest == nullptr ? "a pest without a known name" : lower_first(pest->name);
}

std::string basis_words(plants::ClockBasis basis)
{
    switch (basis) {
    case plants::ClockBasis::Published:
        return "";
    case plants::ClockBasis::Derived:
        return " (reckoned from its days at one temperature)";
    case plants::ClockBasis::Memory:
        break;
    }
    return " (common practice, no source)";
}

std::string days_at(const std::vector<const plants::PestClock*>& phases, double degrees)
{
    double days = 0.0;
    for (const auto* phase : phases) {
        const double above = degrees - phase->base.degrees();
        if (above <= 0.0) {
            return "never";
        }
        days += phase->degree_days / above;
    }
    return number(std::ceil(days - 0.5), 0) + " d";
}

} // namespace

std::string listed(const std::vector<std::string>& words)
{
    std::string text;
    for (const auto& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

std::string why(const plan::PlantCondition& condition, const home::Household& household)
{
    const auto on = " on " + day(condition.since);
    switch (condition.reason) {
    case plan::PestReason::NothingFound:
        return "nothing found";
    case plan::PestReason::Found:
        return pest_name(condition.pest) + " found, last" + on;
    case plan::PestReason::SharedSpot:
        return "stood at one spot with " +
               (condition.caught_from ? name_of(household, *condition.caught_from) : "an infested plant") +
               ", last" + on + " (" + pest_name(condition.pest) + ")";
    case plan::PestReason::FoundAtSpot:
        return pest_name(condition.pest) + " found at its spot" + on;
    case plan::PestReason::SetApart:
        return "set apart" + on + " to be watched";
    case plan::PestReason::DeclaredClear:
        return "clear since" + on.substr(3) + ": a whole generation without finds";
    case plan::PestReason::TimeApartOver:
        return "clean looks and time enough, since" + on.substr(3);
    }
    return {};
}

std::string step(const plan::CourseStep& step)
{
    const auto of_tables = [](const std::vector<std::string>& words) {
        std::vector<std::string> said;
        for (const auto& word : words) {
            said.push_back(table_text(word));
        }
        return listed(said);
    };
    const auto where = step.pest == nullptr ? std::string{} : of_tables(step.pest->look_at);
    switch (step.act) {
    case plan::CourseAct::SetApart:
        return phrase("set it apart from the others; wash hands and tools after it");
    case plan::CourseAct::Treat:
        return phrase("treat it (%1); label first, and ask spray-check before any spray",
                      step.pest == nullptr ? std::string{} : of_tables(step.pest->treated_with));
    case plan::CourseAct::Inspect:
        return where.empty() ? phrase("look it over") : phrase("look it over: %1", where);
    case plan::CourseAct::LastInspection:
        return where.empty() ? phrase("last look; clean means it may go back")
                             : phrase("last look: %1; clean means it may go back", where);
    }
    return {};
}

std::string course_end(const plan::Course& course)
{
    std::string text;
    if (course.pest_is_assumed) {
        text += "  The pest has no name that is known here; the slow clock of the citrus mealybug stands in.\n";
    }
    if (course.state == plan::PestState::Suspect) {
        if (course.clear_not_before) {
            text += "  Back among the others not before " + day(*course.clear_not_before) +
                    ": two weeks since the last contact and two clean looks one crawler stage apart.\n";
        }
        return text;
    }
    for (const auto& study : course.generations) {
        text += "  A generation by " + study.study + basis_words(study.basis) + ": " +
                (study.through ? "through on " + day(*study.through)
                               : "never at these temperatures") +
                ".\n";
    }
    if (course.clear_not_before) {
        text += "  Clear not before " + day(*course.clear_not_before) +
                ", and then only with a clean look; every find starts it anew.\n";
    } else {
        text += "  It cannot be declared clear at this temperature: the pest's clock does not get through. At "
                "20 °C it would take about " +
                std::to_string(course.days_at_20_degrees) + " days.\n";
    }
    if (course.clock_stands_today && course.clear_not_before) {
        text += "  Today it is too cold for the clock to run.\n";
    }
    if (course.released_early) {
        text += "  It was put back among the others before it was clear.\n";
    }
    if (course.discard_is_a_choice) {
        text += "  Heavily infested: throwing it away, bagged, is a sound choice for an ordinary plant and "
                "spares the others.\n";
    }
    return text;
}

std::string isolation(const plan::IsolationNeed& need, const home::Household& household)
{
    const auto until = need.until ? " until " + day(*need.until) : std::string{" with no end in sight"};
    const auto name = name_of(household, need.plant);
    if (need.is_kept) {
        return name + " stands apart; leave it so" + until + ".";
    }
    if (!need.place) {
        return name + " should stand apart" + until +
               ", and no spot is fit; bag it loosely or keep an arm's length free round it.";
    }
    const auto& spot = household.spot(*need.place)->name;
    if (need.place_is_apart && need.contacts == 0) {
        return name + ": to " + spot + until + ".";
    }
    return name + ": the least bad is " + spot + " (" + std::to_string(need.contacts) +
           (need.contacts == 1 ? " clean plant" : " clean plants") + " there)" + until +
           "; leaves must not touch, and it is visited last.";
}

std::string course_remark(const plan::CourseRemark& remark, const home::Household& household)
{
    switch (remark.kind) {
    case plan::CourseRemarkKind::NoSpotApart:
        return "No spot of this household is set down as apart, so nothing can be isolated properly; the spots "
               "with the fewest contacts are named instead.";
    case plan::CourseRemarkKind::SpotsApartFull:
        return "The spots that are apart are full or unfit for a plant that needs one.";
    case plan::CourseRemarkKind::PestNotKnown:
        return remark.text.empty()
                   ? "A find names no pest; log it again with its name for a better date."
                   : "No pest named \"" + remark.text + "\" is known here; its courses run by the citrus "
                                                          "mealybug's clock.";
    case plan::CourseRemarkKind::PlantWithoutSpot:
        return name_of(household, *remark.plant) +
               " has no spot; its clock is reckoned at 20 °C, and its contacts are not known.";
    case plan::CourseRemarkKind::FliesAbout:
        return remark.text + " flies: look at every plant of the rooms, wherever it stands.";
    case plan::CourseRemarkKind::MustBeReported:
        return remark.text + ": some countries want finds reported; ask the plant-health office.";
    case plan::CourseRemarkKind::OnlySharedSetApart:
        return name_of(household, *remark.plant) + " is set apart on a spot with clean plants.";
    }
    return {};
}

std::string pest_card(const plants::Pest& pest)
{
    std::string text = pest.name + " (" + pest.botanical_name + ")\n";
    text += "  Where: " + listed(pest.look_at) + "\n";
    text += "  Seen as: " + listed(pest.found_as) + "\n";
    text += "  Gets about: " + listed(pest.spreads_by) + "\n";
    text += "  Helps: " + listed(pest.treated_with) + "; label first\n";
    for (const auto& phases : pest.generations()) {
        auto basis = plants::ClockBasis::Published;
        for (const auto* phase : phases) {
            basis = std::max(basis, phase->basis);
        }
        text += "  A generation by " + phases.front()->study + basis_words(basis) + ": " +
                days_at(phases, 15.0) + " at 15 °C, " + days_at(phases, 20.0) + " at 20, " +
                days_at(phases, 25.0) + " at 25\n";
    }
    if (!pest.note.empty()) {
        text += "  " + pest.note + "\n";
    }
    return text;
}

} // namespace lathhouse::words
