#include "app/words/course_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "app/words/words.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::words {
namespace {

std::string name_of(const home::Household& household, home::PlantId id)
{
    const auto* plant = household.plant(id);
    return plant == nullptr ? "plant " + std::to_string(id) : plant->name;
}

/// Words of the tables, with commas between.
std::string listed_texts(const std::vector<std::string>& words)
{
    std::vector<std::string> said;
    for (const auto& word : words) {
        said.push_back(table_text(word));
    }
    return listed(said);
}

/// The study, with what its figures rest on where it did not publish them itself.
std::string study_words(const std::string& study, plants::ClockBasis basis)
{
    const auto name = table_text(study);
    switch (basis) {
    case plants::ClockBasis::Published:
        return name;
    case plants::ClockBasis::Derived:
        return phrase("%1 (reckoned from its days at one temperature)", name);
    case plants::ClockBasis::Memory:
        break;
    }
    return phrase("%1 (common practice, no source)", name);
}

std::string days_at(const std::vector<const plants::PestClock*>& phases, double degrees)
{
    double days = 0.0;
    for (const auto* phase : phases) {
        const double above = degrees - phase->base.degrees();
        if (above <= 0.0) {
            return phrase("never");
        }
        days += phase->degree_days / above;
    }
    return phrase("%1 d", number(std::ceil(days - 0.5), 0));
}

} // namespace

std::string pest_name(const plants::Pest* pest)
{
    if (pest == nullptr) {
        return phrase("a pest without a known name");
    }
    auto name = table_text(pest->name);
    if (language().empty() && name[0] >= 'A' && name[0] <= 'Z') {
        name[0] = static_cast<char>(name[0] - 'A' + 'a');
    }
    return name;
}

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
    const auto on = day(condition.since);
    switch (condition.reason) {
    case plan::PestReason::NothingFound:
        return phrase("nothing found");
    case plan::PestReason::Found:
        return phrase("%1 found, last on %2", pest_name(condition.pest), on);
    case plan::PestReason::SharedSpot:
        return condition.caught_from
                   ? phrase("stood at one spot with %1, last on %2 (%3)", name_of(household, *condition.caught_from), on,
                            pest_name(condition.pest))
                   : phrase("stood at one spot with an infested plant, last on %1 (%2)", on, pest_name(condition.pest));
    case plan::PestReason::FoundAtSpot:
        return phrase("%1 found at its spot on %2", pest_name(condition.pest), on);
    case plan::PestReason::SetApart:
        return phrase("set apart on %1 to be watched", on);
    case plan::PestReason::DeclaredClear:
        return phrase("clear since %1: a whole generation without finds", on);
    case plan::PestReason::TimeApartOver:
        return phrase("clean looks and time enough, since %1", on);
    }
    return {};
}

std::string step(const plan::CourseStep& step)
{
    const auto where = step.pest == nullptr ? std::string{} : listed_texts(step.pest->look_at);
    switch (step.act) {
    case plan::CourseAct::SetApart:
        return phrase("set it apart from the others; wash hands and tools after it");
    case plan::CourseAct::Treat:
        return phrase("treat it (%1); label first, and ask what speaks against it before any spray",
                      step.pest == nullptr ? std::string{} : listed_texts(step.pest->treated_with));
    case plan::CourseAct::Inspect:
        return where.empty() ? phrase("look it over") : phrase("look it over: %1", where);
    case plan::CourseAct::LastInspection:
        return where.empty() ? phrase("last look; clean means it may go back")
                             : phrase("last look: %1; clean means it may go back", where);
    }
    return {};
}

std::vector<std::string> course_ends(const plan::Course& course)
{
    std::vector<std::string> said;
    if (course.pest_is_assumed) {
        said.push_back(phrase("The pest has no name that is known here; the slow clock of the citrus mealybug stands in."));
    }
    if (course.state == plan::PestState::Suspect) {
        if (course.clear_not_before) {
            said.push_back(phrase("Back among the others not before %1: two weeks since the last contact and two clean looks "
                                  "one crawler stage apart.",
                                  day(*course.clear_not_before)));
        }
        return said;
    }
    for (const auto& study : course.generations) {
        const auto by = study_words(study.study, study.basis);
        said.push_back(study.through ? phrase("A generation by %1: through on %2.", by, day(*study.through))
                                     : phrase("A generation by %1: never at these temperatures.", by));
    }
    if (course.clear_not_before) {
        said.push_back(phrase("Clear not before %1, and then only with a clean look; every find starts it anew.",
                              day(*course.clear_not_before)));
    } else {
        said.push_back(phrase("It cannot be declared clear at this temperature: the pest's clock does not get through. At 20 °C "
                              "it would take about %1 days.",
                              std::to_string(course.days_at_20_degrees)));
    }
    if (course.clock_stands_today && course.clear_not_before) {
        said.push_back(phrase("Today it is too cold for the clock to run."));
    }
    if (course.released_early) {
        said.push_back(phrase("It was put back among the others before it was clear."));
    }
    if (course.discard_is_a_choice) {
        said.push_back(phrase("Heavily infested: throwing it away, bagged, is a sound choice for an ordinary plant and spares the "
                              "others."));
    }
    return said;
}

std::string course_end(const plan::Course& course)
{
    std::string text;
    for (const auto& sentence : course_ends(course)) {
        text += "  " + sentence + "\n";
    }
    return text;
}

std::string isolation(const plan::IsolationNeed& need, const home::Household& household)
{
    const auto until = need.until ? phrase("until %1", day(*need.until)) : phrase("with no end in sight");
    const auto name = name_of(household, need.plant);
    if (need.is_kept) {
        return phrase("%1 stands apart; leave it so %2.", name, until);
    }
    if (!need.place) {
        return phrase("%1 should stand apart %2, and no spot is fit; bag it loosely or keep an arm's length free round it.", name,
                      until);
    }
    const auto& spot = household.spot(*need.place)->name;
    if (need.place_is_apart && need.contacts == 0) {
        return phrase("%1: to %2 %3.", name, spot, until);
    }
    return need.contacts == 1 ? phrase("%1: the least bad is %2 (1 clean plant there) %3; leaves must not touch, and it is visited last.",
                                       name, spot, until)
                              : phrase("%1: the least bad is %2 (%3 clean plants there) %4; leaves must not touch, and it is visited "
                                       "last.",
                                       name, spot, std::to_string(need.contacts), until);
}

std::string course_remark(const plan::CourseRemark& remark, const home::Household& household)
{
    switch (remark.kind) {
    case plan::CourseRemarkKind::NoSpotApart:
        return phrase("No spot of this household is set down as apart, so nothing can be isolated properly; the spots with the "
                      "fewest contacts are named instead.");
    case plan::CourseRemarkKind::SpotsApartFull:
        return phrase("The spots that are apart are full or unfit for a plant that needs one.");
    case plan::CourseRemarkKind::PestNotKnown:
        return remark.text.empty()
                   ? phrase("A find names no pest; log it again with its name for a better date.")
                   : phrase("No pest named \"%1\" is known here; its courses run by the citrus mealybug's clock.", remark.text);
    case plan::CourseRemarkKind::PlantWithoutSpot:
        return phrase("%1 has no spot; its clock is reckoned at 20 °C, and its contacts are not known.",
                      name_of(household, *remark.plant));
    case plan::CourseRemarkKind::FliesAbout:
        return phrase("%1 flies: look at every plant of the rooms, wherever it stands.", table_text(remark.text));
    case plan::CourseRemarkKind::MustBeReported:
        return phrase("%1: some countries want finds reported; ask the plant-health office.", table_text(remark.text));
    case plan::CourseRemarkKind::OnlySharedSetApart:
        return phrase("%1 is set apart on a spot with clean plants.", name_of(household, *remark.plant));
    }
    return {};
}

std::vector<std::string> pest_lines(const plants::Pest& pest)
{
    std::vector<std::string> lines{phrase("Where: %1", listed_texts(pest.look_at)), phrase("Seen as: %1", listed_texts(pest.found_as)),
                                   phrase("Gets about: %1", listed_texts(pest.spreads_by)),
                                   phrase("Helps: %1; label first", listed_texts(pest.treated_with))};
    for (const auto& phases : pest.generations()) {
        auto basis = plants::ClockBasis::Published;
        for (const auto* phase : phases) {
            basis = std::max(basis, phase->basis);
        }
        lines.push_back(phrase("A generation by %1: %2 at 15 °C, %3 at 20, %4 at 25", study_words(phases.front()->study, basis),
                               days_at(phases, 15.0), days_at(phases, 20.0), days_at(phases, 25.0)));
    }
    if (!pest.note.empty()) {
        lines.push_back(table_text(pest.note));
    }
    return lines;
}

std::string pest_card(const plants::Pest& pest)
{
    std::string text = table_text(pest.name) + " (" + pest.botanical_name + ")\n";
    for (const auto& line : pest_lines(pest)) {
        text += "  " + line + "\n";
    }
    return text;
}

std::string course_hygiene()
{
    return phrase("Clean plants first, suspect ones next, infested ones last; wash hands and tools between. Labels and local "
                  "rules come first; keep children and animals away from what is wet with spray.");
}

std::vector<std::string> course_sources(std::span<const plan::Course> courses, const plants::Pest* asked)
{
    std::vector<std::string> keys;
    const auto add = [&](const plants::Pest& pest) {
        keys.insert(keys.end(), pest.sources.begin(), pest.sources.end());
        for (const auto& clock : pest.clocks) {
            keys.push_back(clock.source);
        }
    };
    if (asked != nullptr) {
        add(*asked);
    }
    for (const auto& course : courses) {
        add(*course.pest);
    }
    if (!courses.empty()) {
        for (const char* key : {"BHGMOVE", "NEEMSG", "MEM"}) {
            keys.emplace_back(key);
        }
    }
    return keys;
}

} // namespace lathhouse::words
