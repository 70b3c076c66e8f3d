#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// `sowing`: one crop, one lot, or what can be sown now.
void add_sowing(Commands& commands);

} // namespace lathhouse::cli
