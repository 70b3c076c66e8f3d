#include "core/journal/row_salvage.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <numeric>
#include <optional>
#include <set>
#include <utility>

namespace lathhouse::journal {
namespace {

using SalvagedRow = std::vector<exchange::Cell>;

std::string order_of(const TableShape& table, const char* direction)
{
    if (table.has_row_ids) {
        return std::string{" ORDER BY rowid "} + direction;
    }
    std::string order;
    for (const auto& column : table.key) {
        order += (order.empty() ? " ORDER BY " : ", ") + in_quotes(column) + " " + direction;
    }
    return order;
}

SalvagedRow row_of(SQLite::Statement& rows, const TableShape& table, int first)
{
    SalvagedRow row;
    row.reserve(table.columns.size());
    for (int column = 0; column < static_cast<int>(table.columns.size()); ++column) {
        row.push_back(cell_in(rows.getColumn(first + column)));
    }
    return row;
}

struct NumberedRow {
    std::int64_t id;
    SalvagedRow row;
};

/// Tables whose rows have numbers.
class NumberedSalvage {
public:
    NumberedSalvage(SQLite::Database& database, const TableShape& table) : database_(&database), table_(&table) {}

    std::vector<NumberedRow> rows() && { return std::move(rows_); }
    /// First and last number of each gap; gaps that touch are one.
    std::vector<std::pair<std::int64_t, std::int64_t>> gaps() const
    {
        auto sorted = gaps_;
        std::ranges::sort(sorted);
        std::vector<std::pair<std::int64_t, std::int64_t>> joined;
        for (const auto& gap : sorted) {
            if (!joined.empty() && joined.back().second + 1 == gap.first) {
                joined.back().second = gap.second;
            } else {
                joined.push_back(gap);
            }
        }
        return joined;
    }

    /// Rows from `low` to `high`, both included: from the front until something fails, then from the back, then the
    /// halves of what lies between.
    void read(std::int64_t low, std::int64_t high)
    {
        if (low > high) {
            return;
        }
        const auto front = run(low, high, "ASC");
        if (front.whole) {
            return;
        }
        const auto next = front.last ? *front.last + 1 : low;
        if (front.last && *front.last == high) {
            return;
        }
        const auto back = run(next, high, "DESC");
        const auto end = back.last ? *back.last - 1 : high;
        if (back.whole || next > end) {
            return; // Another way to the page was sound.
        }
        if (next == end || tries_ <= 0) {
            gaps_.emplace_back(next, end);
            return;
        }
        const auto middle = std::midpoint(next, end); // Numbers from a damaged page may lie further apart than one can count.
        read(next, middle);
        read(middle + 1, end);
    }

    struct Run {
        bool whole;
        std::optional<std::int64_t> last;
    };
    Run run(std::int64_t low, std::int64_t high, const char* direction)
    {
        --tries_;
        std::optional<std::int64_t> last;
        try {
            SQLite::Statement rows{*database_, "SELECT rowid, " + table_->column_list() + " FROM " + in_quotes(table_->name) +
                                                   " WHERE rowid BETWEEN ? AND ?" + order_of(*table_, direction)};
            rows.bind(1, low);
            rows.bind(2, high);
            while (rows.executeStep()) {
                const std::int64_t id = rows.getColumn(0).getInt64();
                // A damaged page may give numbers that are not in their order; from there on nothing is to be trusted.
                const bool in_order = id >= low && id <= high && (!last || (direction[0] == 'A' ? id > *last : id < *last));
                if (!in_order) {
                    return {false, last};
                }
                rows_.push_back({id, row_of(rows, *table_, 1)});
                last = id;
            }
            return {true, last};
        } catch (const SQLite::Exception&) {
            return {false, last};
        }
    }

private:
    SQLite::Database* database_;
    const TableShape* table_;
    std::vector<NumberedRow> rows_;
    std::vector<std::pair<std::int64_t, std::int64_t>> gaps_;
    int tries_ = 20'000;
};

Result<void> salvage_numbered(SQLite::Database& database, const TableShape& table, const TakeRow& take,
                              std::vector<LostRows>& lost)
{
    constexpr auto kLeast = std::numeric_limits<std::int64_t>::min();
    constexpr auto kGreatest = std::numeric_limits<std::int64_t>::max();
    NumberedSalvage salvage{database, table};
    const auto front = salvage.run(kLeast, kGreatest, "ASC");
    if (!front.whole) {
        const auto from = front.last && *front.last < kGreatest ? *front.last + 1 : front.last.value_or(kLeast);
        const auto back = salvage.run(from, kGreatest, "DESC");
        if (!back.whole && front.last && back.last) {
            salvage.read(*front.last + 1, *back.last - 1);
        } else if (!back.whole) {
            // One end is out of sight: what can be told is where it begins.
            lost.push_back({table.name, front.last ? std::to_string(*front.last) : "",
                            back.last ? std::to_string(*back.last) : "", 0});
        }
    }
    for (const auto& [low, high] : salvage.gaps()) {
        lost.push_back({table.name, std::to_string(low - 1), std::to_string(high + 1),
                        static_cast<std::uint64_t>(high) - static_cast<std::uint64_t>(low) + 1});
    }
    auto rows = std::move(salvage).rows();
    std::ranges::sort(rows, {}, &NumberedRow::id);
    for (const auto& entry : rows) {
        if (auto taken = take(entry.row); !taken) {
            return taken;
        }
    }
    return {};
}

/// Tables in the order of their key alone: what can be reached from either end.
Result<void> salvage_keyed(SQLite::Database& database, const TableShape& table, const TakeRow& take,
                           std::vector<LostRows>& lost)
{
    const auto run = [&](const char* direction, std::vector<SalvagedRow>& rows) {
        try {
            SQLite::Statement statement{database, "SELECT " + table.column_list() + " FROM " + in_quotes(table.name) +
                                                      order_of(table, direction)};
            while (statement.executeStep()) {
                rows.push_back(row_of(statement, table, 0));
            }
            return true;
        } catch (const SQLite::Exception&) {
            return false;
        }
    };
    std::vector<SalvagedRow> front;
    std::vector<SalvagedRow> back;
    if (!run("ASC", front)) {
        run("DESC", back);
        std::ranges::reverse(back);
        const auto first_key = [&](const SalvagedRow& row) {
            for (std::size_t index = 0; index < table.columns.size(); ++index) {
                if (!table.key.empty() && table.columns[index].name == table.key.front()) {
                    return exchange::csv_cell(row[index], table.columns[index]);
                }
            }
            return std::string{};
        };
        std::set<std::string> known;
        for (const auto& row : front) {
            known.insert(first_key(row));
        }
        std::erase_if(back, [&](const SalvagedRow& row) { return table.key.size() == 1 && known.contains(first_key(row)); });
        lost.push_back({table.name, front.empty() ? "" : first_key(front.back()), back.empty() ? "" : first_key(back.front()), 0});
    }
    for (const auto* rows : {&front, &back}) {
        for (const auto& row : *rows) {
            if (auto taken = take(row); !taken) {
                return taken;
            }
        }
    }
    return {};
}

} // namespace

Result<void> read_rows(SQLite::Database& database, const TableShape& table, const std::filesystem::path& file,
                       const TakeRow& take)
{
    try {
        SQLite::Statement rows{database, "SELECT " + table.column_list() + " FROM " + in_quotes(table.name) + order_of(table, "ASC")};
        while (rows.executeStep()) {
            if (auto taken = take(row_of(rows, table, 0)); !taken) {
                return taken;
            }
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

Result<void> salvage_rows(SQLite::Database& database, const TableShape& table, const TakeRow& take,
                          std::vector<LostRows>& lost)
{
    return table.has_row_ids ? salvage_numbered(database, table, take, lost) : salvage_keyed(database, table, take, lost);
}

} // namespace lathhouse::journal
