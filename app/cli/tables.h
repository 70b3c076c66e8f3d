#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Declares `export csv` below the command `export`.
void add_export_csv(Commands& commands, CLI::App& group);
void add_import(Commands& commands); ///< import csv

} // namespace lathhouse::cli
