#pragma once

#include "core/home/germination_rate.h"
#include "core/plan/emergence.h"
#include "core/plan/sowing_climate.h"

#include <set>

namespace lathhouse::plan {

/// What keeps a young plant from standing outdoors from a date on.
enum class SowingLimit {
    Today,         ///< Nothing: the season is on.
    DamagingNight, ///< A damaging night is likelier than the accepted risk.
    CoolNights,    ///< Usual nights are at or below the kind's safe night.
    ColdSoil,      ///< The soil is cooler than planting or sowing needs.
    HotSoil,       ///< The soil is warmer than the seed stands.
    Heat,          ///< Days before it is ready are hotter than the kind stands.
    Rain,          ///< The month's rain washes seed beds out and rots young plants.
    SlowGrowth,    ///< Short or cool days: it would not be ready for a very long time.
};

struct DateSpan {
    calendar::Date from;
    calendar::Date to; ///< Included.
};

enum class SowingMethod { Indoors, Outdoors };

/// A sowing that follows another, so that harvests come one after the other.
struct Succession {
    calendar::Date sow;
    calendar::Date ready; ///< For a usual sort.
};

struct Emergence {
    DateSpan dates;
    Celsius mix; ///< Expected on the day of sowing.
    EmergenceBasis basis;
    bool warmed; ///< The room is too cool for the seed: the mix must be warmed to `mix`.
};

/// One season of a kind at a place. Dates that do not apply are nullopt.
struct SowingSeason {
    std::optional<DateSpan> sow_indoors; ///< First the date to aim at, then the last useful one.
    std::optional<calendar::Date> hardening_from;
    std::optional<DateSpan> plant_out;
    std::optional<DateSpan> sow_outdoors;
    std::optional<Emergence> emerge_indoors;
    std::optional<Emergence> emerge_outdoors;
    std::optional<DateSpan> ready; ///< Of the plants raised indoors, for quick to slow sorts.
    std::optional<DateSpan> ready_outdoors;
    std::optional<calendar::Date> last_useful; ///< nullopt where the whole year will do.
    std::set<SowingLimit> begins_by; ///< What kept it from beginning a day earlier.
    std::set<SowingLimit> ends_by;   ///< What keeps a day later from being useful; empty: nothing.
    std::vector<Succession> successions;
    SowingMethod succession_by = SowingMethod::Outdoors;
    bool slow_sorts_at_risk = false; ///< A slow sort would still stand there when damaging nights come.
    bool needs_roof = false;         ///< It falls into months of heavy rain: pots and trays under a roof.
    // On the first day out:
    Probability damage_chance = Probability::literal(0.0); ///< Of a damaging night before the turn.
    Celsius usual_low = Celsius::from_degrees(0.0);
    Celsius soil = Celsius::from_degrees(0.0);

    /// First day outdoors, by whichever way comes first.
    calendar::Date first_out() const;
};

/// What can be done where there is no date.
enum class WayKind {
    QuickSort,          ///< A sort that is quick to flower or crop.
    BiggerTransplants,  ///< Kept indoors for weeks longer.
    UnderGlass,         ///< In an unheated greenhouse or frame.
    GlassAndBigger,     ///< Both, and a quick sort.
    GreaterRisk,        ///< At twice the accepted risk, half at most.
    RaisedIndoorsOnly,  ///< Nothing else helps: it stays on a bright sill or under lamps.
};
struct Way {
    WayKind kind;
    int extra_weeks; ///< Indoors; 0 where none.
    Probability risk;
    std::optional<SowingSeason> season; ///< What that would give; nullopt for RaisedIndoorsOnly.
};

/// Why no date exists, with the figure that shows it.
struct NoDate {
    /// The limit that no day of the year passes; SlowGrowth: the days that pass are too few together.
    SowingLimit reason;
    int longest_stretch_days; ///< Of days on end that pass every limit but the time to be ready.
    int days_needed;          ///< Outdoors, for a usual sort, warm days.
    Celsius warmest_soil;
    Celsius mildest_usual_low;
    Celsius coolest_day_mean;
    std::vector<Way> ways;
};

/// What the grower wants; `rate`: of an own lot, else the kind's least lawful share counts.
struct SowingWishes {
    Probability risk = Probability::literal(0.1);
    int plants = 1;
    Celsius room = Celsius::from_degrees(20.0); ///< Where trays stand (common practice: 20 C).
    std::optional<home::GerminationRate> rate = {};
};

struct SowingPlan {
    const plants::SeedKind* kind;
    std::optional<SowingSeason> season; ///< nullopt: see no_date.
    std::optional<NoDate> no_date;
    /// When seedlings that are there already can be planted out, from today on; nullopt where they cannot or the
    /// kind is not raised indoors.
    std::optional<DateSpan> transplants_out;
    std::optional<int> seeds; ///< For the plants wanted, 95 % sure; nullopt over 100,000.
    double seeds_rate;        ///< Share that is expected to come.
};

/// How sure the number of seeds is.
inline constexpr Probability kSureOfPlants = Probability::literal(0.95);
/// Months with more rain wash out seed beds and rot young plants, millimetres (common practice, no source).
inline constexpr double kWetMonthMillimetres = 250.0;
/// Days shorter than this hardly count for growth, hours (common practice, no source).
inline constexpr double kShortDayHours = 10.0;
/// Hardening begins that long before planting out (CAMG: at least 14 days).
inline constexpr int kHardeningDays = 14;

/// The next season of the kind on or after the climate's date.
///
/// A day out will do where, from it to the day on which a usual sort (the middle of the row's days) is ready:
/// the chance of the kind's damaging night is at most the risk up to the turn, and again from the turn; usual
/// nights stay above its safe night; the day's mean does not exceed growth_most by more than 2 K; and on the
/// day itself the soil at 5 cm has reached the row's least (planting out) or warm (sowing) temperature, the
/// seed stands the soil's heat, and neither the three weeks after it nor the day of readiness lie in a wet
/// month. The season is the first run of such days. Sowing indoors: so many weeks before as the row's middle.
/// Readiness: the row's days count in full on days whose mean reaches growth_best, in part down to
/// growth_base, and not at all on days under 10 hours, so that they are degree days with a ceiling.
/// Where there is no such day though rain is left out, there is a NoDate with what would help.
/// Source and error: docs/methods/sowing.md.
SowingPlan plan_sowing(const plants::SeedKind& kind, const climate::PlaceClimate& place,
                       const SowingClimate& climate, const SowingWishes& wishes);

} // namespace lathhouse::plan
