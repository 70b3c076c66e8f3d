#pragma once

#include "core/calendar/date.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/plan/pest_clock.h"
#include "core/plants/pest.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::plan {

enum class PestState { Clean, Suspect, Infested };
std::string_view to_string(PestState state); ///< "clean", "suspect", "infested".

enum class PestReason {
    NothingFound,
    Found,         ///< A find on the plant itself.
    SharedSpot,    ///< It stood at one spot with an infested plant.
    FoundAtSpot,   ///< A find that was logged for the spot and no plant.
    SetApart,      ///< It was set apart without a find, as a new plant or one that comes in.
    DeclaredClear, ///< A whole generation without finds, and a clean look after it.
    TimeApartOver  ///< Suspect no more: days and clean looks are enough.
};

/// How much of the pest there is, as the grower says.
enum class PestAmount { Few, Many, Heavy };

/// How a plant stands today; of several pests the worst.
struct PlantCondition {
    home::PlantId plant;
    PestState state;
    PestReason reason;
    calendar::Date since;                     ///< Of the reason; today where nothing was ever found.
    std::optional<home::PlantId> caught_from; ///< With SharedSpot.
    const plants::Pest* pest;                 ///< nullptr while clean, and where the pest has no known name.
};

enum class CourseAct {
    SetApart,
    Treat,
    Inspect,
    LastInspection ///< A clean look here ends the course.
};
/// "set_apart", "treat", "inspect", "last_inspection".
std::string_view to_string(CourseAct act);

/// One thing to do for one plant.
struct CourseStep {
    calendar::Date date; ///< May lie before today: then it is overdue.
    calendar::Date latest;
    home::PlantId plant;
    CourseAct act;
    const plants::Pest* pest; ///< As Course::pest.
    PestState state;
    int minutes; ///< Common practice, no source.
};

/// When a generation is through since the last find, by one study.
struct GenerationByStudy {
    std::string study;
    std::vector<std::string> sources;
    std::optional<calendar::Date> through; ///< nullopt: too cold, the clock does not get there.
    plants::ClockBasis basis;              ///< The weakest of its phases.
};

/// What an infested or suspect plant has before it.
struct Course {
    home::PlantId plant;
    /// The pest by whose clock the course runs.
    const plants::Pest* pest;
    bool pest_is_assumed; ///< It was not named or nobody knows it; the citrus mealybug's clock stands in.
    PestState state;
    calendar::Date started;                          ///< First find, or first contact.
    calendar::Date last_find;                        ///< Last find, or last contact.
    std::vector<GenerationByStudy> generations;      ///< Infested alone.
    std::optional<calendar::Date> clear_not_before;  ///< The latest of the studies; nullopt: too cold.
    bool clock_stands_today;                         ///< Too cold today for the clock to move.
    int days_at_20_degrees;                          ///< A generation at 20 C by the slowest study.
    int treatments;                                  ///< Since the last find.
    int clean_looks;                                 ///< Since the last find or contact.
    int gap_days;                                    ///< Between treatments, from today.
    bool discard_is_a_choice;                        ///< Heavily infested.
    bool released_early;
    std::vector<CourseStep> steps;                   ///< In order of date.
};

/// A plant that must stand away from clean ones.
struct IsolationNeed {
    home::PlantId plant;
    PestState state;
    calendar::Date from;
    std::optional<calendar::Date> until; ///< First day on which it may be back; nullopt: cannot be said.
    bool is_kept;                        ///< It stands apart today.
    std::optional<home::SpotId> place;   ///< Where to put it; nullopt where no spot is fit.
    bool place_is_apart;                 ///< Else it is the least bad.
    int contacts;                        ///< Clean plants that stand at that place.
};

enum class CourseRemarkKind {
    NoSpotApart,    ///< No spot of the household is set down as apart from the others.
    SpotsApartFull, ///< There are such spots, and none has room or is fit for the plant.
    PestNotKnown,   ///< A find names no pest or one that is not in the table.
    PlantWithoutSpot,
    FliesAbout,        ///< A flying pest: every plant of the rooms is looked at, wherever it stands.
    MustBeReported,    ///< Some countries want to hear of this pest.
    OnlySharedSetApart ///< Set apart, yet on one spot with clean plants.
};
struct CourseRemark {
    CourseRemarkKind kind;
    std::optional<home::PlantId> plant;
    std::string text; ///< The name that was not known.
};

struct PestCoursePlan {
    calendar::Date today;
    std::vector<PlantCondition> plants; ///< Every living plant, in the household's order.
    std::vector<Course> courses;
    std::vector<IsolationNeed> isolation; ///< For the planner of moves.
    std::vector<CourseRemark> remarks;
};

/// Low and high of a spot on a date.
using SpotWarmth = std::function<DayWarmth(home::SpotId, calendar::Date)>;

/// Days that a plant stays apart at least, and days before a find in which those beside it may have caught
/// it. Source of the first: BHGMOVE, "a couple of weeks"; the second is common practice.
inline constexpr int kLeastDaysApart = 14;
/// Treatments after the last find. Source: NEEMSG, two to three sprays; the third is the cautious end.
inline constexpr int kTreatmentsAfterFind = 3;

/// States and courses from what happened, up to today.
///
/// It reads events of these kinds, with these details:
/// - pest_found: `pest` (a name of the table), `amount` (few, many, heavy). With a spot and no plant it makes
///   every plant there suspect.
/// - inspected: `found`: blank or "nothing" is a clean look; anything else counts as a find of that pest.
/// - treated: `with`. isolated (a spot where it was put), released, moved, died, given_away.
///
/// Rules. A find makes infested. A plant at one spot with an infested one, neither set apart, from 14 days
/// before its first find on, is suspect. Infested ends with a clean look on or after the day on which a whole
/// generation since the last find is through by the slowest study, at the temperatures of the plant's spots
/// (the rule R106: KARA17 and ARAI96). Suspect ends after 14 days since the last contact and two clean
/// looks one crawler stage apart. Treatments come one crawler stage after one another until
/// kTreatmentsAfterFind have passed since the last find.
PestCoursePlan plan_pest_courses(const home::Household& household, std::span<const home::Event> events,
                                 const SpotWarmth& warmth, calendar::Date today);

/// The steps to do on a date: those of that date, and on the plan's today what is overdue as well. Clean
/// plants have none.
std::vector<CourseStep> due_on(const PestCoursePlan& plan, calendar::Date date);

} // namespace lathhouse::plan
