#include "app/models/round_rows.h"

#include <algorithm>

namespace lathhouse::models {

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
