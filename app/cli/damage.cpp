#include "app/cli/all_commands.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/number_or_null.h"
#include "app/cli/sources_json.h"
#include "app/cli/yes_no.h"
#include "app/words/damage_words.h"
#include "app/words/source_words.h"
#include "core/journal/household_store.h"
#include "core/plan/care_lines.h"
#include "core/plan/chemical_damage.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct DamageOptions {
    std::vector<std::string> symptoms;
    std::optional<double> days;
    std::string product;
    std::string date;
    std::string wet;
    std::string compost;
    std::string edible;
    std::optional<double> pot_litres;
    std::string plant; ///< Id or name.
};

Json json_of(const plan::DamageMode& mode)
{
    return {{"mode", mode.key},
            {"name", mode.name},
            {"examples", mode.examples},
            {"weed_killer", mode.is_weed_killer},
            {"systemic", mode.is_systemic},
            {"vapour", mode.as_vapour},
            {"first_signs_days", {json_number(mode.first_days_low), json_number(mode.first_days_high)}},
            {"in_mix", plan::to_string(mode.in_mix)},
            {"half_life_days",
             {number_or_null(mode.half_life_low_days), number_or_null(mode.half_life_high_days)}},
            {"leach", plan::to_string(mode.leach)},
            {"outlook", mode.outlook},
            {"conflict", mode.conflict.empty() ? Json(nullptr) : Json(mode.conflict)},
            {"confidence", mode.confidence},
            {"sources", mode.sources}};
}

/// The answer's care lines with the keys of their sources.
std::pair<Json, std::vector<std::string>> care_of(const std::set<std::string>& cases)
{
    Json care = Json::array();
    std::vector<std::string> keys;
    for (const auto* line : plan::care_lines_for("chemical", cases)) {
        care.push_back({{"list", line->list}, {"text", line->text}, {"sources", line->sources}});
        keys.insert(keys.end(), line->sources.begin(), line->sources.end());
    }
    return {std::move(care), std::move(keys)};
}

struct ToldCourse {
    Json json;
    std::string text;
    std::vector<std::string> keys;
};

ToldCourse say(const plan::DamageCourse& course, const std::string& head, const Globals& globals)
{
    const auto& table = plan::DamageTable::built_in();
    std::ostringstream text;
    text << head;
    if (course.mode != nullptr) {
        text << words::damage_mode(*course.mode);
    } else if (!course.what.product.empty()) {
        text << "\"" << course.what.product << "\" is not in the table; read on the label what it contains.\n";
    }
    Json fits = Json::array();
    if (!course.what.signs.empty()) {
        text << "What the signs fit, not certain:\n";
        for (const auto& fit : course.fits) {
            text << "  " << words::mode_fit(fit, table) << '\n';
            auto row = json_of(*fit.mode);
            row["closeness"] = plan::to_string(fit.closeness);
            row["score"] = json_number(fit.score);
            row["seen"] = fit.typical;
            for (const auto& key : fit.possible) {
                row["seen"].push_back(key);
            }
            row["against"] = fit.against;
            row["time_fits"] = fit.time_fits ? Json(*fit.time_fits) : Json(nullptr);
            fits.push_back(std::move(row));
        }
        if (course.fits.empty()) {
            text << "  nothing in the table; show it to a plant clinic.\n";
        }
        constexpr std::size_t kDescribed = 3;
        for (std::size_t index = 0; index < std::min(kDescribed, course.fits.size()); ++index) {
            if (course.fits[index].mode != course.mode) {
                text << words::damage_mode(*course.fits[index].mode);
            }
        }
    }
    text << "No feed before " << words::day(course.no_feed_before)
         << (course.feed_waits_for_growth ? ", and then only once new, healthy growth is logged.\n" : ".\n");
    if (course.leach_water) {
        text << "To wash the mix through: " << words::number(course.leach_water->litres(), 1)
             << " L of water, twice the pot's volume, caught in a basin.\n";
    }
    Json steps = Json::array();
    for (const auto& step : course.steps) {
        steps.push_back({{"date", calendar::to_text(step.date)},
                         {"latest", calendar::to_text(step.latest)},
                         {"task", plan::to_string(step.act)},
                         {"minutes", step.minutes}});
        text << "  " << words::right_aligned(words::day(step.date), 12)
             << (step.date < globals.today ? " (past)  " : "  ") << words::damage_step(step.act) << '\n';
    }
    const std::set<std::string> cases{course.cases.begin(), course.cases.end()};
    auto [care, keys] = care_of(cases);
    text << words::care_lines("chemical", cases);
    auto all = course.sources;
    all.insert(all.end(), keys.begin(), keys.end());
    return {{{"plant", course.what.plant ? Json(*course.what.plant) : Json(nullptr)},
             {"happened", calendar::to_text(course.what.happened)},
             {"mode", course.mode == nullptr ? Json(nullptr) : json_of(*course.mode)},
             {"fits", fits},
             {"certain", false},
             {"leach", plan::to_string(course.leach)},
             {"leach_litres",
              course.leach_water ? json_number(course.leach_water->litres()) : Json(nullptr)},
             {"no_feed_before", calendar::to_text(course.no_feed_before)},
             {"feed_waits_for_growth", course.feed_waits_for_growth},
             {"steps", steps},
             {"care", care}},
            std::move(text).str(),
            std::move(all)};
}

Answer list_of_signs()
{
    Json signs = Json::array();
    std::ostringstream text;
    text << "Say what you see with --symptom KEY, as often as it takes:\n";
    for (const auto& sign : plan::DamageTable::built_in().signs()) {
        signs.push_back({{"key", sign.key}, {"group", sign.group}, {"text", sign.text}});
        text << "  " << words::padded(sign.key, 24) << "  " << sign.text << '\n';
    }
    return {{{"symptoms", signs}}, std::move(text).str(), {}};
}

Answer finish(std::vector<ToldCourse> said)
{
    Json courses = Json::array();
    std::string text;
    std::vector<std::string> keys;
    for (auto& one : said) {
        courses.push_back(std::move(one.json));
        text += (text.empty() ? "" : "\n") + one.text;
        keys.insert(keys.end(), one.keys.begin(), one.keys.end());
    }
    text += "This is no diagnosis and no legal proof. " + words::sources_line(keys);
    return {{{"courses", courses}, {"sources", sources_json(keys)}}, text, {}};
}

Result<Answer> logged(const Globals& globals, const std::string& id_or_name)
{
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    const auto found = plant_called(home->as_told, id_or_name);
    if (!found) {
        return found.error();
    }
    const auto* plant = *found;
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const auto events = store->events(plant->id);
    if (!events) {
        return events.error();
    }
    std::vector<ToldCourse> said;
    for (const auto& course : plan::damage_courses(home->as_told, *events)) {
        said.push_back(say(course,
                           plant->name + ", hit on " + words::full_day(course.what.happened) + ":\n", globals));
    }
    if (said.empty()) {
        return Answer{{{"courses", Json::array()}, {"sources", Json::array()}},
                      "No chemical damage of " + plant->name + " is logged.\n",
                      {}};
    }
    return finish(std::move(said));
}

Result<Answer> damage_of(const Globals& globals, const DamageOptions& options)
{
    if (!options.plant.empty()) {
        const std::string given = options.product + options.date + options.wet + options.compost + options.edible;
        if (!options.symptoms.empty() || !given.empty() || options.days || options.pot_litres) {
            return Error{ErrorCode::WrongUsage,
                         "--plant answers from what is logged; leave out --symptom, --product and what goes with them"};
        }
        return logged(globals, options.plant);
    }
    if (options.symptoms.empty() && options.product.empty()) {
        return list_of_signs();
    }
    plan::DamageCase what{};
    const auto date = past_date_of("--date", options.date, globals.today);
    if (!date) {
        return date.error();
    }
    what.happened = *date;
    what.product = options.product;
    for (const auto& key : options.symptoms) {
        if (plan::DamageTable::built_in().sign(key) == nullptr) {
            return Error{ErrorCode::WrongUsage,
                         "no symptom \"" + key + "\"; lathhouse damage without options lists them"};
        }
        what.signs.push_back(key);
    }
    if (options.days && !(*options.days >= 0.0 && *options.days <= 1000.0)) {
        return Error{ErrorCode::OutOfRange, "--days must lie within 0 and 1000"};
    }
    if (options.pot_litres && !(*options.pot_litres > 0.0 && *options.pot_litres <= 1000.0)) {
        return Error{ErrorCode::OutOfRange, "--pot must be above 0 and at most 1000 litres"};
    }
    what.first_signs_days = options.days;
    const auto wet = yes_or_no("--wet", options.wet);
    const auto compost = yes_or_no("--compost", options.compost);
    const auto edible = yes_or_no("--edible", options.edible);
    for (const auto* answer : {&wet, &compost, &edible}) {
        if (!*answer) {
            return answer->error();
        }
    }
    what.still_wet = *wet;
    what.from_compost = *compost;
    what.edible = *edible;
    if (options.pot_litres) {
        what.pot_volume = Litres::from_litres(*options.pot_litres);
    }
    return finish({say(plan::damage_course(what), "", globals)});
}

} // namespace

void add_damage(Commands& commands)
{
    auto options = std::make_shared<DamageOptions>();
    CLI::App& command = commands.add(
        "damage", "What weed-killer or else may have hurt a plant, what to do and what to leave",
        "lathhouse damage --symptom cupped_leaves --symptom twisted_stems --days 3");
    command.add_option("--symptom", options->symptoms, "What is seen; without options all are listed")
        ->type_name("KEY");
    command.add_option("--days", options->days, "Days from the spray to the first signs")->type_name("N");
    command.add_option("--product", options->product, "Active substance, from the label")->type_name("NAME");
    command.add_option("--date", options->date, "Day it happened (default: today)")->type_name("YYYY-MM-DD");
    command.add_option("--wet", options->wet, "Whether the spray is still wet on the leaves")
        ->type_name("yes|no");
    command.add_option("--compost", options->compost, "Whether mix, compost or manure is suspected")
        ->type_name("yes|no");
    command.add_option("--edible", options->edible, "Whether any of it is eaten")->type_name("yes|no");
    command.add_option("--pot", options->pot_litres, "Litres of mix in the pot")->type_name("L");
    command.add_option("--plant", options->plant, "The logged damage of this plant")->type_name("ID");
    commands.on_run(command, [options](const Globals& globals) { return damage_of(globals, *options); });
}

} // namespace lathhouse::cli
