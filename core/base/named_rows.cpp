#include "core/base/named_rows.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>

namespace lathhouse {
namespace {

std::string_view first_line_of_names(std::string_view text)
{
    while (text.starts_with('#')) {
        const auto end = text.find('\n');
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return text.substr(0, text.find('\n'));
}

char separator_of(std::string_view head)
{
    for (const char separator : {';', '\t'}) {
        if (head.find(separator) != std::string_view::npos) {
            return separator;
        }
    }
    return ',';
}

std::string listed(std::span<const std::string_view> names)
{
    std::string text;
    for (const auto name : names) {
        text += (text.empty() ? "" : ", ") + std::string{name};
    }
    return text;
}

} // namespace

Result<std::vector<ColumnName>> parse_column_names(std::string_view text,
                                                   std::span<const std::string_view> known)
{
    std::vector<ColumnName> names;
    for (const auto piece : split(text, ',')) {
        const auto equals = piece.find('=');
        const auto ours = trimmed(piece.substr(0, equals));
        const auto theirs =
            equals == std::string_view::npos ? std::string_view{} : trimmed(piece.substr(equals + 1));
        if (ours.empty() || theirs.empty()) {
            return Error{
                ErrorCode::Malformed,
                said("\"%1\" names no column; write our name, '=' and the name in the file, such as low_c=Tmin",
                     trimmed(piece))};
        }
        if (std::ranges::find(known, ours) == known.end()) {
            return Error{ErrorCode::WrongUsage,
                         said("\"%1\" is no column that is read here; there are %2", ours, listed(known))};
        }
        names.push_back({std::string{ours}, std::string{theirs}});
    }
    return names;
}

Result<NamedRows> NamedRows::parse(std::string_view text, std::string source_name,
                                   std::span<const std::string_view> wanted,
                                   std::span<const ColumnName> names)
{
    if (text.size() > kMostBytes) {
        return Error{ErrorCode::Malformed, said("%1 has %2 MB, at most %3 are read; leave only the nights that matter",
                                                source_name, text.size() / 1'000'000, kMostBytes / 1'000'000)};
    }
    if (text.starts_with("\xEF\xBB\xBF")) {
        text.remove_prefix(3);
    }
    if (text.find('\0') != std::string_view::npos) {
        return Error{ErrorCode::Malformed,
                     said("%1 is no text in UTF-8 (it has a zero byte); save it as UTF-8 text", source_name)};
    }
    const auto content = trimmed(text);
    if (content.empty()) {
        return Error{ErrorCode::Malformed,
                     said("%1 is empty; it needs a line of column names and a row for each night", source_name)};
    }
    const bool is_json = content.front() == '{' || content.front() == '[';
    return is_json ? parse_json(content, std::move(source_name), wanted, names)
                   : parse_separated(text, std::move(source_name), wanted, names);
}

Result<NamedRows> NamedRows::parse_separated(std::string_view text, std::string source_name,
                                             std::span<const std::string_view> wanted,
                                             std::span<const ColumnName> names)
{
    const char separator = separator_of(first_line_of_names(text));
    // Counted first, so that a file of a million rows is refused before it is taken apart.
    if (static_cast<std::size_t>(std::ranges::count(text, '\n')) > kMostRows) {
        return Error{ErrorCode::Malformed,
                     said("%1 has more than %2 rows; leave only the nights that matter", source_name, kMostRows)};
    }
    const auto table = CsvTable::parse(text, source_name, separator);
    if (!table) {
        return table.error();
    }
    NamedRows rows;
    rows.source_name_ = std::move(source_name);
    rows.decimal_commas_ = separator != ',';
    for (const auto& name : table->column_names()) {
        rows.found_names_ += (rows.found_names_.empty() ? "" : ", ") + name;
    }
    for (const auto ours : wanted) {
        const auto mapped = std::ranges::find(names, ours, &ColumnName::ours);
        const auto place = table->column(mapped != names.end() ? std::string_view{mapped->theirs} : ours);
        if (!place && mapped != names.end()) {
            return Error{ErrorCode::Malformed, said("%1 has no column \"%2\"; it has %3", rows.source_name_,
                                                    mapped->theirs, rows.found_names_)};
        }
        if (place) {
            rows.ours_.emplace_back(ours);
            auto& cells = rows.columns_.emplace_back();
            for (std::size_t row = 0; row < table->row_count(); ++row) {
                cells.push_back(table->at(row, *place));
            }
        }
    }
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        rows.places_.push_back(table->line(row));
    }
    return rows;
}

std::optional<std::size_t> NamedRows::column(std::string_view ours) const
{
    const auto found = std::ranges::find(ours_, ours);
    if (found == ours_.end()) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - ours_.begin());
}

Result<void> NamedRows::require(std::string_view ours) const
{
    if (has(ours)) {
        return {};
    }
    return Error{ErrorCode::Malformed,
                 said("%1 has no column \"%2\"; it has %3; say with --columns %2=NAME what it is called", source_name_,
                      ours, found_names_.empty() ? said("none") : Said{found_names_})};
}

std::string_view NamedRows::text(std::size_t row, std::string_view ours) const
{
    const auto place = column(ours);
    return place ? trimmed(columns_[*place][row]) : std::string_view{};
}

Result<std::optional<double>> NamedRows::number(std::size_t row, std::string_view ours) const
{
    const auto shown = text(row, ours);
    if (shown.empty()) {
        return std::optional<double>{};
    }
    std::string plain{shown};
    if (decimal_commas_ && plain.find('.') == std::string::npos) {
        std::ranges::replace(plain, ',', '.');
    }
    if (const auto value = parse_number(plain)) {
        return std::optional<double>{*value};
    }
    return error_at(row, said("\"%1\" is no number (%2)", shown.substr(0, 40), ours));
}

Error NamedRows::error_at(std::size_t row, const Said& what) const
{
    return Error{ErrorCode::Malformed, places_are_lines_ ? said("%1, line %2: %3", source_name_, places_[row], what)
                                                      : said("%1, row %2: %3", source_name_, places_[row], what)};
}

} // namespace lathhouse
