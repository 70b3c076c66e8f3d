#include "app/cli/list.h"

#include "app/cli/household_options.h"
#include "app/cli/seed_options.h"
#include "app/cli/jugs.h"
#include "app/cli/members.h"
#include "app/cli/open_household.h"
#include "app/cli/kinds.h"
#include "app/cli/photo_options.h"
#include "app/cli/log_measurement.h"
#include "app/cli/spots.h"
#include "app/words/place_words.h"

#include <algorithm>
#include <functional>
#include <memory>

namespace lathhouse::cli {

std::string table(const std::vector<std::vector<std::string>>& rows)
{
    // Blanks are counted by `padded`, which knows how wide a character stands; so widths are found by
    // growing until filling up adds nothing.
    std::vector<std::size_t> widths(rows.front().size(), 1);
    for (const auto& row : rows) {
        for (std::size_t column = 0; column < row.size(); ++column) {
            while (words::padded(row[column], widths[column]) == row[column] &&
                   words::padded(row[column], widths[column] + 1) == row[column]) {
                ++widths[column];
            }
        }
    }
    std::string text;
    for (const auto& row : rows) {
        for (std::size_t column = 0; column < row.size(); ++column) {
            text += column + 1 == row.size() ? row[column] : words::padded(row[column], widths[column] + 2);
        }
        text += '\n';
    }
    return text;
}

namespace {

using Lister = std::function<Answer(const home::Household&, words::UnitSystem)>;

Answer list_plants(const home::Household& household, words::UnitSystem units)
{
    Json plants = Json::array();
    std::vector<std::vector<std::string>> rows{
        {"id", "plant", "kind", "safe night", "damage", "lethal", "spot"}};
    for (const auto& plant : household.plants) {
        plants.push_back({{"id", plant.id},
                          {"name", plant.name},
                          {"kind", plant.kind},
                          {"safe_night_c", json_number(plant.lines.safe_night.degrees())},
                          {"damage_c", json_number(plant.lines.damage_begins.degrees())},
                          {"lethal_c", json_number(plant.lines.lethal.degrees())},
                          {"spot", plant.spot ? Json(*plant.spot) : Json(nullptr)}});
        const auto* spot = plant.spot ? household.spot(*plant.spot) : nullptr;
        rows.push_back({std::to_string(plant.id), plant.name, plant.kind,
                        words::temperature(plant.lines.safe_night, units),
                        words::temperature(plant.lines.damage_begins, units),
                        words::temperature(plant.lines.lethal, units),
                        spot != nullptr ? spot->name : "nowhere"});
    }
    return {{{"plants", plants}}, table(rows), {}};
}

Answer show_place(const home::Household& household, words::UnitSystem units)
{
    const auto& place = household.place;
    const double latitude = place.position.latitude.degrees();
    const double longitude = place.position.longitude.degrees();
    return {{{"latitude", json_number(latitude)},
             {"longitude", json_number(longitude)},
             {"elevation_m", place.elevation ? json_number(place.elevation->metres()) : Json(nullptr)},
             {"zone", place.time_zone}},
            place.name + (household.demonstration ? " (demonstration household, invented)" : "") + "\n" +
                words::position(place.position) + ", " +
                (place.elevation ? words::height(*place.elevation, units) : "height not given") + ", " +
                place.time_zone + "\n",
            {}};
}

void add_lister(Commands& commands, CLI::App& group, const std::string& name, const std::string& description,
                const Lister& lister)
{
    CLI::App& command = *group.add_subcommand(name, description);
    command.fallthrough();
    commands.on_run(command, [lister](const Globals& globals) -> Result<Answer> {
        return household_of(globals, WithoutHousehold::IsAnError)
            .transform([&](const home::Household& household) { return lister(household, globals.units); });
    });
}

Result<Answer> list_gone(const Globals& globals)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto gone = store->gone_plants();
    if (!gone) {
        return gone.error();
    }
    Json plants = Json::array();
    std::vector<std::vector<std::string>> rows{{"id", "plant", "kind", "gone", "on"}};
    for (const auto& [plant, how, on] : *gone) {
        plants.push_back({{"id", plant.id},
                          {"name", plant.name},
                          {"kind", plant.kind},
                          {"gone", home::to_string(how)},
                          {"on", calendar::to_text(on)}});
        std::string word{home::to_string(how)};
        std::ranges::replace(word, '_', ' ');
        rows.push_back({std::to_string(plant.id), plant.name, plant.kind, word, calendar::to_text(on)});
    }
    return Answer{{{"plants", plants}}, gone->empty() ? "No plant is gone.\n" : table(rows), {}};
}

void add_plant_list(Commands& commands, CLI::App& group)
{
    CLI::App& command = *group.add_subcommand("plants", "Plants, their cold lines and where they stand");
    command.fallthrough();
    auto gone = std::make_shared<bool>(false);
    command.add_flag("--gone", *gone, "Those that died, were given away or taken off the list");
    commands.on_run(command, [gone](const Globals& globals) -> Result<Answer> {
        if (*gone) {
            return list_gone(globals);
        }
        return household_of(globals, WithoutHousehold::IsAnError)
            .transform([&](const home::Household& household) { return list_plants(household, globals.units); });
    });
}

} // namespace

void add_list(Commands& commands)
{
    CLI::App& group = commands.add("list", "Lists what the household has", "lathhouse list plants --json");
    group.require_subcommand(1);
    add_plant_list(commands, group);
    add_spot_lists(commands, group);
    add_seed_lists(commands, group);
    add_jug_list(commands, group);
    add_member_list(commands, group);
    add_photo_list(commands, group);
    add_kind_lists(commands, group);
    add_measurement_list(commands, group);
}

void add_show(Commands& commands)
{
    CLI::App& group = commands.add("show", "Shows one thing of the household", "lathhouse show place");
    group.require_subcommand(1);
    add_lister(commands, group, "place", "Where the household is", show_place);
    add_plant_show(commands, group);
    add_spot_shows(commands, group);
    add_seed_shows(commands, group);
    add_photo_show(commands, group);
    add_kind_shows(commands, group);
}

} // namespace lathhouse::cli
