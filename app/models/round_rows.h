#pragma once

#include "app/words/words.h"
#include "core/home/household.h"
#include "core/plan/pest_course.h"
#include "core/plan/round_parts.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
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
    bool pinned = false; ///< A carry to where the grower keeps the plant.
    bool done = false;
    std::optional<calendar::Instant> done_at = {}; ///< When it was ticked.
    std::optional<plants::FeedClass> feeder = {}; ///< Of the plant's kind, where the tables know it.

    /// Nitrogen of a feed; 0 where the task is none.
    double feed_ppm() const;
    /// Whether something is to be sown, so that ticking it makes a tray.
    bool is_sowing() const;
    /// Whether seedlings are to be potted, so that ticking it makes plants.
    bool is_potting() const;
    bool is_treating() const;
    bool is_carry_in() const { return std::holds_alternative<plan::CarryInTonight>(task.matter); }
    bool is_hygiene() const { return std::holds_alternative<plan::Hygiene>(task.matter); }
};

/// Keys of tasks and when they were ticked.
using TickedTasks = std::map<std::string, calendar::Instant>;

/// The tasks of the parts' today in the order of the round.
std::vector<RoundRow> rows_of(const plan::HouseholdFacts& facts, const plan::RoundParts& parts, words::UnitSystem units);

/// What was ticked on that day, by the journal: every event that ticking makes carries its task's key; putting off and
/// leaving out do so as well.
TickedTasks ticked_on(std::span<const home::Event> events, calendar::Date day);

/// Every plant that a tick of that day moved stands where its journal had it before. task: with what the key of such a task
/// begins; empty: with anything.
home::Household put_back(home::Household household, std::span<const home::Event> events, calendar::Date day, std::string_view task = {});

/// The household as it was before anything was ticked that day.
plan::HouseholdFacts before_ticks(plan::HouseholdFacts facts, calendar::Date day);

/// A plant that is not fed for what happened to it, and until when.
struct WaitingPlant {
    std::string plant;
    std::string spot; ///< Name; empty where it stands nowhere.
    std::string why;
    std::optional<calendar::Date> until; ///< Fed again from then on; none where an event ends it.
};
/// Those that rest, or that stand too cool or too dark, are not among them: the year tells of them.
std::vector<WaitingPlant> waiting_plants(const home::Household& household, const plan::RoundParts& parts);

/// The fresh round, with what was done and has therefore gone out of it still in its old place. The washing
/// steps around a class stay as long as something done in that class is shown: they are due just then.
///
/// done: keys of what was ticked.
std::vector<RoundRow> with_done_rows(std::vector<RoundRow> fresh, const std::vector<RoundRow>& before,
                                     const TickedTasks& done);

} // namespace lathhouse::models
