#pragma once

#include "core/home/history.h"
#include "core/plan/growth_index.h"
#include "core/plan/pot_size.h"
#include "core/plan/watering_habit.h"
#include "core/plan/year_plan.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// Why a look is due when it is.
enum class LookWhy {
    NoWateringLogged, ///< Nobody knows when it was watered.
    Drawn,            ///< By then it has drawn what it may.
    LongestGap,       ///< It draws little; looked at all the same.
    WetSpell,         ///< Rain may keep the pot wet: feel 5 cm deep.
};

/// What there is to drink in a pot, and how fast it goes.
struct PotWater {
    PotSize size;
    Litres available;     ///< That roots can easily draw from the full pot.
    Litres may_go;        ///< Of it, before a look is due, by the kind's drying class.
    Litres drawn_of_day;  ///< On a usual day at the spot, today.
};

/// When to look at a plant. A look is a finger in the mix or the pot lifted: never a command to water.
struct WaterLook {
    home::PlantId plant;
    std::optional<home::SpotId> spot; ///< Where it stands; without one nothing can be said.
    std::optional<calendar::Date> last_watered;
    std::optional<calendar::Date> due; ///< First date of a look.
    LookWhy why;
    int every_days; ///< Between looks from today on, were it watered today.
    PotWater pot;
    WateringHabit habit;
    bool rests;        ///< It rests: see `nearly_dry`.
    bool nearly_dry;   ///< While it rests it wants hardly any water.
    bool in_the_rain;  ///< The spot is open, so rain counts.
    bool must_dry;
    /// Dates of looks within the days asked for, as if it were watered at each.
    std::vector<calendar::Date> looks;
};

/// Litres that a pot draws on a usual day at a spot: the spot's water demand on the top of the pot, times 1.5
/// (0.33 for succulents and other thick leaves: kinds that must dry right out but for thin-leaved ones such as geraniums and herbs). Rules draw_factor, draw_succulent: published factors run from 1
/// for a small plant to 3 for a full crown, so the first looks are early or late by half until waterings are
/// logged.
/// Source: Beeson, HortScience 45 (2010) 1260 and 47 (2012) 264; the factor for succulents is common practice,
/// no source.
Litres draw_of_day(const home::SpotDay& day, const PotSize& size, bool little);

/// Looks for every plant, `days` from `from` on.
///
/// Day by day the draw is added up from the last watering and rain on the pot's top taken off; a look is due
/// when what may go has gone (a quarter of the mix's volume is easily drawn; of it 0.3, 0.5 or 1 may go by
/// drying class), times what logged waterings have taught, and at the latest after 7, 10 or 21 days. Events
/// watered, leached and repotted count as full waterings; an event without a plant counts for the plants that
/// stood at its spot.
/// Intervals that teach: 1 to 60 days, between waterings of one plant at one spot, without a wet day in the
/// open.
std::vector<WaterLook> water_looks(const home::Household& household, const climate::PlaceClimate& climate,
                                   const home::SpotClimate& spots, std::span<const home::Event> events,
                                   std::span<const PlantYear> stays, calendar::Date from, int days);

struct WaterDue {
    home::PlantId plant;
    calendar::Date due;
    calendar::Date can_wait_until; ///< The same day for kinds kept moist, else two days on.
    LookWhy why;
    int minutes; ///< One: a finger in the mix (common practice, no source).
};
/// Looks that are due by a date and were not made (a watering after `due` is a new look).
std::vector<WaterDue> due_on(std::span<const WaterLook> looks, calendar::Date date);

/// Days in a row on which rain keeps pots in the open wet.
struct WetSpell {
    calendar::Date from;
    calendar::Date to; ///< Included.
};
/// Wet spells of a year from `from` on at the first open spot (feeding.h, is_wet); none without one or where
/// rain is not known.
std::vector<WetSpell> wet_spells(const home::Household& household, const home::SpotClimate& spots,
                                 calendar::Date from);

} // namespace lathhouse::plan
