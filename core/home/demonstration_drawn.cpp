#include "core/home/demonstration_parts.h"

#include "core/home/shelter.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace lathhouse::home {

namespace {

/// How much of their pots the inside spots hold together.
constexpr double kRoomForPots = 1.2;

int outside_count(int spots)
{
    return spots >= 50 ? spots / 10 : std::max(1, std::min(4, spots / 5 + 1));
}

std::vector<Spot> drawn_spots(int count, int plants, Draws& draws)
{
    std::vector<Spot> spots;
    const int outside = outside_count(count);
    const int inside = count - outside;
    std::vector<double> weights;
    double weight_sum = 0.0;
    for (int index = 0; index < inside; ++index) {
        weights.push_back(draws.between(1.0, 6.0));
        weight_sum += weights.back();
    }
    struct Window {
        const char* name;
        double least_moles;
        double most_moles;
    };
    for (int index = 0; index < inside; ++index) {
        const double place = (index + 0.5) / inside;
        const Window window = place < 0.40   ? Window{"Bright", 4.0, 9.0}
                              : place < 0.75 ? Window{"Medium", 1.8, 4.0}
                                             : Window{"Dim", 0.6, 1.8};
        const double moles = draws.between(window.least_moles, window.most_moles);
        const double swing = draws.between(-0.1, 0.6);
        const int id = index + 1;
        const auto name = std::string{window.name} + " " + std::to_string(id);
        const double winter = draws.between(13.0, 20.0);
        const double summer = draws.between(21.0, 26.0);
        const auto pots = static_cast<int>(
            std::ceil(weights[static_cast<std::size_t>(index)] / weight_sum * kRoomForPots * plants));
        auto spot =
            indoor_spot(id, name, name, {winter, summer}, moles * (1.0 + swing), moles * (1.0 - swing), pots);
        spot.in_reach = index % 8 == 7;
        spots.push_back(std::move(spot));
    }
    for (int index = 0; index < outside; ++index) {
        const bool sun = index % 2 == 0;
        const double moles = sun ? draws.between(18.0, 30.0) : draws.between(5.0, 12.0);
        const double swing = draws.between(0.5, 0.75);
        const int id = inside + index + 1;
        const auto name = std::string{sun ? "Sun " : "Shade "} + std::to_string(index + 1);
        spots.push_back(outdoor_spot(id, name, name, sun ? SpotKind::Open : SpotKind::Roofed,
                                     moles * (1.0 + swing), moles * (1.0 - swing), plants));
    }
    return spots;
}

/// Only the first rows of the reference are drawn: rows added later stand after them, so that the same
/// arguments go on giving the same household, on which the planner's figures were measured.
constexpr std::size_t kDrawnKinds = 147;

} // namespace

Spot indoor_spot(SpotId id, std::string name, std::string short_name, IndoorTemperatures night_low,
                 double summer_moles, double winter_moles, int capacity)
{
    return {.id = id,
            .name = std::move(name),
            .short_name = std::move(short_name),
            .kind = SpotKind::Indoors,
            .offset = prior_offset(SpotKind::Indoors),
            .winter = Celsius::from_degrees(night_low.winter),
            .summer = Celsius::from_degrees(night_low.summer),
            .light_in_summer = DailyLight::from_moles(summer_moles),
            .light_in_winter = DailyLight::from_moles(winter_moles),
            .capacity = capacity,
            .in_reach = false,
            .walking_order = id};
}

Spot outdoor_spot(SpotId id, std::string name, std::string short_name, SpotKind kind, double summer_moles,
                  double winter_moles, int capacity)
{
    return {.id = id,
            .name = std::move(name),
            .short_name = std::move(short_name),
            .kind = kind,
            .offset = prior_offset(kind),
            .winter = std::nullopt,
            .summer = std::nullopt,
            .light_in_summer = DailyLight::from_moles(summer_moles),
            .light_in_winter = DailyLight::from_moles(winter_moles),
            .capacity = capacity,
            .in_reach = false,
            .walking_order = id};
}

DrawnHousehold drawn_household(int spot_count, int plant_count, Draws& draws)
{
    DrawnHousehold drawn{drawn_spots(spot_count, plant_count, draws), {}};
    const auto kinds = plants::PlantReference::built_in().kinds().first(kDrawnKinds);
    const int outside = outside_count(spot_count);
    const int inside = spot_count - outside;
    std::map<std::string, int> named;
    std::vector<int> room_left;
    for (const auto& spot : drawn.spots) {
        room_left.push_back(spot.capacity);
    }
    for (PlantId id = 1; id <= plant_count; ++id) {
        const auto& kind = kinds[static_cast<std::size_t>(draws.below(static_cast<int>(kinds.size())))];
        OwnFigures own;
        own.pot_kilograms = draws.between(1.0, 15.0);
        const int same = ++named[kind.common_names.front()];
        own.name = kind.common_names.front() + (same == 1 ? "" : " " + std::to_string(same));
        KeptPlant kept{make_plant(id, kind, own).value(), &kind, 0, 0};

        // From a random window on, the first that has room and where it may stand.
        const int first = draws.below(inside);
        int chosen = first;
        for (int step = 0; step < inside; ++step) {
            const int index = (first + step) % inside;
            const auto& spot = drawn.spots[static_cast<std::size_t>(index)];
            if (room_left[static_cast<std::size_t>(index)] > 0 && !(spot.in_reach && kept.plant.hazardous)) {
                chosen = index;
                break;
            }
        }
        const SpotId garden = inside + draws.below(outside) + 1;
        const bool house_plant = draws.share() < 0.3 && kind.light != plants::LightClass::VeryHigh;
        const bool winter_hardy = kind.lines.damage_begins <= Celsius::from_degrees(-10.0);
        kept.in_summer = house_plant ? chosen + 1 : garden;
        kept.in_winter = winter_hardy ? kept.in_summer : chosen + 1;
        if (kept.in_winter == chosen + 1) {
            --room_left[static_cast<std::size_t>(chosen)];
        }
        drawn.plants.push_back(std::move(kept));
    }
    return drawn;
}

} // namespace lathhouse::home
