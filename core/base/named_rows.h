#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lathhouse {

/// Our name of a column and what it is called in a file that is not ours.
struct ColumnName {
    std::string ours;
    std::string theirs;
    friend bool operator==(const ColumnName&, const ColumnName&) = default;
};

/// Reads "date=Day,low_c=Tmin". known: the names that may stand on the left.
/// Errors: Malformed (no '=', a side that is empty), WrongUsage (a name that is not known; the known are
/// listed).
Result<std::vector<ColumnName>> parse_column_names(std::string_view text,
                                                   std::span<const std::string_view> known);

/// Rows of text with named columns, from a file that another program may have written.
///
/// Two forms, told apart by the first character that is not blank:
/// - Separated text: a head line of names; fields apart by commas, or by semicolons or tabs where the head
/// line
///   has one. Beyond a comma-separated file a number may have a decimal comma. Else as CsvTable reads it.
/// - JSON ('{' or '['): a name is a path of keys with points between them; lists on the way are walked
/// through,
///   so `nights.low_c` finds the figures of a list of objects as well as a list of figures. Without a mapping
///   a name is looked for at the top, then under `nights`. A single value counts for every row. `null` is
///   blank.
/// A byte order mark is skipped. Names that nobody asks for are passed over.
class NamedRows {
public:
    static constexpr std::size_t kMostBytes = 8'000'000;
    static constexpr std::size_t kMostRows = 100'000;

    /// wanted: our names of the columns to look for. names: mapping of those that are called otherwise.
    /// Errors: Malformed with the line where there is one (empty, too large, broken form, a mapped column
    /// that is not there, columns of different lengths).
    static Result<NamedRows> parse(std::string_view text, std::string source_name,
                                   std::span<const std::string_view> wanted,
                                   std::span<const ColumnName> names = {});

    std::size_t row_count() const { return places_.size(); }
    bool has(std::string_view ours) const { return column(ours).has_value(); }
    /// Errors: Malformed, naming the file and the columns that it has.
    Result<void> require(std::string_view ours) const;
    /// Trimmed text of a cell; empty where the column is not there.
    std::string_view text(std::size_t row, std::string_view ours) const;
    /// nullopt where the cell is blank. Errors: Malformed with file, place and what stands there (NaN too).
    Result<std::optional<double>> number(std::size_t row, std::string_view ours) const;
    /// "FILE, line 3: what", or "FILE, row 3: what" for JSON.
    Error error_at(std::size_t row, const Said& what) const;
    const std::string& source_name() const { return source_name_; }

private:
    static Result<NamedRows> parse_separated(std::string_view text, std::string source_name,
                                             std::span<const std::string_view> wanted,
                                             std::span<const ColumnName> names);
    static Result<NamedRows> parse_json(std::string_view text, std::string source_name,
                                        std::span<const std::string_view> wanted,
                                        std::span<const ColumnName> names);
    std::optional<std::size_t> column(std::string_view ours) const;

    std::string source_name_;
    std::string found_names_; ///< Of the file, for errors.
    bool decimal_commas_ = false;
    std::vector<std::string> ours_;
    std::vector<std::vector<std::string>> columns_; ///< One for each of `ours_`.
    std::vector<std::size_t> places_;               ///< Lines of the file, or rows from 1 of JSON.
    bool places_are_lines_ = true;
};

} // namespace lathhouse
