#include "app/cli/all_commands.h"

#include "app/cli/demo.h"
#include "app/cli/list.h"
#include "app/cli/moves.h"
#include "app/cli/sowing.h"
#include "app/cli/sun.h"
#include "app/cli/tables.h"

namespace lathhouse::cli {

void add_all(Commands& commands)
{
    add_add(commands);
    add_after_cold(commands);
    add_backup(commands);
    add_chance(commands);
    add_check(commands);
    add_climate(commands);
    add_coast(commands);
    add_course(commands);
    add_damage(commands);
    add_demo(commands);
    add_feeding(commands);
    add_frost(commands);
    add_growth(commands);
    add_harden(commands);
    add_import(commands);
    add_light(commands);
    add_list(commands);
    add_log(commands);
    add_mix(commands);
    add_map(commands);
    add_moves(commands);
    add_night(commands);
    add_normals(commands);
    add_photo(commands);
    add_pin(commands);
    add_place(commands);
    add_export(commands);
    add_restore(commands);
    add_round(commands);
    add_show(commands);
    add_spray_check(commands);
    add_sowing(commands);
    add_stations(commands);
    add_sun(commands);
    add_tonight(commands);
    add_towns(commands);
    add_water(commands);
    add_where(commands);
}

} // namespace lathhouse::cli
