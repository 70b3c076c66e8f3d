#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

namespace lathhouse::exchange {

// Cells of a table that goes out as comma-separated text and comes back the same, without a spreadsheet taking any of
// it for a formula. The rules:
// - nothing at all is an empty cell; so is an empty text in a column that always has one;
// - an empty text in a column that may have nothing is a single apostrophe;
// - a text that begins with = + - @ (also in full width), a tab, a line end or an apostrophe gets an apostrophe before
//   it, which spreadsheets take as the mark of a text; one apostrophe is taken away again on reading;
// - numbers are written so that reading gives the same number, bytes as hexadecimal digits.

enum class CellType { Integer, Real, Text, Bytes };

struct Column {
    std::string name;
    CellType type;
    bool may_be_missing;
};

struct Missing {
    friend bool operator==(Missing, Missing) = default;
};
struct Bytes {
    std::string content;
    friend bool operator==(const Bytes&, const Bytes&) = default;
};
using Cell = std::variant<Missing, std::int64_t, double, std::string, Bytes>;

/// The cell with its quotation marks where RFC 4180 asks for them, and where blanks stand at an end (some readers drop
/// them).
std::string csv_cell(const Cell& cell, const Column& column);

/// What a cell without its quotation marks means. Errors: Malformed (no such number, an empty cell where there must be
/// a number).
Result<Cell> read_csv_cell(std::string_view text, const Column& column);

} // namespace lathhouse::exchange
