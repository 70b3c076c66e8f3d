#include "core/home/new_plant.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace lathhouse::home {
namespace {

using plants::Toxicity;

bool is_poison(Toxicity toxicity)
{
    return toxicity == Toxicity::Toxic || toxicity == Toxicity::Deadly;
}

bool contradict(const std::optional<Celsius>& colder, const std::optional<Celsius>& warmer)
{
    return colder && warmer && !(*colder <= *warmer); // Written so that NaN contradicts too.
}

} // namespace

bool is_hazardous(const plants::PlantKind& kind)
{
    return is_poison(kind.to_people) || is_poison(kind.to_pets);
}

bool is_grown_outdoors(const plants::PlantKind& kind)
{
    constexpr std::array<std::string_view, 7> kGroups{
        "porch_tender", "porch_hardy", "annual_porch", "bulb_porch", "citrus_fruit", "herb", "vegetable"};
    return std::ranges::find(kGroups, kind.group) != kGroups.end();
}

Result<Plant> make_plant(PlantId id, const plants::PlantKind& kind, const OwnFigures& own)
{
    const std::string name = own.name.value_or(kind.common_names.front());
    if (contradict(own.lethal, own.damage_begins) || contradict(own.damage_begins, own.safe_night) ||
        contradict(own.lethal, own.safe_night)) {
        return Error{ErrorCode::OutOfRange, said("the cold lines given for %1 contradict each other; they must rise "
                                                 "from lethal over damage to the safe night",
                                                 name)};
    }
    auto lines = kind.lines;
    if (own.damage_begins) {
        lines.damage_begins = *own.damage_begins;
        lines.safe_night = std::max(lines.safe_night, lines.damage_begins);
        lines.lethal = std::min(lines.lethal, lines.damage_begins);
    }
    if (own.safe_night) {
        lines.safe_night = *own.safe_night;
        lines.damage_begins = std::min(lines.damage_begins, lines.safe_night);
        lines.lethal = std::min(lines.lethal, lines.damage_begins);
    }
    if (own.lethal) {
        lines.lethal = *own.lethal;
        lines.damage_begins = std::max(lines.damage_begins, lines.lethal);
        lines.safe_night = std::max(lines.safe_night, lines.damage_begins);
    }
    Plant plant{
        .id = id,
        .name = name,
        .kind = kind.botanical_name,
        .lines = lines,
        .heat_limit = own.heat_limit.value_or(kind.heat_limit),
        .light_to_survive = own.light_to_survive.value_or(kind.light_to_survive),
        .light_to_thrive = own.light_to_thrive.value_or(kind.light_to_thrive),
        .must_dry = own.must_dry.value_or(kind.must_dry),
        .hazardous = own.hazardous.value_or(is_hazardous(kind)),
        .sulks = own.sulks.value_or(kind.sulks),
        .wants_open_air = own.wants_open_air.value_or(is_grown_outdoors(kind)),
        .pot_kilograms = own.pot_kilograms.value_or(4.0),
        .spot = std::nullopt,
        .pinned_spot = std::nullopt,
    };
    if (!(plant.light_to_survive <= plant.light_to_thrive)) {
        return Error{ErrorCode::OutOfRange,
                     said("the light that %1 needs to survive is above what it needs to thrive", name)};
    }
    if (!(plant.pot_kilograms > 0.0)) {
        return Error{ErrorCode::OutOfRange, said("the pot of %1 must weigh more than 0 kg", name)};
    }
    return plant;
}

} // namespace lathhouse::home
