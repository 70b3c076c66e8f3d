#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Columns of text, each as wide as its widest cell; the last is not filled up. The first row is the head.
std::string table(const std::vector<std::vector<std::string>>& rows);

/// `list plants`, `list spots` and `list readings`.
void add_list(Commands& commands);

/// `show place`, `show spot` and `show forecasts`.
void add_show(Commands& commands);

} // namespace lathhouse::cli
