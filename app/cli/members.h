#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// `add member [NAME] --kind KIND --reaches SPOT`.
void add_member_command(Commands& commands, CLI::App& add);
/// `list members`.
void add_member_list(Commands& commands, CLI::App& list);
/// `log member ID`: another name, other spots, or off the list.
void add_member_log(Commands& commands, CLI::App& log);

} // namespace lathhouse::cli
