#pragma once

#include "core/climate/place_climate.h"
#include "core/home/household.h"
#include "tests/climate/plain_place.h"
#include "tests/plan/short_names.h"

#include <string>
#include <utility>
#include <vector>

// Places and households made up for tests: smooth climates and plain spots, so that what a test expects can be seen.

namespace lathhouse::plan {

inline climate::PlaceClimate climate_of(double mean_low, double swing, int warmest_month = 7, double latitude = 48.0)
{
    const auto low = wave(mean_low, swing, warmest_month);
    auto high = low;
    for (auto& value : high) {
        value = value + KelvinDelta::from_kelvins(10.0);
    }
    climate::Monthly<KelvinDelta> spread = [] {
        const auto k = KelvinDelta::from_kelvins(4.0);
        return climate::Monthly<KelvinDelta>{k, k, k, k, k, k, k, k, k, k, k, k};
    }();
    climate::MonthlyFigures figures{low, high, spread, std::nullopt, {}, {}, std::nullopt};
    return climate::plain_place(latitude, 200.0, figures);
}

inline home::Spot indoors(int id, int capacity, double winter_light = 3.0, double summer_light = 6.0)
{
    return {.id = id,
            .name = "Sill " + std::to_string(id),
            .short_name = "Sill",
            .kind = home::SpotKind::Indoors,
            .offset = {},
            .winter = Celsius::from_degrees(17.0),
            .summer = Celsius::from_degrees(21.0),
            .light_in_summer = DailyLight::from_moles(summer_light),
            .light_in_winter = DailyLight::from_moles(winter_light),
            .capacity = capacity,
            .in_reach = false,
            .walking_order = id};
}

inline home::Spot balcony(int id, int capacity, double offset = 1.5, double spread = 1.0)
{
    home::Spot spot = indoors(id, capacity, 6.0, 20.0);
    spot.name = "Balcony";
    spot.kind = home::SpotKind::Roofed;
    spot.offset = {KelvinDelta::from_kelvins(offset), KelvinDelta::from_kelvins(spread)};
    spot.winter = spot.summer = std::nullopt;
    return spot;
}

inline home::Plant plant(int id, double safe, double damage, double lethal, double light = 12.0)
{
    return {
        .id = id,
        .name = "Plant " + std::to_string(id),
        .kind = "Planta exemplaris",
        .lines = {Celsius::from_degrees(safe), Celsius::from_degrees(damage), Celsius::from_degrees(lethal)},
        .heat_limit = Celsius::from_degrees(35.0),
        .light_to_survive = DailyLight::from_moles(light / 3.0),
        .light_to_thrive = DailyLight::from_moles(light),
        .must_dry = false,
        .hazardous = false,
        .sulks = false,
        .wants_open_air = false,
        .pot_kilograms = 3.0,
        .spot = std::nullopt,
        .pinned_spot = std::nullopt};
}

inline home::Household household(std::vector<home::Spot> spots, std::vector<home::Plant> plants)
{
    return {"Test",
            false,
            {"Here", {Latitude::literal(48.0), Longitude::literal(20.0)}, std::nullopt, "Europe/Vienna"},
            std::move(spots),
            std::move(plants)};
}

} // namespace lathhouse::plan
