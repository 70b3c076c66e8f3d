#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Columns of text, each as wide as its widest cell; the last is not filled up. The first row is the head.
std::string table(const std::vector<std::vector<std::string>>& rows);

/// `list`, with a command for each thing that a household has several of.
void add_list(Commands& commands);

/// `show`, with a command for each thing that is shown by itself.
void add_show(Commands& commands);

} // namespace lathhouse::cli
