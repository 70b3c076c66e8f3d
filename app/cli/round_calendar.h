#pragma once

#include "app/words/words.h"
#include "core/exchange/icalendar.h"
#include "core/plan/round_parts.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace lathhouse::cli {

/// The year's tasks as all-day events: carries with their days of hardening in one event, feeds, washing out,
/// courses, looks after cold and chemicals, seeds. Looks at the water are left out, since each waits for the one
/// before. An event is named by its matter, its plant and how many of its kind come before it, not by its date, so
/// that a second export moves what has moved.
std::vector<exchange::CalendarEvent> round_calendar(const plan::HouseholdFacts& facts,
                                                    const plan::RoundParts& parts, int days,
                                                    words::UnitSystem units);

/// Writes them into a file, which replaces one that is there; how many there are. alarm: hours before midnight of the
/// day; one that would have sounded by the hour that `at` is at the household's place is left out, and where its time zone is
/// not known all of today's. Errors: as write_file_whole.
Result<std::size_t> write_round_calendar(const plan::HouseholdFacts& facts, calendar::Date today, calendar::Instant at, int days,
                                         std::optional<int> alarm, words::UnitSystem units, const std::filesystem::path& file);

} // namespace lathhouse::cli
