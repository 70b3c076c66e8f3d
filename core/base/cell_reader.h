#pragma once

#include "core/base/csv.h"
#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse {

/// Reads the cells of one row of a table and keeps the first thing that was wrong, so that a row is read in
/// one go and asked once whether it was well formed. What was wrong reads as a blank, 0 or nothing.
class CellReader {
public:
    CellReader(const CsvTable& table, std::size_t row) : table_(&table), row_(row) {}

    /// Trimmed; may be blank.
    std::string text(std::string_view column);
    /// Trimmed; a blank is wrong.
    std::string filled(std::string_view column);
    /// A blank is wrong.
    double number(std::string_view column);
    std::optional<double> number_if_any(std::string_view column);
    /// The pieces between ';', trimmed, without blank ones.
    std::vector<std::string> list(std::string_view column);
    /// As list; none is wrong.
    std::vector<std::string> filled_list(std::string_view column);
    /// "yes" or "no".
    bool yes(std::string_view column);
    /// The value that `value_of` gives for the cell's word; wrong where it gives nothing.
    template <class Value, class ValueOf>
    Value word(std::string_view column, ValueOf value_of, Value otherwise)
    {
        const auto written = text(column);
        const std::optional<Value> found = value_of(written);
        if (!found) {
            fail_at("the word \"" + written + "\" is not known in " + std::string{column});
            return otherwise;
        }
        return *found;
    }
    /// Notes something wrong with the row.
    void fail_at(std::string_view what);
    /// Errors: Malformed with table and line.
    Result<void> outcome() const;

private:
    const CsvTable* table_;
    std::size_t row_;
    std::optional<Error> error_;
};

} // namespace lathhouse
