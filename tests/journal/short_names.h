#pragma once

#include "core/calendar/date.h"
#include "core/journal/household_store.h"

namespace lathhouse::journal {

inline constexpr auto kUndo = HouseholdStore::Direction::Undo;
inline constexpr auto kRedo = HouseholdStore::Direction::Redo;
inline const calendar::Date kDate{2026, 11, 25}; ///< Any day.

} // namespace lathhouse::journal
