#include "core/plan/round.h"

#include "core/calendar/date.h"
#include "core/plan/whereabouts.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>
#include <type_traits>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;
using home::EventKind;

constexpr int kDaysOfARound = 6; // What came due in them is met by a round a week.
constexpr int kDaysAfterALook = 2; // A pot that was still moist is looked at again after that.
constexpr int kSowingSettledDays = 180; // What was ticked or left out then was another season's sowing.
constexpr int kMinutesToCarry = 5;
constexpr int kMinutesToWash = 3;

std::string key_of(const std::string& what, std::optional<int> id, const std::string& which)
{
    return what + "/" + (id ? std::to_string(*id) : std::string{"-"}) + "/" + which;
}

const char* word_of(LadderItemKind kind)
{
    switch (kind) {
    case LadderItemKind::OutByDay:
        return "out-by-day";
    case LadderItemKind::FirstNightOut:
        return "first-night-out";
    case LadderItemKind::IntoShade:
        return "into-shade";
    case LadderItemKind::Inspect:
        return "inspect-on-the-way";
    case LadderItemKind::Soak:
        return "soak";
    case LadderItemKind::CarryIn:
        return "carry-in";
    case LadderItemKind::KeepApart:
        return "keep-apart";
    case LadderItemKind::StepDown:
        return "step-down";
    }
    return "";
}

int minutes_of(LadderItemKind kind)
{
    switch (kind) {
    case LadderItemKind::Soak:
        return 20;
    case LadderItemKind::KeepApart:
    case LadderItemKind::StepDown:
        return 2;
    default:
        return kMinutesToCarry;
    }
}

/// Gathers the tasks of one date.
class Gathering {
public:
    Gathering(const home::Household& household, const RoundParts& parts, Date date)
        : household_(household), parts_(parts), date_(date)
    {
        for (const auto& condition : parts.pests.plants) {
            states_[condition.plant] = condition.state;
        }
    }

    std::vector<Task> all() &&
    {
        tonight();
        ladders();
        plain_moves();
        courses();
        for (const auto& look : is_today() ? due_on(parts_.water, date_) : later_looks()) {
            add(look, look.plant, look.due, look.can_wait_until, look.minutes, "water");
        }
        for (const auto& feed : due_on(parts_.feeding, date_)) {
            if (is_today() || feed.due == date_) {
                add(feed, feed.plant, feed.due, feed.can_wait_until, feed.minutes,
                    feed.task == FeedingTask::Feed ? "feed" : "wash-out");
            }
        }
        for (const auto& course : parts_.cold) {
            after_harm(course.prognosis.steps, "after-cold-");
        }
        for (const auto& course : parts_.damage) {
            after_harm(course.steps, "after-damage-");
        }
        if (is_today()) {
            sowing();
        }
        return std::move(tasks_);
    }

private:
    bool is_today() const { return date_ == parts_.today; }

    void add(TaskMatter matter, std::optional<home::PlantId> plant, Date due, Date latest, int minutes,
             const std::string& what)
    {
        const auto* kept = plant ? household_.plant(*plant) : nullptr;
        const auto state = plant ? states_.find(*plant) : states_.end();
        tasks_.push_back({std::move(matter), state == states_.end() ? PestState::Clean : state->second, plant,
                          kept != nullptr ? kept->spot : std::nullopt, due, latest, minutes,
                          key_of(what, plant, calendar::to_text(due))});
    }

    void tonight()
    {
        for (const auto& night : parts_.nights) {
            if (night.ahead.night != date_ + Days{1}) {
                continue;
            }
            for (const auto& plant : night.plants) {
                if (plant.carry_in) {
                    const auto& lines = household_.plant(plant.plant)->lines;
                    const auto to = shelter_of(plant.plant, parts_.plan.plants, household_, date_);
                    add(CarryInTonight{plant.damage, lines.damage_begins, to}, plant.plant, date_, date_,
                        kMinutesToCarry, "tonight");
                }
            }
        }
    }

    void ladders()
    {
        for (const auto& ladder : parts_.ladders) {
            for (const auto& item : ladder.items) {
                if (item.date == date_ || lasts_till_today(item)) {
                    add(LadderStep{item, ladder.to, why_of(ladder.plant, ladder.to, item.date)}, ladder.plant, item.date, std::max(item.until, date_),
                        minutes_of(item.kind), word_of(item.kind));
                }
            }
        }
    }

    /// Why the plan has a plant come to a spot on that date; nullopt where it does not.
    std::optional<Reason> why_of(home::PlantId plant, home::SpotId to, Date on) const
    {
        const auto year = std::ranges::find(parts_.plan.plants, plant, &PlantYear::plant);
        if (year == parts_.plan.plants.end()) {
            return std::nullopt;
        }
        const auto stay = std::ranges::find_if(year->stays, [&](const Stay& of) { return of.spot == to && of.from == on; });
        return stay != year->stays.end() ? std::optional{stay->why} : std::nullopt;
    }

    /// Of what began before today: what goes on for weeks, and a look that the week's round may have missed. All else of a
    /// ladder is planned anew each day.
    bool lasts_till_today(const LadderItem& item) const
    {
        const bool goes_on = item.kind == LadderItemKind::KeepApart || item.kind == LadderItemKind::StepDown;
        const bool look = item.kind == LadderItemKind::Inspect && date_ <= item.date + Days{kDaysOfARound};
        return is_today() && item.date < date_ && ((goes_on && date_ <= item.until) || look);
    }

    void plain_moves()
    {
        for (const auto& year : parts_.plan.plants) {
            auto before = household_.plant(year.plant)->spot;
            for (const auto& stay : year.stays) {
                const auto* from = before ? household_.spot(*before) : nullptr;
                const auto* to = household_.spot(stay.spot);
                const bool door = from != nullptr && home::is_outdoors(from->kind) != home::is_outdoors(to->kind);
                if (stay.from == date_ && before != stay.spot && !door) {
                    add(PlainMove{stay.spot, stay.why}, year.plant, date_, date_ + Days{7}, kMinutesToCarry, "move");
                }
                before = stay.spot;
            }
        }
    }

    void courses()
    {
        for (const auto& step : due_on(parts_.pests, date_)) {
            add(step, step.plant, step.date, step.latest, step.minutes, std::string{to_string(step.act)});
        }
    }

    /// Whether a step is to be done on the date: on its own day, and on today while it can wait or the week's round may
    /// have missed it. What is wet is rinsed at once or not at all.
    template <class Step>
    bool is_open(const Step& step) const
    {
        if (!is_today() || step.date >= date_) {
            return step.date == date_;
        }
        if constexpr (std::is_same_v<Step, DamageStep>) {
            if (step.act == DamageAct::Rinse) {
                return false;
            }
        }
        return date_ <= std::max(step.latest, step.date + Days{kDaysOfARound});
    }

    /// Steps of one course, in order of date; of those of one act that are open the last is enough.
    template <class Step>
    void after_harm(const std::vector<Step>& steps, const std::string& what)
    {
        for (auto step = steps.begin(); step != steps.end(); ++step) {
            const bool again = std::any_of(step + 1, steps.end(), [&](const Step& later) {
                return later.act == step->act && later.date <= date_;
            });
            if (is_open(*step) && !again) {
                add(*step, step->plant, step->date, std::max(step->latest, date_), step->minutes,
                    what + std::string{to_string(step->act)});
            }
        }
    }

    std::vector<WaterDue> later_looks() const
    {
        std::vector<WaterDue> looks;
        for (const auto& look : parts_.water) {
            if (std::ranges::find(look.looks, date_) != look.looks.end()) {
                looks.push_back({look.plant, date_, date_ + Days{kDaysAfterALook}, look.why, 1});
            }
        }
        return looks;
    }

    void sowing()
    {
        for (const auto& task : parts_.sowing.due(date_)) {
            if (date_ > parts_.today && task.from != date_) {
                continue; // As with all else, what is overdue stands in the round of today.
            }
            add(task, std::nullopt, task.from, task.wait_until, task.minutes, "seeds");
            tasks_.back().key = key_of("seeds", task.tray ? task.tray : task.lot,
                                       std::to_string(static_cast<int>(task.kind)) + (task.tray ? "t" : "l"));
        }
    }

    const home::Household& household_;
    const RoundParts& parts_;
    Date date_;
    std::map<home::PlantId, PestState> states_;
    std::vector<Task> tasks_;
};

/// Whether a task of that matter gets another date, and so another key, on each day on which it is still to be done: the
/// plan is made anew every day, and a plant beside an infested one touches it every day.
bool slides(const TaskMatter& matter)
{
    const auto* ladder = std::get_if<LadderStep>(&matter);
    const auto* course = std::get_if<CourseStep>(&matter);
    return std::holds_alternative<WaterDue>(matter) || std::holds_alternative<PlainMove>(matter) ||
           (ladder != nullptr && ladder->item.kind != LadderItemKind::Inspect) ||
           (course != nullptr && course->act == CourseAct::SetApart);
}

/// Whether a task was put off until after that date. One that slides is put off by what it is and of which plant.
bool is_put_off(const Task& task, const home::Event& event, Date date)
{
    const auto named = event.detail("task");
    const std::string_view matter = std::string_view{task.key}.substr(0, task.key.rfind('/') + 1);
    const auto until = calendar::parse_date(event.detail("until"));
    return (named == task.key || (slides(task.matter) && event.happened <= date && named.starts_with(matter))) &&
           until && date < *until;
}

/// Whether the journal says that a task is not for that date any more.
bool is_settled(const Task& task, std::span<const home::Event> events, Date date)
{
    const bool water = std::holds_alternative<WaterDue>(task.matter);
    const auto* seeds = std::get_if<SowingTask>(&task.matter);
    const bool of_a_season = seeds != nullptr && !seeds->tray;
    return std::ranges::any_of(events, [&](const home::Event& event) {
        if (event.kind == EventKind::TaskPostponed) {
            return is_put_off(task, event, date);
        }
        const bool ticked = event.kind == EventKind::TaskDone || event.kind == EventKind::TaskSkipped;
        if (water && ticked && event.plant == task.plant && event.detail("task").starts_with("water/")) {
            return date < event.happened + Days{kDaysAfterALook};
        }
        if (event.detail("task") != task.key) {
            return false;
        }
        return ticked && !(of_a_season && event.happened + Days{kSowingSettledDays} < date);
    });
}

/// Coming in for the night and for good is one carry.
void carry_once(std::vector<Task>& tasks)
{
    for (auto& task : tasks) {
        auto* tonight = std::get_if<CarryInTonight>(&task.matter);
        if (tonight == nullptr) {
            continue;
        }
        const auto same = std::ranges::find_if(tasks, [&](const Task& of) {
            const auto* step = std::get_if<LadderStep>(&of.matter);
            return step != nullptr && step->item.kind == LadderItemKind::CarryIn && of.plant == task.plant;
        });
        if (same != tasks.end()) {
            tonight->to = std::get<LadderStep>(same->matter).to;
            tonight->stays = true;
        }
    }
    std::erase_if(tasks, [&](const Task& task) {
        const auto* step = std::get_if<LadderStep>(&task.matter);
        return step != nullptr && step->item.kind == LadderItemKind::CarryIn && std::ranges::any_of(tasks, [&](const Task& of) {
                   const auto* tonight = std::get_if<CarryInTonight>(&of.matter);
                   return tonight != nullptr && tonight->stays && of.plant == task.plant;
               });
    });
}

Task hygiene(Hygiene step, Date date)
{
    return {step, step == Hygiene::BeforeSuspect ? PestState::Suspect : PestState::Infested,
            {},   {},
            date, date,
            kMinutesToWash, key_of("wash", static_cast<int>(step), calendar::to_text(date))};
}

} // namespace

std::vector<Task> round_of(const home::Household& household, std::span<const home::Event> events,
                           const RoundParts& parts, Date date)
{
    auto tasks = Gathering{household, parts, date}.all();
    std::erase_if(tasks, [&](const Task& task) { return is_settled(task, events, date); });
    carry_once(tasks);
    const auto walking_order = [&](const Task& task) {
        const auto* spot = task.spot ? household.spot(*task.spot) : nullptr;
        return spot != nullptr ? spot->walking_order : 0;
    };
    std::ranges::stable_sort(tasks, {}, [&](const Task& task) {
        return std::tuple{task.state, walking_order(task), task.plant.value_or(0)};
    });
    const auto first_of = [&](PestState state) {
        return std::ranges::find_if(tasks, [state](const Task& task) { return task.state == state; });
    };
    if (const auto infested = first_of(PestState::Infested); infested != tasks.end()) {
        tasks.insert(infested, hygiene(Hygiene::BeforeInfested, date));
    }
    if (const auto suspect = first_of(PestState::Suspect); suspect != tasks.end()) {
        tasks.insert(suspect, hygiene(Hygiene::BeforeSuspect, date));
    }
    if (!tasks.empty() && tasks.back().state != PestState::Clean) {
        auto wash = hygiene(Hygiene::AtTheEnd, date);
        wash.state = tasks.back().state;
        tasks.push_back(std::move(wash));
    }
    return tasks;
}

home::Event done_event(const Task& task, Date date, calendar::Instant now)
{
    home::Event event{task.plant, EventKind::TaskDone, std::nullopt, date, now, "", {{"task", task.key}}};
    if (const auto* feed = std::get_if<FeedingDue>(&task.matter)) {
        event.kind = feed->task == FeedingTask::Feed ? EventKind::Fed : EventKind::Leached;
        if (feed->nitrogen_ppm) {
            event.details["ppm"] = std::to_string(std::lround(*feed->nitrogen_ppm));
        }
    } else if (const auto* step = std::get_if<CourseStep>(&task.matter)) {
        event.kind = step->act == CourseAct::Treat      ? EventKind::Treated
                     : step->act == CourseAct::SetApart ? EventKind::Isolated
                                                        : EventKind::Inspected;
    } else if (const auto* move = std::get_if<PlainMove>(&task.matter)) {
        event.kind = EventKind::Moved;
        event.spot = move->to;
    } else if (const auto* tonight = std::get_if<CarryInTonight>(&task.matter); tonight != nullptr && tonight->stays) {
        event.kind = EventKind::Moved;
        event.spot = tonight->to;
    } else if (const auto* ladder = std::get_if<LadderStep>(&task.matter)) {
        if (ladder->item.kind == LadderItemKind::FirstNightOut || ladder->item.kind == LadderItemKind::CarryIn) {
            event.kind = EventKind::Moved;
            event.spot = ladder->to;
        } else if (ladder->item.kind == LadderItemKind::Inspect) {
            event.kind = EventKind::Inspected;
        }
    }
    return event;
}

} // namespace lathhouse::plan
