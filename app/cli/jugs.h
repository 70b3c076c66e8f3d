#pragma once

#include "app/cli/commands.h"
#include "core/home/jug.h"

#include <vector>

namespace lathhouse::cli {

/// `add jug NAME AMOUNT`.
void add_jug_command(Commands& commands, CLI::App& add);
/// `list jugs`.
void add_jug_list(Commands& commands, CLI::App& list);
/// Jugs of the caller's household; none where there is no household.
Result<std::vector<home::Jug>> jugs_of(const Globals& globals);

} // namespace lathhouse::cli
