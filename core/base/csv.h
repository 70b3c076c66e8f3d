#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace lathhouse {

/// A comma-separated table held in memory: a head line of column names and rows of text.
///
/// Form: RFC 4180 (quotes, doubled quotes, line ends inside quotes), UTF-8 with or without a byte order mark.
/// Lines that begin with '#' before the head are skipped. A row with another number of fields than the head
/// is an error that names its line. Not for files of many megabytes: those are read as a stream by their own
/// reader.
class CsvTable {
public:
    /// source_name: how errors name the table, usually the file's name. separator: what stands between fields.
    /// Errors: Malformed with the line.
    static Result<CsvTable> parse(std::string_view text, std::string source_name, char separator = ',');
    /// Errors: NotFound, Unreadable (a folder too), Malformed.
    static Result<CsvTable> read(const std::filesystem::path& file);

    std::size_t row_count() const { return rows_.size(); }
    const std::vector<std::string>& column_names() const { return names_; }
    std::optional<std::size_t> column(std::string_view name) const;
    /// Errors: Malformed, naming the table and the column that it lacks.
    Result<std::size_t> require_column(std::string_view name) const;
    /// Text of a cell as it stands. Precondition: both in range.
    const std::string& at(std::size_t row, std::size_t column) const { return rows_[row].fields[column]; }
    /// Line of the row's first character in the text, from 1.
    std::size_t line(std::size_t row) const { return rows_[row].line; }
    const std::string& source_name() const { return source_name_; }

    /// The cell's number; nullopt where it is blank. Errors: Malformed with table, line, column and what
    /// stands there.
    Result<std::optional<double>> number(std::size_t row, std::size_t column) const;
    /// An error of the given row: "NAME, line N: what".
    Error error_at(std::size_t row, const Said& what) const;

private:
    struct Row {
        std::vector<std::string> fields;
        std::size_t line = 0;
    };
    std::string source_name_;
    std::vector<std::string> names_;
    std::unordered_map<std::string, std::size_t> index_;
    std::vector<Row> rows_;
};

/// A field as RFC 4180 writes it: quoted only where it must be.
std::string csv_field(std::string_view text);

/// The whole file as text. Errors: NotFound, Unreadable (a folder too), each with the file's name.
Result<std::string> read_text_file(const std::filesystem::path& file);

/// Writes beside the file, brings that to the disk and then renames, so that a reader sees the old file or the whole new
/// one, after a power cut too.
/// Errors: Unwritable.
Result<void> write_file_whole(const std::filesystem::path& file, std::string_view content);

} // namespace lathhouse
