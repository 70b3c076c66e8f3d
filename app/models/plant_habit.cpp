#include "app/models/plant_habit.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace lathhouse::models {

namespace {

/// Genera whose looks differ from those of their group in the table of kinds.
constexpr std::array kGenera{
    // Stems with hanging twigs.
    std::pair{std::string_view{"Ficus benjamina"}, Habit::Weeping},
    std::pair{std::string_view{"Radermachera"}, Habit::Weeping},
    std::pair{std::string_view{"Plerandra"}, Habit::Weeping},
    // Stems with a crown.
    std::pair{std::string_view{"Ficus"}, Habit::RoundCrown},
    std::pair{std::string_view{"Heptapleurum"}, Habit::RoundCrown},
    std::pair{std::string_view{"Polyscias"}, Habit::RoundCrown},
    std::pair{std::string_view{"Coffea"}, Habit::RoundCrown},
    std::pair{std::string_view{"Pachira"}, Habit::RoundCrown},
    std::pair{std::string_view{"Laurus"}, Habit::RoundCrown},
    std::pair{std::string_view{"Murraya"}, Habit::RoundCrown},
    std::pair{std::string_view{"Codiaeum"}, Habit::RoundCrown},
    std::pair{std::string_view{"Araucaria"}, Habit::RoundCrown},
    std::pair{std::string_view{"Plumeria"}, Habit::RoundCrown},
    // Blades.
    std::pair{std::string_view{"Dracaena"}, Habit::Blades},
    std::pair{std::string_view{"Cordyline"}, Habit::Blades},
    std::pair{std::string_view{"Aspidistra"}, Habit::Blades},
    std::pair{std::string_view{"Beaucarnea"}, Habit::Blades},
    std::pair{std::string_view{"Aloe"}, Habit::Blades},
    std::pair{std::string_view{"Agave"}, Habit::Blades},
    std::pair{std::string_view{"Haworthiopsis"}, Habit::Blades},
    std::pair{std::string_view{"Gasteria"}, Habit::Blades},
    std::pair{std::string_view{"Clivia"}, Habit::Blades},
    std::pair{std::string_view{"Hippeastrum"}, Habit::Blades},
    std::pair{std::string_view{"Agapanthus"}, Habit::Blades},
    std::pair{std::string_view{"Cymbopogon"}, Habit::Blades},
    std::pair{std::string_view{"Ananas"}, Habit::Blades},
    std::pair{std::string_view{"Guzmania"}, Habit::Blades},
    std::pair{std::string_view{"Neoregelia"}, Habit::Blades},
    std::pair{std::string_view{"Narcissus"}, Habit::Blades},
    std::pair{std::string_view{"Gladiolus"}, Habit::Blades},
    std::pair{std::string_view{"Freesia"}, Habit::Blades},
    std::pair{std::string_view{"Zamioculcas"}, Habit::Blades},
    std::pair{std::string_view{"Spathiphyllum"}, Habit::Blades},
    std::pair{std::string_view{"Tradescantia spathacea"}, Habit::Blades},
    // Large leaves.
    std::pair{std::string_view{"Monstera adansonii"}, Habit::Trailing},
    std::pair{std::string_view{"Musa"}, Habit::SplitLeaves},
    std::pair{std::string_view{"Strelitzia"}, Habit::SplitLeaves},
    std::pair{std::string_view{"Colocasia"}, Habit::SplitLeaves},
    std::pair{std::string_view{"Caladium"}, Habit::SplitLeaves},
    std::pair{std::string_view{"Canna"}, Habit::SplitLeaves},
    std::pair{std::string_view{"Zantedeschia"}, Habit::SplitLeaves},
    std::pair{std::string_view{"Anthurium"}, Habit::SplitLeaves},
    // Flowers that hang.
    std::pair{std::string_view{"Fuchsia"}, Habit::HangingFlowers},
    std::pair{std::string_view{"Abutilon"}, Habit::HangingFlowers},
    std::pair{std::string_view{"Brugmansia"}, Habit::Trumpets},
    // Joints.
    std::pair{std::string_view{"Schlumbergera"}, Habit::Jointed},
    std::pair{std::string_view{"Epiphyllum"}, Habit::Jointed},
    std::pair{std::string_view{"Opuntia"}, Habit::Jointed},
    std::pair{std::string_view{"Euphorbia tirucalli"}, Habit::Jointed},
    // Thin grey leaves.
    std::pair{std::string_view{"Salvia rosmarinus"}, Habit::ThinGrey},
    std::pair{std::string_view{"Lavandula"}, Habit::ThinGrey},
    std::pair{std::string_view{"Olea"}, Habit::ThinGrey},
    std::pair{std::string_view{"Thymus"}, Habit::ThinGrey},
    std::pair{std::string_view{"Asparagus"}, Habit::ThinGrey},
    // Trailing ones.
    std::pair{std::string_view{"Epipremnum"}, Habit::Trailing},
    std::pair{std::string_view{"Philodendron"}, Habit::Trailing},
    std::pair{std::string_view{"Scindapsus"}, Habit::Trailing},
    std::pair{std::string_view{"Syngonium"}, Habit::Trailing},
    std::pair{std::string_view{"Hedera"}, Habit::Trailing},
    std::pair{std::string_view{"Hoya"}, Habit::Trailing},
    std::pair{std::string_view{"Tradescantia"}, Habit::Trailing},
    std::pair{std::string_view{"Chlorophytum"}, Habit::Trailing},
    std::pair{std::string_view{"Fittonia"}, Habit::Trailing},
    std::pair{std::string_view{"Ipomoea"}, Habit::Trailing},
    std::pair{std::string_view{"Curio"}, Habit::Trailing},
    std::pair{std::string_view{"Sedum"}, Habit::Trailing},
    std::pair{std::string_view{"Peperomia"}, Habit::Fleshy},
    std::pair{std::string_view{"Pilea peperomioides"}, Habit::Fleshy},
    // A herb that is a shrub.
    std::pair{std::string_view{"Aloysia"}, Habit::FloweringBush},
};

constexpr std::array kGroups{
    std::pair{std::string_view{"citrus_fruit"}, Habit::RoundCrown},
    std::pair{std::string_view{"palm"}, Habit::SplitLeaves},
    std::pair{std::string_view{"fern"}, Habit::Trailing},
    std::pair{std::string_view{"foliage"}, Habit::SplitLeaves},
    std::pair{std::string_view{"succulent"}, Habit::Fleshy},
    std::pair{std::string_view{"orchid"}, Habit::ArchingOrchid},
    std::pair{std::string_view{"herb"}, Habit::Seedlings},
    std::pair{std::string_view{"vegetable"}, Habit::Seedlings},
    std::pair{std::string_view{"flowering"}, Habit::FloweringBush},
    std::pair{std::string_view{"porch_tender"}, Habit::FloweringBush},
    std::pair{std::string_view{"annual_porch"}, Habit::FloweringBush},
    std::pair{std::string_view{"bulb_porch"}, Habit::FloweringBush},
};

} // namespace

Habit habit_of(const plants::PlantKind* kind)
{
    if (kind == nullptr) {
        return Habit::RoundCrown;
    }
    // The longest name counts, so that a species comes before its genus.
    const std::string_view name = kind->botanical_name;
    const std::pair<std::string_view, Habit>* best = nullptr;
    for (const auto& of : kGenera) {
        const bool whole = name.starts_with(of.first) &&
                           (name.size() == of.first.size() || name[of.first.size()] == ' ');
        if (whole && (best == nullptr || of.first.size() > best->first.size())) {
            best = &of;
        }
    }
    if (best != nullptr) {
        return best->second;
    }
    const auto group = std::ranges::find(kGroups, std::string_view{kind->group},
                                         [](const auto& of) { return of.first; });
    return group == kGroups.end() ? Habit::FloweringBush : group->second;
}

bool bears_fruit(const plants::PlantKind* kind)
{
    return kind != nullptr && kind->group == "citrus_fruit" && habit_of(kind) == Habit::RoundCrown;
}

} // namespace lathhouse::models
