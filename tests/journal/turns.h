#pragma once

#include "core/journal/household_store.h"

namespace lathhouse::journal {

inline constexpr auto kUndo = HouseholdStore::Direction::Undo;
inline constexpr auto kRedo = HouseholdStore::Direction::Redo;

} // namespace lathhouse::journal
