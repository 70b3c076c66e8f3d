#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

void add_demo(Commands& commands);

} // namespace lathhouse::cli
