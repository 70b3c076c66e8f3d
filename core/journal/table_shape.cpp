#include "core/journal/table_shape.h"

#include <algorithm>
#include <cstring>

namespace lathhouse::journal {
namespace {

exchange::CellType type_of(const std::string& declared)
{
    if (declared == "INTEGER" || declared == "INT") {
        return exchange::CellType::Integer;
    }
    if (declared == "REAL") {
        return exchange::CellType::Real;
    }
    return declared == "BLOB" ? exchange::CellType::Bytes : exchange::CellType::Text;
}

} // namespace

std::string in_quotes(const std::string& name)
{
    std::string quoted = "\"";
    for (const char letter : name) {
        quoted += letter == '"' ? "\"\"" : std::string{letter};
    }
    return quoted + '"';
}

std::string TableShape::column_list() const
{
    std::string list;
    for (const auto& column : columns) {
        list += (list.empty() ? "" : ", ") + in_quotes(column.name);
    }
    return list;
}

std::vector<TableShape> table_shapes(SQLite::Database& database)
{
    std::vector<TableShape> shapes;
    SQLite::Statement tables{database, "SELECT name, wr FROM pragma_table_list WHERE schema = 'main' AND type = 'table' "
                                       "AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name"};
    while (tables.executeStep()) {
        shapes.push_back({tables.getColumn(0).getString(), {}, {}, tables.getColumn(1).getInt() == 0});
    }
    for (auto& shape : shapes) {
        std::vector<std::pair<int, std::string>> key;
        SQLite::Statement columns{database, "SELECT name, type, \"notnull\", pk FROM pragma_table_info(?)"};
        columns.bind(1, shape.name);
        while (columns.executeStep()) {
            const int place = columns.getColumn(3).getInt();
            const auto type = type_of(columns.getColumn(1).getString());
            // The rows' own number is there whether or not the column says so.
            const bool always = columns.getColumn(2).getInt() != 0 || place > 0;
            shape.columns.push_back({columns.getColumn(0).getString(), type, !always});
            if (place > 0) {
                key.emplace_back(place, columns.getColumn(0).getString());
            }
        }
        std::ranges::sort(key);
        for (auto& [place, name] : key) {
            shape.key.push_back(std::move(name));
        }
    }
    return shapes;
}

exchange::Cell cell_in(const SQLite::Column& column)
{
    if (column.isInteger()) {
        return std::int64_t{column.getInt64()};
    }
    if (column.isFloat()) {
        return column.getDouble();
    }
    if (column.isText()) {
        return column.getString();
    }
    if (column.isBlob()) {
        return exchange::Bytes{column.getString()};
    }
    return exchange::Missing{};
}

void bind_cell(SQLite::Statement& statement, int place, const exchange::Cell& cell)
{
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) {
        statement.bind(place, *whole);
    } else if (const auto* real = std::get_if<double>(&cell)) {
        statement.bind(place, *real);
    } else if (const auto* text = std::get_if<std::string>(&cell)) {
        statement.bind(place, *text);
    } else if (const auto* bytes = std::get_if<exchange::Bytes>(&cell)) {
        statement.bind(place, bytes->content.data(), static_cast<int>(bytes->content.size()));
    } else {
        statement.bind(place);
    }
}

} // namespace lathhouse::journal
