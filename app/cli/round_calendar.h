#pragma once

#include "app/words/words.h"
#include "core/exchange/icalendar.h"
#include "core/plan/round_parts.h"

#include <vector>

namespace lathhouse::cli {

/// The year's tasks as all-day events: carries with their days of hardening in one event, feeds, washing out,
/// courses, looks after cold and chemicals, seeds. Looks at the water are left out, since each waits for the one
/// before. An event is named by its matter, its plant and how many of its kind come before it, not by its date, so
/// that a second export moves what has moved.
std::vector<exchange::CalendarEvent> round_calendar(const plan::HouseholdFacts& facts,
                                                    const plan::RoundParts& parts, int days,
                                                    words::UnitSystem units);

} // namespace lathhouse::cli
