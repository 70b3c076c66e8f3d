#include "app/cli/all_commands.h"
#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"
#include "app/cli/sources_json.h"
#include "app/words/course_words.h"
#include "app/words/source_words.h"
#include "core/home/spot_climate.h"
#include "core/plan/pest_course.h"
#include "core/plan/spot_warmth.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct CourseOptions {
    std::string plant; ///< Id or name.
    std::string pest;
};

Json name_or_null(const plants::Pest* pest)
{
    return pest == nullptr ? Json(nullptr) : Json(pest->name);
}

constexpr std::string_view reason_word(plan::PestReason reason)
{
    switch (reason) {
    case plan::PestReason::NothingFound:
        return "nothing_found";
    case plan::PestReason::Found:
        return "found";
    case plan::PestReason::SharedSpot:
        return "shared_spot";
    case plan::PestReason::FoundAtSpot:
        return "found_at_spot";
    case plan::PestReason::SetApart:
        return "set_apart";
    case plan::PestReason::DeclaredClear:
        return "declared_clear";
    case plan::PestReason::TimeApartOver:
        return "time_apart_over";
    }
    return "";
}

Json json_of(const plan::Course& course)
{
    Json studies = Json::array();
    for (const auto& study : course.generations) {
        studies.push_back({{"study", study.study},
                           {"through", json_date(study.through)},
                           {"sources", study.sources}});
    }
    Json steps = Json::array();
    for (const auto& step : course.steps) {
        steps.push_back({{"date", calendar::to_text(step.date)},
                         {"latest", calendar::to_text(step.latest)},
                         {"task", plan::to_string(step.act)},
                         {"minutes", step.minutes}});
    }
    return {{"plant", course.plant},
            {"pest", name_or_null(course.pest_is_assumed ? nullptr : course.pest)},
            {"state", plan::to_string(course.state)},
            {"started", calendar::to_text(course.started)},
            {"last_find", calendar::to_text(course.last_find)},
            {"clear_not_before", json_date(course.clear_not_before)},
            {"too_cold", !course.clear_not_before.has_value()},
            {"clock_stands_today", course.clock_stands_today},
            {"generations", studies},
            {"treatments", course.treatments},
            {"clean_looks", course.clean_looks},
            {"gap_days", course.gap_days},
            {"discard_is_a_choice", course.discard_is_a_choice},
            {"released_early", course.released_early},
            {"steps", steps}};
}

Json json_of(const plants::Pest& pest)
{
    return {{"name", pest.name},           {"botanical_name", pest.botanical_name},
            {"look_at", pest.look_at},     {"found_as", pest.found_as},
            {"spreads_by", pest.spreads_by}, {"treated_with", pest.treated_with},
            {"hides_in_mix", pest.hides_in_mix}, {"confidence", pest.confidence},
            {"note", pest.note}};
}

std::string text_of(const plan::PestCoursePlan& plan, const home::Household& household)
{
    std::ostringstream text;
    for (const auto state : {plan::PestState::Infested, plan::PestState::Suspect, plan::PestState::Clean}) {
        bool any = false;
        for (const auto& condition : plan.plants) {
            if (condition.state != state) {
                continue;
            }
            text << (any ? "" : state == plan::PestState::Infested  ? "Infested:\n"
                                : state == plan::PestState::Suspect ? "Suspect:\n"
                                                                    : "Clean:\n");
            any = true;
            text << "  " << words::padded(household.plant(condition.plant)->name, 22) << "  "
                 << words::why(condition, household) << '\n';
        }
    }
    for (const auto& course : plan.courses) {
        text << '\n'
             << household.plant(course.plant)->name << ", "
             << (course.pest_is_assumed ? "pest not known" : course.pest->name) << ", "
             << plan::to_string(course.state) << ":\n"
             << words::course_end(course);
        constexpr std::size_t kShown = 8;
        for (std::size_t index = 0; index < std::min(kShown, course.steps.size()); ++index) {
            const auto& step = course.steps[index];
            text << "  " << words::right_aligned(words::day(step.date), 12)
                 << (step.date < plan.today ? " (overdue)  " : "  ") << words::step(step) << '\n';
        }
        if (course.steps.size() > kShown) {
            text << "  and so on, every " << course.gap_days << " days at this temperature.\n";
        }
    }
    if (!plan.isolation.empty()) {
        text << "\nApart from the others:\n";
        for (const auto& need : plan.isolation) {
            text << "  " << words::isolation(need, household) << '\n';
        }
    }
    if (!plan.courses.empty()) {
        text << '\n' << words::course_hygiene() << '\n';
    }
    for (const auto& remark : plan.remarks) {
        text << words::course_remark(remark, household) << '\n';
    }
    return std::move(text).str();
}

Result<Answer> courses_of(const Globals& globals, const CourseOptions& options)
{
    const plants::Pest* asked = nullptr;
    if (!options.pest.empty()) {
        const auto found = plants::PestTable::built_in().find(options.pest);
        if (!found) {
            return found.error();
        }
        asked = *found;
    }
    if (asked != nullptr && options.plant.empty() && !has_household(globals)) {
        const auto keys = words::course_sources({}, asked);
        return Answer{{{"pest", json_of(*asked)}, {"sources", sources_json(keys)}},
                      words::pest_card(*asked) + words::sources_line(keys),
                      {}};
    }
    const auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    const auto household = facts->household(); // As the round has it, with what the thermometers taught of its spots.
    const auto only = plant_asked(household, options.plant);
    if (!only) {
        return only.error();
    }
    const home::SpotClimate spots{household, facts->climate, facts->log};
    auto plan = plan::plan_pest_courses(household, facts->events, plan::warmth_of(spots), globals.today);
    const auto other_plant = [&](const auto& row) { return *only != nullptr && row.plant != (*only)->id; };
    std::erase_if(plan.plants, other_plant);
    std::erase_if(plan.isolation, other_plant);
    std::erase_if(plan.courses, [&](const plan::Course& course) {
        return other_plant(course) || (asked != nullptr && (course.pest_is_assumed || course.pest != asked));
    });
    if (asked != nullptr) {
        const auto concerns = [&](home::PlantId plant) {
            return std::ranges::find(plan.courses, plant, &plan::Course::plant) != plan.courses.end();
        };
        std::erase_if(plan.plants, [&](const auto& row) { return !concerns(row.plant); });
        std::erase_if(plan.isolation, [&](const auto& row) { return !concerns(row.plant); });
    }

    const auto keys = words::course_sources(plan.courses, asked);
    Json json{{"today", calendar::to_text(plan.today)}};
    if (asked != nullptr) {
        json["pest"] = json_of(*asked);
    }
    Json plants = Json::array();
    for (const auto& row : plan.plants) {
        plants.push_back({{"id", row.plant},
                          {"name", household.plant(row.plant)->name},
                          {"state", plan::to_string(row.state)},
                          {"reason", reason_word(row.reason)},
                          {"since", calendar::to_text(row.since)},
                          {"caught_from", row.caught_from ? Json(*row.caught_from) : Json(nullptr)},
                          {"pest", name_or_null(row.pest)},
                          {"why", words::why(row, household)}});
    }
    json["plants"] = plants;
    json["courses"] = Json::array();
    for (const auto& course : plan.courses) {
        json["courses"].push_back(json_of(course));
    }
    json["isolation"] = Json::array();
    for (const auto& need : plan.isolation) {
        json["isolation"].push_back({{"plant", need.plant},
                                     {"state", plan::to_string(need.state)},
                                     {"from", calendar::to_text(need.from)},
                                     {"until", json_date(need.until)},
                                     {"kept", need.is_kept},
                                     {"spot", need.place ? Json(*need.place) : Json(nullptr)},
                                     {"spot_is_apart", need.place_is_apart},
                                     {"contacts", need.contacts}});
    }
    json["remarks"] = Json::array();
    for (const auto& remark : plan.remarks) {
        json["remarks"].push_back(words::course_remark(remark, household));
    }
    json["sources"] = sources_json(keys);
    const auto card = asked != nullptr ? words::pest_card(*asked) + "\n" : std::string{};
    return Answer{std::move(json), card + text_of(plan, household) + words::sources_line(keys),
                  texts(facts->climate.warnings)};
}

} // namespace

void add_course(Commands& commands)
{
    auto options = std::make_shared<CourseOptions>();
    CLI::App& command =
        commands.add("course", "Which plants are clean, suspect or infested, and what to do until they are clear",
                     "lathhouse course --pest mealybug");
    command.add_option("--plant", options->plant, "One plant, by id or name")->type_name("ID");
    command.add_option("--pest", options->pest, "One pest by any of its names")->type_name("NAME");
    commands.on_run(command, [options](const Globals& globals) { return courses_of(globals, *options); });
}

} // namespace lathhouse::cli
