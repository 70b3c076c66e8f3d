#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

void add_sun(Commands& commands);

} // namespace lathhouse::cli
