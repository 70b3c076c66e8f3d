#pragma once

#include "core/climate/night_model.h"
#include "core/home/spot_climate.h"
#include "core/plan/pot_size.h"
#include "core/plan/year_plan.h"
#include "core/plants/plant_kind.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// Temperature of the mix at which a pot's roots begin to die.
///
/// A pot counts as two hardiness zones (11.1 K) warmer than what kills the plant in the ground where it holds
/// 5 L or less, as one zone (5.6 K) from 20 L on, between in a straight line; never warmer than -4 C, which
/// roots in pots stand for a night, nor colder than the plant's own deadly line.
/// Source: rules roots_zones, roots_air; which size counts for which end is common practice, no source.
Celsius root_cold_line(Celsius lethal, Litres volume);

/// Hottest that the mix at the wall of a pot gets on a usual day.
///
/// The day's high and an excess by colour: 14 K for a dark pot in full light (40 mol), 5.5 K less for a light
/// one, halfway where the colour is not known; smaller with the light, and with the pot's size down to 0.6 of
/// it at 20 L and more. Rough: the excess and the pot's size are common practice, no source; the difference of
/// colours is published (rule pot_light_less).
Celsius hottest_mix(const home::SpotDay& day, home::PotShade shade, Litres volume);

enum class HeatOnRoots { None, Slows, Stops, Harms };
/// Above 30, 39 and 40 C. Rules roots_slow, roots_stop, roots_injury.
HeatOnRoots heat_on_roots(Celsius mix);

/// A winter quarter by warmth and light.
enum class WinterQuarters { CoolAndDim, CoolAndBright, WarmAndBright, WarmAndDim };
/// Cool: a mean at or below the middle of the kind's base of growth and its optimum. Dim: less light than
/// half of what it thrives on. Source: rule winter_match; the two limits are common practice, no source.
WinterQuarters winter_quarters(const plants::PlantKind& kind, DailyLight light_to_thrive,
                               const home::SpotDay& usual);

/// What a year does to a plant's roots and how its winter suits it.
struct RootsOfPlant {
    home::PlantId plant;
    PotSize size;
    Celsius cold_line;
    struct Cold {
        home::SpotId spot;
        Celsius usual_lowest; ///< Of the winters, at the spot.
    };
    std::optional<Cold> cold; ///< Where the lowest night outdoors reaches the line.
    struct Heat {
        home::SpotId spot;
        calendar::Date worst;
        Celsius mix;
        HeatOnRoots effect;
    };
    std::optional<Heat> heat; ///< The hottest day outdoors, where roots slow down at least.
    struct Winter {
        home::SpotId spot;
        calendar::Date middle;
        Celsius mean;
        DailyLight light;
        WinterQuarters quarters;
        bool wants_cool; ///< The kind rests cool.
    };
    std::optional<Winter> winter; ///< None at places without a winter, or for an unknown kind.
};

/// For every plant, by where it stands through the year from `from` on.
std::vector<RootsOfPlant> roots_of_year(const home::Household& household,
                                        const climate::PlaceClimate& climate, const home::SpotClimate& spots,
                                        std::span<const PlantYear> stays, calendar::Date from);

} // namespace lathhouse::plan
