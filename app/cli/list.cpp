#include "app/cli/list.h"

#include "app/cli/household_options.h"
#include "app/words/place_words.h"

#include <functional>

namespace lathhouse::cli {
namespace {

using Lister = std::function<Answer(const home::Household&, words::UnitSystem)>;

/// Columns of text, each as wide as its widest cell; the last is not filled up.
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

Answer list_spots(const home::Household& household, words::UnitSystem units)
{
    Json spots = Json::array();
    std::vector<std::vector<std::string>> rows{{"id", "spot", "kind", "night low", "known to", "pots"}};
    for (const auto& spot : household.spots) {
        spots.push_back({{"id", spot.id},
                         {"name", spot.name},
                         {"kind", home::to_string(spot.kind)},
                         {"offset_c", json_number(spot.offset.mean.kelvins())},
                         {"offset_sd_c", json_number(spot.offset.spread.kelvins())},
                         {"capacity", spot.capacity}});
        std::string low = words::temperature_difference(spot.offset.mean, units);
        std::string known;
        if (home::is_outdoors(spot.kind)) {
            // One standard deviation, so with both signs.
            known = "\u00b1" + words::temperature_difference(spot.offset.spread, units).substr(1);
        } else if (spot.winter && spot.summer) {
            low = words::temperature(*spot.winter, units) + " to " + words::temperature(*spot.summer, units);
        } else {
            low.clear();
        }
        rows.push_back({std::to_string(spot.id), spot.name, std::string{home::to_string(spot.kind)}, low,
                        known, std::to_string(spot.capacity)});
    }
    return {{{"spots", spots}},
            table(rows) +
                "A night low with a sign is against the open air; how far it is known is one standard "
                "deviation.\n",
            {}};
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

} // namespace

void add_list(Commands& commands)
{
    CLI::App& group = commands.add("list", "Lists what the household has", "lathhouse list plants --json");
    group.require_subcommand(1);
    add_lister(commands, group, "plants", "Plants, their cold lines and where they stand", list_plants);
    add_lister(commands, group, "spots", "Spots, how they differ from the open air and what fits",
               list_spots);
}

void add_show(Commands& commands)
{
    CLI::App& group = commands.add("show", "Shows one thing of the household", "lathhouse show place");
    group.require_subcommand(1);
    add_lister(commands, group, "place", "Where the household is", show_place);
}

} // namespace lathhouse::cli
