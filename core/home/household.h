#pragma once

#include "core/calendar/date.h"
#include "core/climate/night_model.h"
#include "core/climate/own_record.h"
#include "core/plants/plant_kind.h"
#include "core/sky/spot_view.h"
#include "core/units/length.h"
#include "core/units/light.h"
#include "core/units/position.h"
#include "core/units/volume.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

using SpotId = int;
using PlantId = int;

struct Place {
    std::string name; ///< The household's own word for it.
    Position position;
    std::optional<Metres> elevation;
    std::string time_zone; ///< IANA name.
};

enum class SpotKind { Indoors, Open, Roofed, Screened, Glazed };
constexpr bool is_outdoors(SpotKind kind)
{
    return kind != SpotKind::Indoors;
}
std::string_view to_string(SpotKind kind); ///< "indoors", "open", "roofed", "screened", "glazed".
/// The kind of that word; nullopt for any other word.
std::optional<SpotKind> spot_kind_of(std::string_view word);

/// Where a pot can stand.
struct Spot {
    SpotId id;
    std::string name;
    std::string short_name; ///< For a bar in a chart; the name where there is none of its own.
    SpotKind kind;
    climate::NightOffset offset;            ///< To the open-air low; of no meaning indoors.
    std::optional<Celsius> winter;          ///< Usual night low of the room in the cold season (indoors).
    std::optional<Celsius> summer;          ///< Usual night low of the room in the warm season (indoors).
    DailyLight light_in_summer;             ///< On the longest day, as the plants get it.
    DailyLight light_in_winter;             ///< On the shortest day.
    int capacity;                           ///< Pots that fit.
    bool in_reach;                          ///< Of a child or an animal of the household.
    int walking_order;                      ///< Order in which one comes past.
    std::optional<sky::SpotView> view = {}; ///< Its window or roof, where they were measured.
    bool apart = false; ///< Away from all other plants, so that pests do not walk over: fit for isolation.
    bool windy = false; ///< Wind tears at leaves and tips pots there, as the grower says.
};

/// How a pot takes up the sun's heat; Unknown where the grower did not say.
enum class PotShade { Unknown, Light, Dark };
std::string_view to_string(PotShade shade); ///< "", "light", "dark".
/// The shade of that word; nullopt for any other word.
std::optional<PotShade> pot_shade_of(std::string_view word);

/// A plant of the household: its kind, with any figure replaced by the grower's own.
struct Plant {
    PlantId id;
    std::string name;
    std::string kind; ///< Botanical name of the kind, or the grower's own word.
    plants::ColdLines lines;
    Celsius heat_limit;
    DailyLight light_to_survive;
    DailyLight light_to_thrive;
    bool must_dry;
    bool hazardous;      ///< Must not stand in reach of a child or an animal.
    bool sulks;          ///< Suffers from every move (weeping figs).
    bool wants_open_air; ///< Grown outdoors while the nights allow: porch plants, fruit, herbs, vegetables.
    double pot_kilograms;
    std::optional<SpotId> spot;        ///< Where it stands now.
    std::optional<SpotId> pinned_spot; ///< Never to be moved from there.
    std::optional<Litres> pot_volume = {}; ///< Of the mix; nullopt where the grower did not say.
    PotShade pot_shade = PotShade::Unknown;
    /// First day on which a plant from a tray is old enough to be planted out (with_young_plants); not kept by the journal.
    std::optional<calendar::Date> young_until = {};
};

/// Nights on which the grower keeps a plant at a spot by hand: evenings, both included.
struct Pin {
    PlantId plant;
    SpotId spot;
    calendar::Date from;
    calendar::Date to;
    friend bool operator==(const Pin&, const Pin&) = default;
};

struct Household {
    std::string name;
    bool demonstration; ///< Invented for showing; said wherever it is shown.
    Place place;
    std::vector<Spot> spots;
    std::vector<Plant> plants;
    /// A station record that the grower imported; it answers before the shipped table.
    std::shared_ptr<const climate::OwnRecord> own_record{};
    std::vector<Pin> pins{}; ///< Those that hold, by the date of their entry.

    const Spot* spot(SpotId id) const;
    const Plant* plant(PlantId id) const;
    /// The spot of that id, or of that name without case; nullptr where there is none.
    const Spot* spot_called(std::string_view id_or_name) const;
    /// As spot_called, of plants.
    const Plant* plant_called(std::string_view id_or_name) const;
};

} // namespace lathhouse::home
