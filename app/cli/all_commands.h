#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Declares every command; a new command gets its `add_` function here and in all_commands.cpp.
void add_all(Commands& commands);

} // namespace lathhouse::cli
