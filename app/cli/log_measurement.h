#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Adds `measurement` and `divided` to the group `log`.
void add_measurement_logs(Commands& commands, CLI::App& group);
/// Adds `measurements` to the group `list`.
void add_measurement_list(Commands& commands, CLI::App& group);
/// Adds `plant`, a plant's whole history, to the group `show`.
void add_plant_show(Commands& commands, CLI::App& group);

} // namespace lathhouse::cli
