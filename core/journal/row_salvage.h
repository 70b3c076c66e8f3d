#pragma once

#include "core/exchange/csv_cell.h"
#include "core/journal/household_csv.h"
#include "core/journal/table_shape.h"

#include <functional>
#include <vector>

// Of use inside core/journal only.

namespace lathhouse::journal {

using TakeRow = std::function<Result<void>(const std::vector<exchange::Cell>&)>;

/// Hands over every row of the table in the order of its key. Errors: as error_of, what `take` gives.
Result<void> read_rows(SQLite::Database& database, const TableShape& table, const std::filesystem::path& file,
                       const TakeRow& take);

/// Hands over every row that can be read and tells which cannot: a damaged page hides the rows on it, and those beyond
/// are reached from the other end of the table and, where rows have numbers, by halving the gap again and again.
/// lost: is added to. Errors: what `take` gives.
Result<void> salvage_rows(SQLite::Database& database, const TableShape& table, const TakeRow& take,
                          std::vector<LostRows>& lost);

} // namespace lathhouse::journal
