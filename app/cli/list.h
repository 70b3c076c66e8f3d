#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Columns of text, each as wide as its widest cell; the last is not filled up. The first row is the head.
std::string table(const std::vector<std::vector<std::string>>& rows);

/// `list plants`, `list spots`, `list readings` and `list kinds`.
void add_list(Commands& commands);

/// `show place`, `show spot`, `show forecasts` and `show kind`.
void add_show(Commands& commands);

} // namespace lathhouse::cli
