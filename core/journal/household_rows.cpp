#include "core/journal/household_store_inside.h"

namespace lathhouse::journal {
namespace {

std::optional<double> litres_of(std::optional<Litres> volume)
{
    return volume ? std::optional{volume->litres()} : std::nullopt;
}

void insert_views(SQLite::Database& database, std::span<const home::Spot> added)
{
    SQLite::Statement views{database,
                            "INSERT INTO spot_views (spot_id, shelter, facing_degrees, width_metres, "
                            "height_metres, sill_metres, distance_metres, sideways_metres, overhang_metres, "
                            "opposite_degrees, behind_degrees, panes, passes_share) "
                            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"};
    for (const auto& spot : added) {
        if (spot.view) {
            const auto& view = spot.view->figures();
            (Row{views} << spot.id << std::string{sky::to_string(view.shelter)} << view.facing.degrees()
                        << view.width.metres() << view.height.metres() << view.sill.metres()
                        << view.distance.metres() << view.sideways.metres() << view.overhang.metres()
                        << view.opposite.degrees() << view.behind.degrees() << view.panes << view.passes)
                .insert();
        }
    }
}

} // namespace

void insert_spots(SQLite::Database& database, std::span<const home::Spot> added)
{
    SQLite::Statement spots{database,
                            "INSERT INTO spots (id, name, short_name, kind, offset_kelvin, "
                            "offset_spread_kelvin, winter_celsius, summer_celsius, "
                            "light_in_summer_moles, light_in_winter_moles, capacity_pots, in_reach, "
                            "walking_order, apart, windy) "
                            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"};
    for (const auto& spot : added) {
        (Row{spots} << spot.id << spot.name << spot.short_name << std::string{home::to_string(spot.kind)}
                    << spot.offset.mean.kelvins() << spot.offset.spread.kelvins() << degrees_of(spot.winter)
                    << degrees_of(spot.summer) << spot.light_in_summer.moles() << spot.light_in_winter.moles()
                    << spot.capacity << int{spot.in_reach} << spot.walking_order << int{spot.apart}
                    << int{spot.windy})
            .insert();
    }

    insert_views(database, added);
}

void update_spot(SQLite::Database& database, const home::Spot& spot)
{
    SQLite::Statement update{database,
                             "UPDATE spots SET name = ?, short_name = ?, kind = ?, offset_kelvin = ?, "
                             "offset_spread_kelvin = ?, winter_celsius = ?, summer_celsius = ?, "
                             "light_in_summer_moles = ?, light_in_winter_moles = ?, capacity_pots = ?, in_reach = ?, "
                             "walking_order = ?, apart = ?, windy = ? WHERE id = ?"};
    (Row{update} << spot.name << spot.short_name << std::string{home::to_string(spot.kind)}
                 << spot.offset.mean.kelvins() << spot.offset.spread.kelvins() << degrees_of(spot.winter)
                 << degrees_of(spot.summer) << spot.light_in_summer.moles() << spot.light_in_winter.moles()
                 << spot.capacity << int{spot.in_reach} << spot.walking_order << int{spot.apart} << int{spot.windy}
                 << spot.id)
        .insert();
    SQLite::Statement erase{database, "DELETE FROM spot_views WHERE spot_id = ?"};
    (Row{erase} << spot.id).insert();
    insert_views(database, std::span{&spot, 1});
}

void update_plant(SQLite::Database& database, const home::Plant& plant)
{
    SQLite::Statement update{database,
                             "UPDATE plants SET name = ?, kind = ?, lethal_celsius = ?, damage_celsius = ?, "
                             "safe_night_celsius = ?, heat_limit_celsius = ?, light_to_survive_moles = ?, "
                             "light_to_thrive_moles = ?, must_dry = ?, hazardous = ?, sulks = ?, pot_kilograms = ?, "
                             "pinned_spot_id = ?, wants_open_air = ?, pot_litres = ?, pot_shade = ? WHERE id = ?"};
    (Row{update} << plant.name << plant.kind << plant.lines.lethal.degrees() << plant.lines.damage_begins.degrees()
                 << plant.lines.safe_night.degrees() << plant.heat_limit.degrees() << plant.light_to_survive.moles()
                 << plant.light_to_thrive.moles() << int{plant.must_dry} << int{plant.hazardous} << int{plant.sulks}
                 << plant.pot_kilograms << plant.pinned_spot << int{plant.wants_open_air}
                 << litres_of(plant.pot_volume) << std::string{home::to_string(plant.pot_shade)} << plant.id)
        .insert();
}

void insert_plants(SQLite::Database& database, std::span<const home::Plant> added)
{
    SQLite::Statement plants{
        database, "INSERT INTO plants (id, name, kind, lethal_celsius, damage_celsius, "
                  "safe_night_celsius, heat_limit_celsius, light_to_survive_moles, "
                  "light_to_thrive_moles, must_dry, hazardous, sulks, pot_kilograms, spot_id, "
                  "pinned_spot_id, wants_open_air, pot_litres, pot_shade) VALUES (?, ?, ?, ?, ?, ?, ?, "
                  "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"};
    for (const auto& plant : added) {
        (Row{plants} << plant.id << plant.name << plant.kind << plant.lines.lethal.degrees()
                     << plant.lines.damage_begins.degrees() << plant.lines.safe_night.degrees()
                     << plant.heat_limit.degrees() << plant.light_to_survive.moles()
                     << plant.light_to_thrive.moles() << int{plant.must_dry} << int{plant.hazardous}
                     << int{plant.sulks} << plant.pot_kilograms << plant.spot << plant.pinned_spot
                     << int{plant.wants_open_air} << litres_of(plant.pot_volume)
                     << std::string{home::to_string(plant.pot_shade)})
            .insert();
    }
}

} // namespace lathhouse::journal
