#include "app/cli/all_commands.h"

namespace lathhouse::cli {

void add_all(Commands&) {}

} // namespace lathhouse::cli
