#pragma once

#include "core/home/household.h"
#include "core/plan/pest_course.h"
#include "core/plan/round.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace lathhouse::models {

/// A task of the day as the page shows it.
struct RoundRow {
    plan::Task task;
    std::string spot;  ///< Name; empty where it is done nowhere in particular.
    std::string plant; ///< Name; empty where none is concerned.
    std::string words; ///< What to do.
    std::string why;
    std::vector<std::string> cautions;
    bool done = false;
    std::optional<plants::FeedClass> feeder = {}; ///< Of the plant's kind, where the tables know it.

    /// Nitrogen of a feed; 0 where the task is none.
    double feed_ppm() const;
    /// Whether something is to be sown, so that ticking it makes a tray.
    bool is_sowing() const;
    /// Whether seedlings are to be potted, so that ticking it makes plants.
    bool is_potting() const;
    bool is_treating() const;
    bool is_hygiene() const { return std::holds_alternative<plan::Hygiene>(task.matter); }
};

/// The fresh round, with what was done and has therefore gone out of it still in its old place. The washing
/// steps around a class stay as long as something done in that class is shown: they are due just then.
///
/// done: keys of what was ticked.
std::vector<RoundRow> with_done_rows(std::vector<RoundRow> fresh, const std::vector<RoundRow>& before,
                                     const std::set<std::string>& done);

} // namespace lathhouse::models
