#pragma once

#include "core/home/history.h"

#include <span>

#include <SQLiteCpp/Database.h>

// Of use inside core/journal only.

namespace lathhouse::journal {

/// Adds the events as rows, within the caller's transaction. Throws SQLite::Exception.
void insert_events(SQLite::Database& database, std::span<const home::Event> events);

} // namespace lathhouse::journal
