#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// `list plants` and `list spots`.
void add_list(Commands& commands);

/// `show place`.
void add_show(Commands& commands);

} // namespace lathhouse::cli
