#pragma once

#include "core/calendar/date.h"
#include "core/home/spot_climate.h"
#include "core/home/thermometer.h"
#include "core/plan/year_plan.h"

#include <span>
#include <vector>

namespace lathhouse::plan {

/// What is done on a day of the way out or in.
enum class LadderItemKind {
    OutByDay,      ///< Outdoors for some hours, indoors for the night.
    FirstNightOut, ///< From that evening on it stays out.
    IntoShade,     ///< Outdoors in deeper shade, to be used to less light.
    Inspect,       ///< Every leaf's underside, the axils, the rim and the holes of the pot.
    Soak,          ///< The pot in lukewarm water, to drive out what lives in the mix.
    CarryIn,
    KeepApart, ///< From other plants, with hands and tools washed after it.
    StepDown,  ///< By stages from the brightest window to where it shall stand.
};
enum class Shade { Full, Half, None };

struct LadderItem {
    LadderItemKind kind;
    calendar::Date date;
    calendar::Date until; ///< The same date for what is done on a day.
    int hours;            ///< Outdoors; 0 where it has no meaning.
    Shade shade;
    friend bool operator==(const LadderItem&, const LadderItem&) = default;
};

enum class Direction { Out, In };

/// The way of a plant from one spot to another, day by day.
struct Ladder {
    home::PlantId plant;
    home::SpotId from;
    home::SpotId to;
    Direction direction;
    calendar::Date planned; ///< First night out, or the date of carrying in, as the plan has it.
    calendar::Date reached; ///< The same with the ladder: later where there was no time for it or it paused.
    double doublings;       ///< Of light on the way, on that date; negative: it gets darker.
    KelvinDelta colder;     ///< How much colder the nights become; negative: warmer.
    std::vector<LadderItem> items; ///< By their first day, but for stepping down, which stands last.
    std::vector<calendar::Date> paused; ///< Days on which the forecast let nothing happen.
    bool no_spot_apart = false;         ///< Coming in, where no indoor spot is apart from other plants.
};

/// Temperature below which a plant is not put out while it hardens: its safe night, and 7.2 C at least for
/// kinds that frost damages. Source: UC Master Gardeners' rule for seedlings (no tender plant below 45 F).
Celsius hardening_floor(const plants::ColdLines& lines);

/// Days of hardening: 7, two more for each doubling of light beyond the first, one for each 2 K by which
/// nights get colder beyond 5 K, at most 14.
/// Source: the range of 7 to 14 days is that of extension advice; the scale is common practice, no source.
int days_of_hardening(double doublings, KelvinDelta colder);

/// Weeks of stepping down to a darker place: 4, and two for each halving of light beyond the first, at most 8;
/// 0 where it gets no darker than by half. Source: K-State Extension (4 to 8 weeks, by the drop of light); the
/// scale is common practice, no source.
int weeks_of_stepping_down(double doublings);

/// The ladder out: hours from 1 to 10, full shade for the first third of the days, half for the second, none
/// for the last; no shade where the light does not grow by half. It ends before the night of `planned`, or
/// begins on `today` where that is too late.
Ladder ladder_out(const home::Plant& plant, const home::Spot& from, const home::Spot& to,
                  const home::SpotClimate& climate, calendar::Date planned, calendar::Date today);

/// The ladder in: a week of shade before, inspection and soak, the carry, 14 days apart with inspections after
/// 7 and 14 days (a crawler stage of mealybugs at room temperature), weeks of stepping down.
/// Sources: shade Oklahoma State Extension; soak of 15 minutes K-State and University of Tennessee Extension.
Ladder ladder_in(const home::Plant& plant, const home::Spot& from, const home::Spot& to,
                 const home::SpotClimate& climate, calendar::Date planned, bool spot_apart);

/// The ladders of a plan whose last item is on `today` or later, by date.
std::vector<Ladder> ladders_of(const home::Household& household, const home::SpotClimate& climate,
                               const YearPlan& plan, calendar::Date today);

/// A ladder out held up by a forecast: days are passed over whose warmth while the plant is out would lie
/// below its floor, and the first night out waits for two nights in a row above its safe night. The warmth is
/// taken as the night's low at the spot and 0.6 of the usual day's range (common practice, no source). Days
/// without a forecast hold nothing up.
Ladder held_up(const Ladder& ladder, const home::Plant& plant, const home::Spot& to,
               const home::SpotClimate& climate, const home::NightLog& forecasts);

} // namespace lathhouse::plan
