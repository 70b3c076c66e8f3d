#pragma once

#include "app/cli/commands.h"
#include "core/home/entry.h"
#include "core/home/household.h"

#include <optional>

namespace lathhouse::cli {

/// Adds `event`, `undo`, `redo` and `show` to the group `log`.
void add_log_event(Commands& commands, CLI::App& group);

/// What was taken back or counts again, and the household that it is of, with plants that are gone among the others.
struct TurnedEntry {
    home::Entry entry;
    home::Household household;
};

/// Takes back what was entered last, or lets it count again; nullopt where there is nothing. Errors: as store_of and
/// HouseholdStore::turn_last.
Result<std::optional<TurnedEntry>> turn_last_entry(const Globals& globals, bool undo);

} // namespace lathhouse::cli
