#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Adds `event`, `undo`, `redo` and `show` to the group `log`.
void add_log_event(Commands& commands, CLI::App& group);

} // namespace lathhouse::cli
