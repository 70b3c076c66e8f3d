#include "app/models/round_rows.h"

#include "app/words/growing_words.h"
#include "app/words/round_words.h"
#include "core/plan/cold_night.h"
#include "core/plan/growth_index.h"
#include "core/plan/withheld.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lathhouse::models {

namespace {

/// Whether the grower keeps the plant where a task carries it.
bool carries_to_a_pin(const plan::Task& task, const plan::RoundParts& parts)
{
    const auto* move = std::get_if<plan::PlainMove>(&task.matter);
    const auto* ladder = std::get_if<plan::LadderStep>(&task.matter);
    if (move == nullptr && ladder == nullptr) {
        return false;
    }
    const auto to = move != nullptr ? move->to : ladder->to;
    const auto year = std::ranges::find(parts.plan.plants, task.plant, [](const plan::PlantYear& of) { return std::optional{of.plant}; });
    if (year == parts.plan.plants.end()) {
        return false;
    }
    const auto stay = std::ranges::find_if(year->stays, [&](const plan::Stay& of) { return of.spot == to && of.to >= parts.today; });
    return stay != year->stays.end() && stay->why.kind == plan::ReasonKind::PinnedThere;
}

RoundRow row_of(plan::Task task, const home::Household& household, const plan::RoundParts& parts, words::UnitSystem units)
{
    const auto* spot = task.spot ? household.spot(*task.spot) : nullptr;
    const auto* plant = task.plant ? household.plant(*task.plant) : nullptr;
    RoundRow row{.task = std::move(task),
                 .spot = spot != nullptr ? spot->name : std::string{},
                 .plant = plant != nullptr ? plant->name : std::string{},
                 .words = {},
                 .why = {},
                 .cautions = {}};
    row.words = words::task(row.task, household, units);
    row.why = words::task_why(row.task, household, units);
    row.cautions = words::task_cautions(row.task, household);
    row.pinned = carries_to_a_pin(row.task, parts);
    if (const auto* kind = plant != nullptr ? plan::kind_of(*plant) : nullptr) {
        row.feeder = kind->feed;
    }
    return row;
}

bool ticks(const home::Event& event, calendar::Date day)
{
    return event.happened == day && !event.detail("task").empty() && event.kind != home::EventKind::TaskPostponed &&
           event.kind != home::EventKind::TaskSkipped;
}

bool happened_to_it(plan::WithheldWhy why)
{
    using enum plan::WithheldWhy;
    return why == ChemicalDamage || why == SickRoots || why == Chilled || why == Infested || why == Isolated || why == Repotted || why == Bought ||
           why == Moved;
}

} // namespace

std::vector<RoundRow> rows_of(const plan::HouseholdFacts& facts, const plan::RoundParts& parts, words::UnitSystem units)
{
    const auto household = facts.household();
    std::vector<RoundRow> rows;
    for (auto& task : plan::round_of(household, facts.events, parts, parts.today)) {
        rows.push_back(row_of(std::move(task), household, parts, units));
    }
    return rows;
}

TickedTasks ticked_on(std::span<const home::Event> events, calendar::Date day)
{
    TickedTasks ticked;
    for (const auto& event : events) {
        if (ticks(event, day)) {
            ticked.insert_or_assign(std::string{event.detail("task")}, event.entered);
        }
    }
    return ticked;
}

home::Household put_back(home::Household household, std::span<const home::Event> events, calendar::Date day, std::string_view task)
{
    const auto is_tick = [&](const home::Event& event) { return ticks(event, day) && event.detail("task").starts_with(task); };
    for (auto& plant : household.plants) {
        const auto moves = [&](const home::Event& event) { return event.kind == home::EventKind::Moved && event.plant == plant.id && event.spot; };
        if (std::ranges::none_of(events, [&](const home::Event& event) { return moves(event) && is_tick(event); })) {
            continue;
        }
        for (const auto& event : events) { // Oldest first: the last one holds.
            if (moves(event) && !is_tick(event)) {
                plant.spot = event.spot;
            }
        }
    }
    return household;
}

plan::HouseholdFacts before_ticks(plan::HouseholdFacts facts, calendar::Date day)
{
    facts.as_told = put_back(std::move(facts.as_told), facts.events, day);
    std::erase_if(facts.events, [day](const home::Event& event) { return ticks(event, day); });
    return facts;
}

std::vector<WaitingPlant> waiting_plants(const home::Household& household, const plan::RoundParts& parts)
{
    std::vector<WaitingPlant> waiting;
    for (const auto& of : parts.feeding) {
        const auto* held = plan::withheld_on(of, parts.today);
        const auto* plant = household.plant(of.plant);
        if (held == nullptr || plant == nullptr || !happened_to_it(held->why)) {
            continue;
        }
        const auto* spot = plant->spot ? household.spot(*plant->spot) : nullptr;
        waiting.push_back({plant->name, spot != nullptr ? spot->name : std::string{}, words::why(*held),
                           held->to ? std::optional{*held->to + calendar::Days{1}} : std::nullopt});
    }
    return waiting;
}

double RoundRow::feed_ppm() const
{
    const auto* feed = std::get_if<plan::FeedingDue>(&task.matter);
    return feed != nullptr && feed->task == plan::FeedingTask::Feed ? feed->nitrogen_ppm.value_or(0.0) : 0.0;
}

bool RoundRow::is_sowing() const
{
    const auto* seeds = std::get_if<plan::SowingTask>(&task.matter);
    return seeds != nullptr && seeds->lot && !seeds->tray &&
           (seeds->kind == plan::SowingTaskKind::SowIndoors || seeds->kind == plan::SowingTaskKind::SowOutdoors);
}

bool RoundRow::is_potting() const
{
    const auto* seeds = std::get_if<plan::SowingTask>(&task.matter);
    return seeds != nullptr && seeds->tray && seeds->kind == plan::SowingTaskKind::PotUp;
}

bool RoundRow::is_treating() const
{
    const auto* step = std::get_if<plan::CourseStep>(&task.matter);
    return step != nullptr && step->act == plan::CourseAct::Treat;
}

std::vector<RoundRow> with_done_rows(std::vector<RoundRow> fresh, const std::vector<RoundRow>& before,
                                     const TickedTasks& done)
{
    std::set<plan::PestState> classes; // Of what was done and is shown.
    for (const auto& row : before) {
        if (!row.is_hygiene() && done.contains(row.task.key)) {
            classes.insert(row.task.state);
        }
    }
    auto place = fresh.begin();
    for (const auto& row : before) {
        const auto there =
            std::ranges::find(fresh, row.task.key, [](const RoundRow& of) { return of.task.key; });
        if (there != fresh.end()) {
            place = there + 1;
        } else if (done.contains(row.task.key) || (row.is_hygiene() && classes.contains(row.task.state))) {
            place = fresh.insert(place, row) + 1;
        }
    }
    for (auto& row : fresh) {
        const auto ticked = done.find(row.task.key);
        row.done = ticked != done.end();
        row.done_at = row.done ? std::optional{ticked->second} : std::nullopt;
    }
    return fresh;
}

} // namespace lathhouse::models
