#pragma once

#include "core/home/history.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/cold_night.h"
#include "core/plan/feeding.h"
#include "core/plan/hardening.h"
#include "core/plan/pest_course.h"
#include "core/plan/tonight.h"
#include "core/plan/tray_progress.h"
#include "core/plan/water.h"

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace lathhouse::plan {

/// What one does so that pests do not travel with hands, tools and clothes.
enum class Hygiene { BeforeSuspect, BeforeInfested, AtTheEnd };
/// A plant that must not stay out tonight.
struct CarryInTonight {
    Probability damage;
    Celsius line;
    std::optional<home::SpotId> to = {}; ///< See `shelter_of`.
    bool stays = false; ///< The plan's own date of coming in: it is not carried out again.
};
/// A carry that needs no ladder: from one indoor spot to another, or between two outdoors.
struct PlainMove {
    home::SpotId to;
    std::optional<Reason> why = {}; ///< As the plan has it.
};
/// A step of a ladder, with where it leads.
struct LadderStep {
    LadderItem item;
    home::SpotId to;
    std::optional<Reason> why = {}; ///< Of the carry itself, as the plan has it.
};

using TaskMatter = std::variant<Hygiene, CarryInTonight, PlainMove, LadderStep, CourseStep, WaterDue, FeedingDue,
                                ColdStep, DamageStep, SowingTask>;

/// One thing to do.
struct Task {
    TaskMatter matter;
    PestState state; ///< Of the plant; clean where none is concerned.
    std::optional<home::PlantId> plant;
    std::optional<home::SpotId> spot; ///< Where it is done; none for seeds without a place.
    calendar::Date due;
    calendar::Date latest; ///< It can wait until then.
    int minutes;           ///< About; common practice, no source.
    /// Names the matter, the plant and the due date: what was ticked, put off or skipped is known by it.
    std::string key;
};

/// Everything that gives tasks, as the other rooms of the planner have worked it out for `today`.
struct RoundParts {
    calendar::Date today;
    YearPlan plan;
    std::vector<Ladder> ladders; ///< Held up by the forecast; last those behind plants that came in (hardening_done.h).
    PestCoursePlan pests;
    std::vector<WaterLook> water;
    std::vector<PlantFeeding> feeding;
    std::vector<ColdCourse> cold;
    std::vector<DamageCourse> damage;
    std::vector<NightPlan> nights;   ///< Of the forecast; empty where none is known.
    SowingOutlook sowing;
    std::vector<ComingNight> tonight = {}; ///< Of plants outdoors, with a forecast or without.
    std::optional<climate::PlaceNights> place_nights = {}; ///< What the chances of a season rest on.
};

/// The day's tasks, in the order of the round. Clean plants first, then suspect, then infested ones; within a
/// class by walking order of the spots, within a spot plant by plant. Hygiene stands between the classes and
/// at the end. On the parts' today what is overdue is there as well; of steps after harm and of looks after a carry what came
/// due in the six days before, so that a round a week meets them (common practice, no source).
///
/// Events of kind task_done, task_skipped and task_postponed (details `task`, the key, and `until`) take tasks
/// out. Where the plan has a plant come in on the evening on which it must, that is one task. What gets a new date each day (a look at the water, a carry, setting a suspect apart) is put off whatever its
/// date. A look at the water that was ticked without a watering is due again after two days.
std::vector<Task> round_of(const home::Household& household, std::span<const home::Event> events,
                           const RoundParts& parts, calendar::Date date);

/// What ticking a task writes into the journal: the event that it is (watered is not one of them: a look need
/// not end in water), else task_done with the task's key.
home::Event done_event(const Task& task, calendar::Date date, calendar::Instant now);

} // namespace lathhouse::plan
