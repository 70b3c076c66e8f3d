#pragma once

#include "core/journal/database.h"
#include "core/home/household.h"

#include <string>
#include <vector>

// Of use inside core/journal only: nothing else sees SQLite.

namespace lathhouse::journal {

/// The plants of a query's condition ("WHERE ..."), by id. Throws SQLite::Exception.
std::vector<home::Plant> load_plants(SQLite::Database& database, const std::string& condition);

} // namespace lathhouse::journal
