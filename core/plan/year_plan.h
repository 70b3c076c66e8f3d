#pragma once

#include "core/calendar/date.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"
#include "core/plan/cold_chances.h"
#include "core/plan/move_problem.h"
#include "core/plan/plan_wishes.h"

#include <chrono>
#include <optional>
#include <vector>

namespace lathhouse::plan {

/// Why a stay begins where and when it does.
enum class ReasonKind {
    StandsThere, ///< It is there already and nothing is better.
    PinnedThere, ///< The grower keeps it there.
    NightsAllow, ///< Out: from that date on the chance of a harmful night up to the turn is within the risk.
    BetterOutside, ///< Out later than the nights allow, when light or warmth outdoors is the better.
    NightsForbid,  ///< In: one night more and the chance of a harmful night since the turn would pass the
                   ///< risk.
    NightsTooCool, ///< In earlier than the risk forces: nights below its safe night begin to tell.
    BetterLight,   ///< Indoors (or outdoors) to a spot whose light suits it better at that time of the year.
    MakesRoom,     ///< To a spot that is not its best, since the better ones are full.
    StandsApart,   ///< Away from the others, since pests were found on it or may be.
    Rests,           ///< Indoors, as it was harmed and nothing else is to trouble it.
    CarriedToNobody, ///< Where it is or was, for the same reason: no spot apart takes it, and it is brought to no clean plant.
    NoneApart,       ///< For the same reason, where it cannot stay where it is, and no spot apart takes it either.
    LeavesSpotApart, ///< Clean, from a spot apart that plants with pests, or that may have them, now need for themselves.
    OutOfReach,      ///< From a spot in reach of a child or an animal that it could hurt.
    KeptFromPests,   ///< Clean, to a spot that is not its best, since at a better one pests were found or may be.
};

struct Reason {
    ReasonKind kind;
    std::optional<Celsius> line;       ///< The plant's line that decides, where one does.
    std::optional<Probability> chance; ///< The accepted chance that goes with the line.
    std::optional<Isolation> apart = {}; ///< With StandsApart, CarriedToNobody and NoneApart.
    std::optional<Rest> rest = {};       ///< With Rests.
};

/// Nights in a row that a plant spends in one spot. A date stands for the night that begins in its evening,
/// so a plant carried out on `from` sleeps there that same night, and on the day after `to` it is carried on.
/// (That night ends on the next morning: it is the *night of* the date after, as climate counts nights.)
struct Stay {
    home::SpotId spot;
    calendar::Date from;
    calendar::Date to; ///< Included.
    Reason why;
    /// Chance of a night at or below the plant's damage line from `from` to the turn; none indoors.
    std::optional<Probability> risk_out;
    /// Chance of one from the turn to the last night of the stay; none indoors.
    std::optional<Probability> risk_in;
};

struct PlantYear {
    home::PlantId plant;
    std::vector<Stay> stays; ///< Cover the 365 nights once, in order.
};

/// Something the plan could not keep to; the plan is then the least bad one.
enum class BreachKind {
    ColdNights,
    InReach,
    OverCapacity,
    NotApart,    ///< It ought to stand apart from other plants.
    PinsDisagree ///< Two pins want it in two places; the one entered last holds.
};
struct Breach {
    BreachKind kind;
    home::PlantId plant;
    home::SpotId spot;
    calendar::Date from;
    calendar::Date to;
};

/// Why a plant stays indoors the whole year where there are spots outdoors.
enum class RefusalKind {
    PinnedIndoors,
    OnlyInReach,  ///< Every spot outdoors is within reach of a child or an animal, and it can hurt them.
    NightsForbid, ///< No spot outdoors is within the risk for as long as a stay lasts.
    KeptApart,    ///< Pests keep it from the others to the end of the plan.
    Full,         ///< It would be better off outdoors, and the spots are full.
    BetterInside  ///< Outdoors there is too much or too little light, heat, rain or wind, or the carry costs more.
};
struct Refusal {
    home::PlantId plant;
    RefusalKind kind;
    std::optional<Celsius> line;       ///< The plant's line that the nights would cross.
    std::optional<Probability> chance; ///< The accepted chance that goes with it.
};

struct YearPlan {
    calendar::Date from;
    Probability risk;
    std::vector<PlantYear> plants;
    /// (cost - bound) / cost, costs counted above each plant's stress at its best admissible spot of every
    /// night. 0 is the best plan there can be.
    double gap;
    std::chrono::duration<double, std::milli> solve_time;
    std::vector<Breach> breaches;
    std::vector<Refusal> refusals;
};

/// Whether a plant may stand out from that evening on or up to it, for one line: see admissible_evenings.
bool evening_allowed(const climate::SeasonChances& season, calendar::Date evening, Probability risk);

/// The nights of `from`'s year on which a plant may stand at an outdoor spot.
///
/// An evening D is admissible for a line and a risk r where the chance of a night at or below the line from D
/// to the turn is at most r, or the chance of one from the turn to the morning after D is; both the damage
/// line with r and the lethal line with r/10 must allow it. The spot's offset with its spread is in the
/// chance.
std::vector<char> admissible_evenings(const home::Plant& plant, const home::Spot& spot,
                                      const ColdChances& chances, calendar::Date from, Probability risk);

/// The dates between which a plant may stand at an outdoor spot, without regard to any other plant.
struct OutdoorWindow {
    enum class State { Ordinary, Never, AllYear };
    State state;
    std::optional<calendar::DayOfYear> out; ///< First evening out, in the half of the year before the turn.
    std::optional<calendar::DayOfYear> in;  ///< The date of coming in: the first evening not outdoors.
};
OutdoorWindow outdoor_window(const home::Plant& plant, const home::Spot& spot, const ColdChances& chances,
                             Probability risk);

constexpr int kNightsOfAPlan = 365;
/// A plant that has been carried stays at least that long (but for the plan's end): hardening and settling in
/// take 7 to 14 days, and a stay that ends within a week of them is not worth its two carries. Common practice,
/// no source.
constexpr int kLeastNightsOfAStay = 21;

/// Stress that a night must save to be spent otherwise than in the accepted plan: small beside any carry, so
/// that a small change of risk or one more plant does not reshuffle the rest. Measured in docs/methods/moves.md.
constexpr float kPriceOfChange = 0.02F;

/// Plans 365 nights from `from`, all plants together (move_problem.h). A plant that is pinned stays where it
/// is pinned (always, or on the nights of a pin of the household). A plant to be isolated stands at a spot
/// that is apart, and no other plant stands there meanwhile; where none takes it, it stays where it is as long as the
/// cold lets it, and the breach says so. Its hours outdoors before a first night out begin when it is clear, as those of a plant that rests after harm when the rest is over. A
/// plant from a tray stands, until it is old enough, where usual nights are at its safe one or above, if any spot is so warm. A night
/// otherwise than in the accepted plan costs kPriceOfChange. Where no spot takes a plant it is put at the least bad one, and the breach is named. Equal
/// input gives an equal plan. docs/methods/moves.md.
YearPlan plan_year(const home::Household& household, const climate::PlaceClimate& climate,
                   const ColdChances& chances, calendar::Date from, Probability risk,
                   Effort effort = Effort::Full, const PlanWishes& wishes = {});

} // namespace lathhouse::plan
