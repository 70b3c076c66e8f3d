#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// `list kinds`.
void add_kind_lists(Commands& commands, CLI::App& list);
/// `show kind NAME`.
void add_kind_shows(Commands& commands, CLI::App& show);

} // namespace lathhouse::cli
