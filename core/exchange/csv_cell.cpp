#include "core/exchange/csv_cell.h"

#include "core/base/csv.h"

#include <array>
#include <charconv>
#include <system_error>

namespace lathhouse::exchange {
namespace {

/// Whether a spreadsheet may take such a text for a formula, or our reader for one that was marked.
/// Source of the list: OWASP, "CSV Injection" (=, +, -, @, tab, carriage return, line feed, full-width forms).
bool needs_mark(std::string_view text)
{
    if (text.empty()) {
        return false;
    }
    if (std::string_view{"=+-@\t\r\n'"}.find(text.front()) != std::string_view::npos) {
        return true;
    }
    constexpr std::array<std::string_view, 4> kFullWidth{"\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};
    for (const auto sign : kFullWidth) {
        if (text.starts_with(sign)) {
            return true;
        }
    }
    return false;
}

std::string in_marks(std::string_view text)
{
    const auto is_blank = [](char letter) { return letter == ' ' || letter == '\t'; };
    if (!text.empty() && (is_blank(text.front()) || is_blank(text.back())) && csv_field(text) == text) {
        return '"' + std::string{text} + '"';
    }
    return csv_field(text);
}

template <class Number>
std::string shortest(Number value)
{
    std::array<char, 40> digits{};
    const auto [end, failure] = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    return failure == std::errc{} ? std::string{digits.data(), end} : std::string{};
}

template <class Number>
Result<Cell> number_in(std::string_view text, const Column& column)
{
    Number value{};
    const auto [end, failure] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (failure != std::errc{} || end != text.data() + text.size()) {
        return Error{ErrorCode::Malformed,
                     column.type == CellType::Integer
                         ? said("\"%1\" is no whole number (column %2)", text.substr(0, 60), column.name)
                         : said("\"%1\" is no number (column %2)", text.substr(0, 60), column.name)};
    }
    return Cell{value};
}

int hex_digit(char letter)
{
    if (letter >= '0' && letter <= '9') {
        return letter - '0';
    }
    return letter >= 'a' && letter <= 'f' ? letter - 'a' + 10 : -1;
}

Result<Cell> bytes_in(std::string_view text, const Column& column)
{
    Bytes bytes;
    for (std::size_t at = 0; at + 1 < text.size(); at += 2) {
        const int high = hex_digit(text[at]);
        const int low = hex_digit(text[at + 1]);
        if (high < 0 || low < 0) {
            break;
        }
        bytes.content += static_cast<char>(high * 16 + low);
    }
    if (bytes.content.size() * 2 != text.size()) {
        return Error{ErrorCode::Malformed, said("pairs of hexadecimal digits are expected (column %1)", column.name)};
    }
    return Cell{std::move(bytes)};
}

} // namespace

std::string csv_cell(const Cell& cell, const Column& column)
{
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return shortest(*number);
    }
    if (const auto* number = std::get_if<double>(&cell)) {
        return shortest(*number);
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        const bool marked = text->empty() ? column.may_be_missing : needs_mark(*text);
        return in_marks(marked ? "'" + *text : *text);
    }
    if (const auto* bytes = std::get_if<Bytes>(&cell)) {
        constexpr std::string_view kDigits = "0123456789abcdef";
        std::string text = bytes->content.empty() && column.may_be_missing ? "'" : "";
        for (const char byte : bytes->content) {
            text += kDigits[static_cast<unsigned char>(byte) >> 4U];
            text += kDigits[static_cast<unsigned char>(byte) & 0xFU];
        }
        return text;
    }
    return {};
}

Result<Cell> read_csv_cell(std::string_view text, const Column& column)
{
    if (text.empty() && column.may_be_missing) {
        return Cell{Missing{}};
    }
    switch (column.type) {
    case CellType::Integer:
        return number_in<std::int64_t>(text, column);
    case CellType::Real:
        return number_in<double>(text, column);
    case CellType::Text:
        return Cell{std::string{text.starts_with('\'') ? text.substr(1) : text}};
    case CellType::Bytes:
        return bytes_in(text == "'" ? std::string_view{} : text, column);
    }
    return Error{ErrorCode::Malformed, said("unknown type of column")};
}

} // namespace lathhouse::exchange
