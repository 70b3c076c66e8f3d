#include "app/cli/all_commands.h"

#include "app/cli/sun.h"

namespace lathhouse::cli {

void add_all(Commands& commands)
{
    add_sun(commands);
}

} // namespace lathhouse::cli
