#pragma once

#include "app/cli/commands.h"

namespace lathhouse::cli {

/// Declares every command; a new command gets its `add_` function here and in all_commands.cpp.
void add_all(Commands& commands);

void add_add(Commands& commands); ///< add plant, add spot
void add_backup(Commands& commands);
void add_chance(Commands& commands);
void add_check(Commands& commands);
void add_climate(Commands& commands);
void add_coast(Commands& commands);
void add_feeding(Commands& commands);
void add_after_cold(Commands& commands);
void add_course(Commands& commands);
void add_damage(Commands& commands);
void add_frost(Commands& commands);
void add_growth(Commands& commands);
void add_harden(Commands& commands);
void add_log(Commands& commands);
void add_light(Commands& commands);
void add_mix(Commands& commands);
void add_map(Commands& commands);
void add_night(Commands& commands);
void add_normals(Commands& commands);
void add_photo(Commands& commands);
void add_pin(Commands& commands); ///< pin, unpin
void add_place(Commands& commands);
void add_export(Commands& commands);
void add_restore(Commands& commands);
void add_round(Commands& commands);
void add_spray_check(Commands& commands);
void add_stations(Commands& commands);
void add_tonight(Commands& commands);
void add_towns(Commands& commands);
void add_water(Commands& commands);
void add_where(Commands& commands);

} // namespace lathhouse::cli
