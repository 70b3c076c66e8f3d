#pragma once

#include "core/calendar/date.h"
#include "core/climate/own_record.h"
#include "core/journal/database.h"

#include <memory>

// Of use inside core/journal only: nothing else sees SQLite.

namespace lathhouse::journal {

/// Writes the record over one that may be there. Inside the caller's transaction; throws as SQLiteCpp does.
void write_own_record(SQLite::Database& database, const climate::OwnRecord& record);
/// Returns whether there was one. Inside the caller's transaction; throws as SQLiteCpp does.
bool remove_own_record(SQLite::Database& database);
/// nullptr where there is none. Errors: Damaged. Throws as SQLiteCpp does.
Result<std::shared_ptr<const climate::OwnRecord>> load_own_record(SQLite::Database& database);

} // namespace lathhouse::journal
