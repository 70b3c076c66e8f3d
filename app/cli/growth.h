#pragma once

#include "app/cli/commands.h"
#include "app/words/growth_verdict_words.h"
#include "core/growth/event_window.h"
#include "core/growth/recovery.h"
#include "core/growth/repeatability.h"

#include <optional>
#include <string>
#include <vector>

namespace lathhouse::cli {

struct GrowthOptions {
    std::string series;
    std::string compare;
    std::vector<std::string> plants;
    std::vector<std::string> events;
    std::string kind;
    std::string measure;
    std::string spared;
    std::vector<std::string> spared_plants;
    std::string grown;
    PlaceOptions place;
};

/// A series that is to be judged, wherever it came from.
struct GrowthQuestion {
    std::string title;
    growth::SeriesKind kind;
    std::vector<growth::Measured> measured;
    calendar::Date event;
    std::string event_word; ///< "repotted" ...; empty where only its date is known.
    std::vector<growth::DatedEvent> others;
    growth::GrowthClock clock = growth::GrowthClock::calendar();
    std::optional<growth::SparedClock> spared = {};
    words::ClockKind clock_kind = words::ClockKind::Calendar;
};
Answer answer_of(const GrowthQuestion& question);

/// One plant of a comparison.
struct ComparedSeries {
    std::string plant;
    std::string group; ///< Empty where all met the event.
    std::vector<growth::SeriesReading> readings;
};
/// Before and after an event over several plants. Errors: WrongUsage for more than two groups.
Result<Answer> compare_plants(growth::SeriesKind kind, calendar::Date event,
                              const std::vector<ComparedSeries>& plants, const growth::GrowthClock& clock,
                              words::ClockKind clock_kind);

/// The `--plant` forms: one plant judged, several compared. Errors: as household_facts, NotFound, WrongUsage.
Result<Answer> growth_of_plants(const Globals& globals, const GrowthOptions& options,
                                const std::vector<calendar::Date>& events);

} // namespace lathhouse::cli
