#include "app/cli/all_commands.h"
#include "app/cli/growing_year.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/sources_json.h"
#include "app/words/growing_words.h"
#include "core/plan/roots.h"
#include "core/plan/water.h"

#include <algorithm>
#include <array>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct WaterOptions {
    std::string plant;
    int days = 14;
};

constexpr std::array kTopics{plan::CautionTopic::HeavyPot};

Json json_of(const plan::RootsOfPlant& roots)
{
    Json cold = nullptr;
    if (roots.cold) {
        cold = {{"spot", roots.cold->spot}, {"usual_lowest_c", json_number(roots.cold->usual_lowest.degrees())}};
    }
    Json heat = nullptr;
    if (roots.heat) {
        heat = {{"spot", roots.heat->spot},
                {"worst", calendar::to_text(roots.heat->worst)},
                {"mix_c", json_number(roots.heat->mix.degrees())},
                {"effect", words::to_string(roots.heat->effect)}};
    }
    Json winter = nullptr;
    if (roots.winter) {
        winter = {{"spot", roots.winter->spot},
                  {"mean_c", json_number(roots.winter->mean.degrees())},
                  {"daily_light_mol", json_number(roots.winter->light.moles())},
                  {"quarters", words::to_string(roots.winter->quarters)},
                  {"wants_cool", roots.winter->wants_cool}};
    }
    return {{"cold_line_c", json_number(roots.cold_line.degrees())},
            {"cold", cold},
            {"heat", heat},
            {"winter", winter}};
}

Json json_of(const plan::WaterLook& look, const home::Plant& plant, const plan::RootsOfPlant& roots)
{
    Json looks = Json::array();
    for (const auto& date : look.looks) {
        looks.push_back(calendar::to_text(date));
    }
    return {{"id", plant.id},
            {"name", plant.name},
            {"spot", look.spot ? Json(*look.spot) : Json(nullptr)},
            {"last_watered", json_date(look.last_watered)},
            {"look", json_date(look.due)},
            {"why", look.due ? Json(words::to_string(look.why)) : Json(nullptr)},
            {"every_days", look.due ? Json(look.every_days) : Json(nullptr)},
            {"looks", looks},
            {"pot_l", json_number(look.pot.size.volume.litres())},
            {"pot_guessed_from_weight", look.pot.size.from_weight},
            {"available_l", json_number(look.pot.available.litres())},
            {"may_go_l", json_number(look.pot.may_go.litres())},
            {"drawn_l_a_day", json_number(look.pot.drawn_of_day.litres())},
            {"habit", {{"intervals", look.habit.intervals},
                       {"factor", json_number(look.habit.factor)},
                       {"spread", json_number(look.habit.spread)}}},
            {"rests", look.rests},
            {"nearly_dry", look.nearly_dry},
            {"roots", json_of(roots)}};
}

void say(std::ostream& text, const plan::WaterLook& look, const home::Plant& plant,
         const home::Household& household, words::UnitSystem units)
{
    text << plant.name << " (" << plant.kind << ")";
    if (!look.due) {
        text << "\n  it stands at no spot, so nothing can be said; give it one\n";
        return;
    }
    text << ", " << household.spot(*look.spot)->name << '\n'
         << "  look " << words::full_day(*look.due) << ": " << words::why(look.why);
    if (look.last_watered) {
        text << "; last watered " << words::full_day(*look.last_watered);
    }
    text << ". After a watering, about every " << words::days(look.every_days) << " now";
    if (look.habit.intervals > 0) {
        text << " (learnt from " << look.habit.intervals
             << (look.habit.intervals == 1 ? " interval" : " intervals") << " of yours";
        if (look.habit.intervals >= 3 && look.habit.factor < 0.6) {
            text << ", which are short for such a pot: feel before you water";
        }
        text << ")";
    }
    text << ".\n  pot " << words::volume(look.pot.size.volume, units)
         << (look.pot.size.from_weight ? " (guessed from its weight)" : "") << ", draws about "
         << words::volume(look.pot.drawn_of_day, units) << " a day (half of it to double)";
    if (look.nearly_dry) {
        text << "; it rests: hardly any water";
    } else if (look.rests) {
        text << "; it rests: less water";
    } else if (look.must_dry) {
        text << "; it must dry right out first";
    }
    text << ".\n";
}

void say_wet(std::ostream& text, std::span<const plan::WetSpell> spells)
{
    if (spells.empty()) {
        return;
    }
    std::string said;
    for (const auto& spell : spells) {
        said += (said.empty() ? "" : ", ") + words::day(spell.from) + " to " + words::day(spell.to);
    }
    text << '\n' << words::wet_season(said) << '\n';
}

Result<Answer> water_of(const Globals& globals, const WaterOptions& options)
{
    if (options.days < 1 || options.days > 365) {
        return Error{ErrorCode::OutOfRange, "--days must lie within 1 and 365"};
    }
    const auto year = growing_year(globals, options.plant);
    if (!year) {
        return year.error();
    }
    const auto& household = year->household;
    auto looks = plan::water_looks(household, year->climate, year->spots, year->events, year->plan.plants,
                                   globals.today, options.days);
    std::ranges::stable_sort(looks, [](const plan::WaterLook& a, const plan::WaterLook& b) {
        return a.due && (!b.due || *a.due < *b.due);
    });
    const auto roots =
        plan::roots_of_year(household, year->climate, year->spots, year->plan.plants, globals.today);
    const auto spells = plan::wet_spells(household, year->spots, globals.today);

    Json plants = Json::array();
    std::ostringstream text;
    std::ostringstream root_text;
    text << "When to look at the mix from " << words::full_day(globals.today) << ", " << household.name
         << (household.demonstration ? " (demonstration household, invented)" : "")
         << "\nA look is a finger in the mix or the pot lifted: water only what is dry as its kind wants it.\n\n";
    for (const auto& look : looks) {
        const auto& plant = *household.plant(look.plant);
        if (!year->is_asked(plant.id)) {
            continue;
        }
        const auto& of = *std::ranges::find(roots, plant.id, &plan::RootsOfPlant::plant);
        plants.push_back(json_of(look, plant, of));
        say(text, look, plant, household, globals.units);
        for (const auto& sentence : words::advice(of, household, globals.units)) {
            root_text << plant.name << ": " << sentence << '\n';
        }
    }
    say_wet(text, spells);
    if (!root_text.str().empty()) {
        text << "\nRoots and winter quarters\n" << root_text.str();
    }
    text << "\nReckoned from usual weather; heat, wind and a full crown make it sooner. Empty saucers.\n"
         << sources_in_words(year->climate, globals.units) << cautions_in_words(kTopics) << words::sources_line(plan::GrowingRules::built_in().sources_of(words::water_rules()));
    Json wet = Json::array();
    for (const auto& spell : spells) {
        wet.push_back({{"from", calendar::to_text(spell.from)}, {"to", calendar::to_text(spell.to)}});
    }
    return Answer{{{"plants", plants}, {"wet_season", wet}, {"cautions", caution_texts(kTopics)}, {"sources", sources_json(words::water_rules())}},
                  std::move(text).str(), texts(year->climate.warnings)};
}

} // namespace

void add_water(Commands& commands)
{
    auto options = std::make_shared<WaterOptions>();
    CLI::App& command = commands.add("water", "When to look whether a plant wants water; its roots and winter",
                                     "lathhouse water --days 7");
    command.add_option("--plant", options->plant, "Only this one, by id or name")->type_name("ID");
    command.add_option("--days", options->days, "How far the looks are listed (default 14)")->type_name("N");
    commands.on_run(command, [options](const Globals& globals) { return water_of(globals, *options); });
}

} // namespace lathhouse::cli
