#pragma once

#include "core/exchange/csv_cell.h"
#include "core/journal/database.h"

#include <string>
#include <vector>

// Of use inside core/journal only.

namespace lathhouse::journal {

/// A table as the schema has it.
struct TableShape {
    std::string name;
    std::vector<exchange::Column> columns;
    std::vector<std::string> key; ///< Columns of the primary key, in its order.
    bool has_row_ids;

    /// The columns with quotation marks and commas between.
    std::string column_list() const;
};

/// Tables of the household by name, without SQLite's own. Throws as SQLiteCpp does.
std::vector<TableShape> table_shapes(SQLite::Database& database);

exchange::Cell cell_in(const SQLite::Column& column);
void bind_cell(SQLite::Statement& statement, int place, const exchange::Cell& cell);

std::string in_quotes(const std::string& name);

} // namespace lathhouse::journal
