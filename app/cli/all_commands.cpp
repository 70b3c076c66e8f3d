#include "app/cli/all_commands.h"

namespace lathhouse::cli {

void add_all(Commands& commands)
{
    add_frost(commands);
    add_normals(commands);
    add_stations(commands);
}

} // namespace lathhouse::cli
