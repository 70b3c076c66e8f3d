#include "app/clock.h"
#include "app/cli/all_commands.h"
#include "app/cli/entry_text.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/jugs.h"
#include "app/cli/members.h"
#include "app/cli/open_household.h"
#include "app/cli/photo_options.h"
#include "app/cli/seed_options.h"
#include "app/cli/subcommand.h"
#include "core/home/household_change.h"
#include "core/home/new_plant.h"
#include "core/home/new_spot.h"
#include "core/home/shelter.h"
#include "core/journal/household_store.h"
#include "core/plan/year_plan.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <tuple>
#include <utility>

namespace lathhouse::cli {
namespace {

constexpr double kUsualRoomInWinter = 18.0; // Degrees; said in --help.
constexpr double kUsualRoomInSummer = 21.0;

struct PlantOptions {
    std::string kind;
    std::string name;
    std::string spot;
    std::optional<double> safe;
    std::optional<double> damage;
    std::optional<double> lethal;
    std::optional<double> heat;
    std::optional<double> kilograms;
    std::optional<double> litres;
    std::string shade;
};

std::optional<Celsius> celsius(const std::optional<double>& degrees)
{
    return degrees ? std::optional{Celsius::from_degrees(*degrees)} : std::nullopt;
}

Result<Answer> add_plant(const Globals& globals, const PlantOptions& options)
{
    const auto home = household_of(globals, WithoutHousehold::IsAnError);
    if (!home) {
        return home.error();
    }
    const auto kind = plants::PlantReference::built_in().find(options.kind);
    if (!kind) {
        return kind.error();
    }
    home::OwnFigures own;
    own.name = options.name.empty() ? (*kind)->common_names.front() : options.name;
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto ever = with_gone_plants(*store);
    if (!ever) {
        return ever.error();
    }
    // The household tells its plants apart by name, those that are gone too.
    if (ever->plant_called(*own.name) != nullptr && home->plant_called(*own.name) == nullptr &&
        !options.name.empty()) {
        return Error{ErrorCode::OutOfRange, "a plant that is gone was called \"" + *own.name +
                                                "\"; give this one another name, so that their histories stay apart"};
    }
    for (int number = 2; options.name.empty() && ever->plant_called(*own.name) != nullptr; ++number) {
        own.name = (*kind)->common_names.front() + " " + std::to_string(number);
    }
    own.safe_night = celsius(options.safe);
    own.damage_begins = celsius(options.damage);
    own.lethal = celsius(options.lethal);
    own.heat_limit = celsius(options.heat);
    own.pot_kilograms = options.kilograms;
    auto plant = home::make_plant(1, **kind, own);
    if (!plant) {
        return plant.error();
    }
    if (options.litres) {
        if (!(*options.litres > 0.0 && *options.litres <= 1000.0)) {
            return Error{ErrorCode::OutOfRange, "--litres must lie above 0 and within 1000"};
        }
        plant->pot_volume = Litres::from_litres(*options.litres);
    }
    plant->pot_shade = home::pot_shade_of(options.shade).value_or(home::PotShade::Unknown);
    const auto spot = spot_asked(*home, options.spot);
    if (!spot) {
        return spot.error();
    }
    plant->spot = *spot;
    const auto id = store->add(*plant, globals.today, now());
    if (!id) {
        return id.error();
    }
    std::string text = "Added " + plant->name + " (" + plant->kind + ") as plant " + std::to_string(*id) + ".\n";
    std::vector<std::string> warnings;
    if (plant->hazardous) {
        warnings.push_back(plant->name + " is poisonous to people or animals; the plan keeps it out of their reach");
    }
    if (!plant->spot) {
        warnings.push_back(plant->name + " stands nowhere yet; say where with `lathhouse log event moved --plant " +
                           std::to_string(*id) + " --spot ID`");
    }
    return Answer{{{"id", *id}, {"name", plant->name}}, std::move(text), std::move(warnings)};
}

struct SpotOptions {
    std::string name;
    std::string kind;
    int capacity = 0;
    std::optional<double> winter;
    std::optional<double> summer;
    std::optional<double> light_summer;
    std::optional<double> light_winter;
    std::optional<double> offset;
    std::optional<double> offset_sd;
    bool in_reach = false;
    bool apart = false;
    bool windy = false;
};

Result<Answer> add_spot(const Globals& globals, const SpotOptions& options)
{
    const auto home = household_of(globals, WithoutHousehold::IsAnError);
    if (!home) {
        return home.error();
    }
    const auto kind = home::spot_kind_of(options.kind);
    const bool indoors = *kind == home::SpotKind::Indoors;
    if (!options.light_summer || !options.light_winter) {
        return Error{ErrorCode::WrongUsage,
                     "say how light the spot is with --light-summer and --light-winter, mol a day; `lathhouse "
                     "light` works them out from a window"};
    }
    if (!indoors && (options.winter || options.summer)) {
        return Error{ErrorCode::WrongUsage,
                     "--winter and --summer are temperatures of a room; outdoors the climate gives them"};
    }
    for (const auto& [name, given] : {std::pair{"--winter", options.winter}, std::pair{"--summer", options.summer}}) {
        if (given && !(*given >= -60.0 && *given <= 60.0)) {
            return Error{ErrorCode::OutOfRange, std::string{name} + " must lie within -60 and 60 degrees Celsius"};
        }
    }
    for (const auto& [name, given, limits] :
         {std::tuple{"--offset", options.offset, home::kOffsetKelvins},
          std::tuple{"--offset-sd", options.offset_sd, home::kOffsetSpreadKelvins}}) {
        if (given && !(*given >= limits.least && *given <= limits.most)) {
            return Error{ErrorCode::OutOfRange, std::string{name} + " must lie within " + std::to_string(std::lround(limits.least)) +
                                                    " and " + std::to_string(std::lround(limits.most)) + " degrees Celsius"};
        }
    }
    if (const auto fit = home::pots_can_fit(options.name, options.capacity); !fit) {
        return fit.error();
    }
    auto offset = home::prior_offset(*kind);
    if (options.offset) {
        offset.mean = KelvinDelta::from_kelvins(*options.offset);
    }
    if (options.offset_sd) {
        offset.spread = KelvinDelta::from_kelvins(*options.offset_sd);
    }
    int order = 0;
    for (const auto& spot : home->spots) {
        order = std::max(order, spot.walking_order);
    }
    const home::Spot spot{
        .id = 1,
        .name = options.name,
        .short_name = options.name,
        .kind = *kind,
        .offset = offset,
        .winter = indoors ? celsius(options.winter.value_or(kUsualRoomInWinter)) : std::nullopt,
        .summer = indoors ? celsius(options.summer.value_or(kUsualRoomInSummer)) : std::nullopt,
        .light_in_summer = DailyLight::from_moles(*options.light_summer),
        .light_in_winter = DailyLight::from_moles(*options.light_winter),
        .capacity = options.capacity,
        .in_reach = options.in_reach,
        .walking_order = order + 1,
        .view = {},
        .apart = options.apart,
        .windy = options.windy};
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const auto id = store->add(spot);
    if (!id) {
        return id.error();
    }
    std::vector<std::string> warnings;
    if (options.capacity == 0) {
        warnings.push_back(options.name + " holds no pot, so the plan will not use it");
    }
    return Answer{{{"id", *id}, {"name", spot.name}},
                  "Added " + spot.name + " as spot " + std::to_string(*id) + ".\n", std::move(warnings)};
}

void declare_plant(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<PlantOptions>();
    CLI::App& command = add_subcommand(group, "plant", "A plant of a kind that the program knows",
                                  "lathhouse add plant \"Citrus limon\" --spot 3 --litres 12");
    command.add_option("kind", options->kind, "Botanical or common name")->required()->type_name("KIND");
    command.add_option("--name", options->name, "Your own name for it (default: the common name)");
    command.add_option("--spot", options->spot, "Where it stands, by id or name")->type_name("ID");
    command.add_option("--safe-night", options->safe, "Your own safe night, degrees Celsius")->type_name("C");
    command.add_option("--damage", options->damage, "Your own line where damage begins")->type_name("C");
    command.add_option("--lethal", options->lethal, "Your own lethal line")->type_name("C");
    command.add_option("--heat-limit", options->heat, "Your own heat limit")->type_name("C");
    command.add_option("--kilograms", options->kilograms, "Weight of plant and pot, moist (default 4)")
        ->type_name("KG");
    command.add_option("--litres", options->litres, "Volume of the pot")->type_name("L");
    command.add_option("--pot", options->shade, "light or dark: how the pot takes the sun's heat")
        ->check(CLI::IsMember({"light", "dark"}));
    commands.on_run(command, [options](const Globals& globals) { return add_plant(globals, *options); });
}

void declare_spot(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<SpotOptions>();
    CLI::App& command = add_subcommand(
        group, "spot", "A place where pots can stand",
        "lathhouse add spot \"East sill\" --kind indoors --capacity 4 --light-summer 8 --light-winter 2");
    command.add_option("name", options->name, "What you call it")->required()->type_name("NAME");
    command.add_option("--kind", options->kind, "indoors, open, roofed, screened or glazed")
        ->required()
        ->check(CLI::IsMember({"indoors", "open", "roofed", "screened", "glazed"}));
    command.add_option("--capacity", options->capacity, "Pots that fit")
        ->required();
    command.add_option("--light-summer", options->light_summer, "Light on the longest day, mol a day")
        ->type_name("MOL");
    command.add_option("--light-winter", options->light_winter, "Light on the shortest day, mol a day")
        ->type_name("MOL");
    command.add_option("--winter", options->winter, "Night low of the room in winter (default 18)")->type_name("C");
    command.add_option("--summer", options->summer, "Night low of the room in summer (default 21)")->type_name("C");
    command.add_option("--offset", options->offset, "How much warmer than the open its nights are (default: by kind)")
        ->type_name("C");
    command.add_option("--offset-sd", options->offset_sd, "How well that is known (default: by kind)")
        ->type_name("C");
    command.add_flag("--in-reach", options->in_reach, "A child or an animal gets at the plants there");
    command.add_flag("--apart", options->apart, "Away from all other plants: fit for keeping infested ones");
    command.add_flag("--windy", options->windy, "Wind tears at leaves and tips pots there");
    commands.on_run(command, [options](const Globals& globals) { return add_spot(globals, *options); });
}

struct PinOptions {
    std::string plant;
    std::string spot;
    std::string from;
    std::string to;
};

Result<Answer> pin(const Globals& globals, const PinOptions& options)
{
    const auto home = household_of(globals, WithoutHousehold::IsAnError);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_called(*home, options.plant);
    if (!plant) {
        return plant.error();
    }
    const auto spot = spot_called(*home, options.spot);
    if (!spot) {
        return spot.error();
    }
    if (options.from.empty() != options.to.empty()) {
        return Error{ErrorCode::WrongUsage, "give both --from and --to, or neither to pin it always"};
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    std::string when = "always";
    std::vector<std::string> warnings;
    if (options.from.empty()) {
        auto kept = **plant;
        kept.pinned_spot = (*spot)->id;
        if (const auto done = store->change({.words = (*plant)->name + " stays at " + (*spot)->name + " always", .plants = {kept}},
                                            globals.today, now());
            !done) {
            return done.error();
        }
    } else {
        const auto from = date_of(options.from, globals.today);
        const auto to = date_of(options.to, globals.today);
        if (!from || !to) {
            return from ? to.error() : from.error();
        }
        if (*to < *from) {
            return Error{ErrorCode::WrongUsage, "--to is before --from; exchange them"};
        }
        const home::Pin wanted{(*plant)->id, (*spot)->id, *from, *to};
        if (const auto* known = home::contradicting(*home, wanted)) {
            return Error{ErrorCode::WrongUsage,
                         (*plant)->name + " is pinned to " + home->spot(known->spot)->name + " from " +
                             calendar::to_text(known->from) + " to " + calendar::to_text(known->to) +
                             ", and it cannot stand in two places; `lathhouse unpin` takes that back"};
        }
        when = "from " + options.from + " to " + options.to;
        const auto last = globals.today + calendar::Days{plan::kNightsOfAPlan - 1};
        if (*from > last) {
            warnings.push_back("a plan made today ends with the night of " + calendar::to_text(last) +
                               "; this pin counts only in plans that reach its first night");
        }
        if (const auto done = store->change({.words = (*plant)->name + " stays at " + (*spot)->name + " " + when,
                                             .pins = {wanted}},
                                            globals.today, now());
            !done) {
            return done.error();
        }
    }
    if ((*plant)->hazardous && (*spot)->in_reach) {
        warnings.push_back((*plant)->name + " is poisonous and " + (*spot)->name +
                           " is within reach of a child or an animal; think again");
    }
    return Answer{{{"pinned", (*plant)->id}, {"spot", (*spot)->id}},
                  (*plant)->name + " stays at " + (*spot)->name + " " + when + ".\n", std::move(warnings)};
}

Result<Answer> unpin(const Globals& globals, const std::string& name)
{
    const auto home = household_of(globals, WithoutHousehold::IsAnError);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_called(*home, name);
    if (!plant) {
        return plant.error();
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const auto count = std::ranges::count((*home).pins, (*plant)->id, &home::Pin::plant) + ((*plant)->pinned_spot ? 1 : 0);
    if (count > 0) {
        if (const auto done = store->change({.words = (*plant)->name + " is pinned no longer", .unpinned = {(*plant)->id}},
                                            globals.today, now());
            !done) {
            return done.error();
        }
    }
    return Answer{{{"taken_back", count}},
                  count == 0 ? (*plant)->name + " was not pinned.\n"
                              : (*plant)->name + " goes where the plan puts it.\n",
                  {}};
}

} // namespace

void add_add(Commands& commands)
{
    CLI::App& group = commands.add("add", "Adds a plant, a spot, a jug or a lot of seed to the household",
                                   "lathhouse add plant \"Citrus limon\" --spot 3");
    group.require_subcommand(1);
    declare_plant(commands, group);
    declare_spot(commands, group);
    add_jug_command(commands, group);
    add_member_command(commands, group);
    add_seed_adders(commands, group);
    add_photo_adder(commands, group);
}

void add_pin(Commands& commands)
{
    auto options = std::make_shared<PinOptions>();
    CLI::App& command = commands.add("pin", "Keeps a plant at a spot, always or on given nights",
                                     "lathhouse pin Lemon Stairwell --from 2026-12-01 --to 2027-02-28");
    command.add_option("plant", options->plant, "Plant by id or name")->required()->type_name("PLANT");
    command.add_option("spot", options->spot, "Spot by id or name")->required()->type_name("SPOT");
    command.add_option("--from", options->from, "First evening")->type_name("YYYY-MM-DD");
    command.add_option("--to", options->to, "Last evening")->type_name("YYYY-MM-DD");
    commands.on_run(command, [options](const Globals& globals) { return pin(globals, *options); });

    auto name = std::make_shared<std::string>();
    CLI::App& back = commands.add("unpin", "Takes back what keeps a plant at a spot", "lathhouse unpin Lemon");
    back.add_option("plant", *name, "Plant by id or name")->required()->type_name("PLANT");
    commands.on_run(back, [name](const Globals& globals) { return unpin(globals, *name); });
}

} // namespace lathhouse::cli
