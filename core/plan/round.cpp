#include "core/plan/round.h"

#include "core/calendar/date.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;
using home::EventKind;

constexpr int kDaysAfterALook = 2; // A pot that was still moist is looked at again after that.
constexpr int kSowingSettledDays = 180; // What was ticked or left out then was another season's sowing.
constexpr int kMinutesToCarry = 5;
constexpr int kMinutesToWash = 3;

std::string key_of(const char* what, std::optional<int> id, const std::string& which)
{
    return std::string{what} + "/" + (id ? std::to_string(*id) : std::string{"-"}) + "/" + which;
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
        for (const auto& step : due_on(parts_.cold, date_)) {
            add(step, step.plant, step.date, step.latest, step.minutes, "after-cold");
        }
        for (const auto& step : due_on(parts_.damage, date_)) {
            add(step, step.plant, step.date, step.latest, step.minutes, "after-damage");
        }
        if (is_today()) {
            sowing();
        }
        return std::move(tasks_);
    }

private:
    bool is_today() const { return date_ == parts_.today; }

    void add(TaskMatter matter, std::optional<home::PlantId> plant, Date due, Date latest, int minutes,
             const char* what)
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
                    add(CarryInTonight{plant.damage, lines.damage_begins}, plant.plant, date_, date_,
                        kMinutesToCarry, "tonight");
                }
            }
        }
    }

    void ladders()
    {
        for (const auto& ladder : parts_.ladders) {
            for (const auto& item : ladder.items) {
                if (item.date == date_) {
                    add(LadderStep{item, ladder.to}, ladder.plant, item.date, item.until,
                        minutes_of(item.kind), word_of(item.kind));
                }
            }
        }
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
                    add(PlainMove{stay.spot}, year.plant, date_, date_ + Days{7}, kMinutesToCarry, "move");
                }
                before = stay.spot;
            }
        }
    }

    void courses()
    {
        for (const auto& step : due_on(parts_.pests, date_)) {
            add(step, step.plant, step.date, step.latest, step.minutes, to_string(step.act).data());
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
        for (const auto& task : parts_.sowing) {
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

/// Whether the journal says that a task is not for that date any more.
bool is_settled(const Task& task, std::span<const home::Event> events, Date date)
{
    const bool water = std::holds_alternative<WaterDue>(task.matter);
    const auto* seeds = std::get_if<SowingTask>(&task.matter);
    const bool of_a_season = seeds != nullptr && !seeds->tray;
    return std::ranges::any_of(events, [&](const home::Event& event) {
        const bool ticked = event.kind == EventKind::TaskDone || event.kind == EventKind::TaskSkipped;
        if (water && ticked && event.plant == task.plant && event.detail("task").starts_with("water/")) {
            return date < event.happened + Days{kDaysAfterALook};
        }
        if (event.detail("task") != task.key) {
            return false;
        }
        if (event.kind == EventKind::TaskPostponed) {
            const auto until = calendar::parse_date(event.detail("until"));
            return until && date < *until;
        }
        return ticked && !(of_a_season && event.happened + Days{kSowingSettledDays} < date);
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
