#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// `list spots` and `list readings`.
void add_spot_lists(Commands& commands, CLI::App& list);
/// `show spot ID` and `show forecasts`.
void add_spot_shows(Commands& commands, CLI::App& show);

} // namespace lathhouse::cli
