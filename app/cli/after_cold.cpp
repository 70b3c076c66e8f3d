#include "app/cli/all_commands.h"
#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"
#include "app/cli/sources_json.h"
#include "app/words/damage_words.h"
#include "app/words/source_words.h"
#include "core/plan/care_lines.h"
#include "core/plan/cold_night.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct ColdOptions {
    std::string plant; ///< Id or name.
    std::string kind;
    std::vector<double> lows;
    std::optional<double> hours;
    std::optional<double> evening;
    std::optional<double> high;
    std::optional<double> night_hours;
};

struct Case {
    std::string name;
    const plants::PlantKind* kind;
    plants::ColdLines lines;
    std::optional<home::PlantId> plant;
};

Answer answer_of(const Case& of, const plan::ColdPrognosis& prognosis, bool feed_may_begin,
                 const Globals& globals)
{
    const auto& lines = of.lines;
    const auto degrees = [&](Celsius value) { return words::temperature(value, globals.units); };
    std::ostringstream text;
    text << of.name << ": safe night " << degrees(lines.safe_night) << ", damage begins at "
         << degrees(lines.damage_begins) << ", lethal at " << degrees(lines.lethal) << ".\n";
    Json nights = Json::array();
    for (const auto& night : prognosis.nights) {
        text << "  " << words::right_aligned(words::day(night.night), 12) << "  low " << degrees(night.low)
             << ", " << words::number(night.hours_below_safe, 1) << " h below the safe night ("
             << words::number(night.degree_hours_below_safe, 1) << " degree hours), "
             << words::number(night.hours_below_damage, 1) << " h below the line of damage ("
             << words::number(night.degree_hours_below_damage, 1) << ")\n";
        nights.push_back({{"night", calendar::to_text(night.night)},
                          {"low_c", json_number(night.low.degrees())},
                          {"course", plan::to_string(night.basis)},
                          {"hours_below_safe", json_number(night.hours_below_safe)},
                          {"degree_hours_below_safe", json_number(night.degree_hours_below_safe)},
                          {"hours_below_damage", json_number(night.hours_below_damage)},
                          {"degree_hours_below_damage", json_number(night.degree_hours_below_damage)},
                          {"hours_below_lethal", json_number(night.hours_below_lethal)}});
    }
    text << words::cold_outcome(prognosis.outcome) << '\n';
    Json doubts = Json::array();
    for (const auto doubt : prognosis.doubts) {
        doubts.push_back(plan::to_string(doubt));
        text << words::cold_doubt(doubt) << '\n';
    }
    Json steps = Json::array();
    for (const auto& step : prognosis.steps) {
        steps.push_back({{"date", calendar::to_text(step.date)},
                         {"latest", calendar::to_text(step.latest)},
                         {"task", plan::to_string(step.act)},
                         {"minutes", step.minutes}});
        text << "  " << words::right_aligned(words::day(step.date), 12) << "  " << words::cold_step(step.act)
             << '\n';
    }
    auto keys = prognosis.sources;
    Json care = Json::array();
    if (prognosis.outcome != plan::ColdOutcome::Nothing) {
        const auto cases = words::cold_cases(prognosis, of.kind);
        text << words::care_lines("cold", cases);
        for (const auto* line : plan::care_lines_for("cold", cases)) {
            care.push_back({{"list", line->list}, {"text", line->text}, {"sources", line->sources}});
            keys.insert(keys.end(), line->sources.begin(), line->sources.end());
        }
    }
    if (feed_may_begin) {
        text << "New growth is logged: feeding may begin again.\n";
    }
    text << words::sources_line(keys);
    return {{{"plant", of.plant ? Json(*of.plant) : Json(nullptr)},
             {"name", of.name},
             {"safe_night_c", json_number(lines.safe_night.degrees())},
             {"damage_c", json_number(lines.damage_begins.degrees())},
             {"lethal_c", json_number(lines.lethal.degrees())},
             {"nights", nights},
             {"outcome", plan::to_string(prognosis.outcome)},
             {"why", words::cold_outcome(prognosis.outcome)},
             {"doubts", doubts},
             {"feed_held", prognosis.feed_held},
             {"steps", steps},
             {"care", care},
             {"sources", sources_json(keys)}},
            std::move(text).str(),
            {}};
}

Result<Case> case_of(const ColdOptions& options, const home::Household* household)
{
    if (household == nullptr) {
        const auto kind = plants::PlantReference::built_in().find(options.kind);
        if (!kind) {
            return kind.error();
        }
        return Case{(*kind)->common_names.front(), *kind, (*kind)->lines, {}};
    }
    const auto plant = plant_called(*household, options.plant);
    if (!plant) {
        return plant.error();
    }
    const auto kind = plants::PlantReference::built_in().find((*plant)->kind);
    return Case{(*plant)->name, kind ? *kind : nullptr, (*plant)->lines, (*plant)->id};
}

Result<Answer> logged(const Globals& globals, const Case& of, const plan::HouseholdFacts& facts)
{
    const auto household = facts.household();
    const home::SpotClimate spots{household, facts.climate, facts.log};
    const auto courses =
        plan::cold_courses(household, facts.events, globals.today, plan::usual_night_of(spots));
    const auto found = std::ranges::find(courses, *of.plant, &plan::ColdCourse::plant);
    if (found == courses.end()) {
        return Error{ErrorCode::WrongUsage,
                     "no cold night of " + of.name + " is logged; give --low C for each night"};
    }
    return answer_of(of, found->prognosis, found->new_growth.has_value(), globals);
}

/// Length and swing of the night at the spot where the plant stands.
std::optional<std::pair<double, KelvinDelta>> usual_night(const plan::HouseholdFacts& facts, home::PlantId plant,
                                                          calendar::Date date)
{
    const auto household = facts.household();
    const auto spot = household.plant(plant)->spot;
    if (!spot) {
        return std::nullopt;
    }
    const home::SpotClimate spots{household, facts.climate, facts.log};
    return plan::usual_night_of(spots)(*spot, date);
}

Result<Answer> after_cold(const Globals& globals, const ColdOptions& options)
{
    if (options.plant.empty() == options.kind.empty()) {
        return Error{ErrorCode::WrongUsage, "give one of --plant ID and --kind NAME"};
    }
    std::optional<plan::HouseholdFacts> home;
    if (!options.plant.empty()) {
        auto loaded = household_facts(globals);
        if (!loaded) {
            return loaded.error();
        }
        home = std::move(*loaded);
    }
    const auto of = case_of(options, home ? &home->as_told : nullptr);
    if (!of) {
        return of.error();
    }
    if (options.lows.empty()) {
        if (home) {
            return logged(globals, *of, *home);
        }
        return Error{ErrorCode::WrongUsage, "give --low C, the lowest of the night at the plant"};
    }
    constexpr std::size_t kMostNights = 14;
    if (options.lows.size() > kMostNights) {
        return Error{ErrorCode::WrongUsage, "--low is given more than 14 times"};
    }
    std::vector<plan::ColdExposure> nights;
    for (std::size_t index = 0; index < options.lows.size(); ++index) {
        const auto ago = static_cast<int>(options.lows.size() - 1 - index);
        plan::NightReadings readings{.low = Celsius::from_degrees(options.lows[index]),
                                     .evening = {},
                                     .high = {},
                                     .hours = options.hours};
        if (options.evening) {
            readings.evening = Celsius::from_degrees(*options.evening);
        }
        if (options.high) {
            readings.high = Celsius::from_degrees(*options.high);
        }
        const auto date = globals.today - calendar::Days{ago};
        if (const auto usual = home ? usual_night(*home, *of->plant, date) : std::nullopt) {
            readings.night_hours = usual->first;
            readings.usual_swing = usual->second;
        }
        readings.night_hours = options.night_hours.value_or(readings.night_hours);
        const auto night = plan::exposure_of(readings, of->lines, date);
        if (!night) {
            return night.error();
        }
        nights.push_back(*night);
    }
    return answer_of(*of, plan::prognosis_of(std::move(nights), of->kind, of->lines, of->plant), false,
                     globals);
}

} // namespace

void add_after_cold(Commands& commands)
{
    auto options = std::make_shared<ColdOptions>();
    CLI::App& command =
        commands.add("after-cold", "What a cold night may have done to a plant, and what to do about it",
                     "lathhouse after-cold --kind 'Peace lily' --low 4 --evening 9");
    command.add_option("--plant", options->plant, "Plant of the household by id or name; without --low what is logged")
        ->type_name("ID");
    command.add_option("--kind", options->kind, "Kind of plant by name")->type_name("NAME");
    add_numbers(command, "--low", options->lows,
                "Lowest of the night at the plant, degrees Celsius; again for each night, last night last")
        ->type_name("C");
    command.add_option("--hours", options->hours, "Hours at or below the plant's safe night, where known")
        ->type_name("H");
    command.add_option("--evening", options->evening, "Two hours after sunset, degrees Celsius")
        ->type_name("C");
    command.add_option("--high", options->high, "High of the day, degrees Celsius")->type_name("C");
    command.add_option("--night-hours", options->night_hours, "From sunset to sunrise (default: the household's place and date; without a household 12)")
        ->type_name("H");
    commands.on_run(command, [options](const Globals& globals) { return after_cold(globals, *options); });
}

} // namespace lathhouse::cli
