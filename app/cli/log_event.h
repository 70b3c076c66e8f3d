#pragma once

#include "app/cli/commands.h"

#include <optional>
#include <string>

namespace lathhouse::cli {

/// Adds `event`, `undo`, `redo` and `show` to the group `log`.
void add_log_event(Commands& commands, CLI::App& group);

/// Takes back what was entered last, or lets it count again: in words; nullopt where there is nothing. Errors: as
/// store_of and HouseholdStore::turn_last.
Result<std::optional<std::string>> turn_last_entry(const Globals& globals, bool undo);

} // namespace lathhouse::cli
