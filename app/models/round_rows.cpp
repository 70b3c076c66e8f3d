#include "app/models/round_rows.h"

#include <algorithm>

namespace lathhouse::models {

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
                                     const std::set<std::string>& done)
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
        row.done = done.contains(row.task.key);
    }
    return fresh;
}

} // namespace lathhouse::models
