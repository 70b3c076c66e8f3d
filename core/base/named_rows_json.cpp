#include "core/base/named_rows.h"
#include "core/base/parse.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lathhouse {
namespace {

using Json = nlohmann::json;

std::string text_of(const Json& value)
{
    if (value.is_null()) {
        return {};
    }
    return value.is_string() ? value.get<std::string>() : value.dump();
}

/// Appends every value that the path leads to; one that is missing in an element of a list is blank, so that
/// rows stay together. False where the path leads nowhere.
bool collect(const Json& from, std::span<const std::string_view> path, std::vector<std::string>& cells)
{
    if (from.is_array()) {
        bool found = false;
        for (const auto& element : from) {
            if (collect(element, path, cells)) {
                found = true;
            } else {
                cells.emplace_back();
            }
        }
        return found;
    }
    if (path.empty()) {
        if (from.is_object()) {
            return false;
        }
        cells.push_back(text_of(from));
        return true;
    }
    if (!from.is_object()) {
        return false;
    }
    const auto member = from.find(std::string{path.front()});
    return member != from.end() && collect(*member, path.subspan(1), cells);
}

std::optional<std::vector<std::string>> column_at(const Json& root, const std::string& path)
{
    const auto pieces = split(path, '.');
    std::vector<std::string> cells;
    if (!collect(root, pieces, cells)) {
        return std::nullopt;
    }
    return cells;
}

/// Lists nested deeper than any forecast would exhaust the stack of `collect`.
bool is_nested_too_deeply(std::string_view text)
{
    constexpr int kDeepest = 64;
    int depth = 0;
    bool quoted = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char letter = text[at];
        if (quoted) {
            at += letter == '\\' ? 1U : 0U;
            quoted = letter != '"';
        } else if (letter == '"') {
            quoted = true;
        } else if (letter == '[' || letter == '{') {
            if (++depth > kDeepest) {
                return true;
            }
        } else if (letter == ']' || letter == '}') {
            --depth;
        }
    }
    return false;
}

} // namespace

Result<NamedRows> NamedRows::parse_json(std::string_view text, std::string source_name,
                                        std::span<const std::string_view> wanted,
                                        std::span<const ColumnName> names)
{
    if (is_nested_too_deeply(text)) {
        return Error{ErrorCode::Malformed, said("%1 is nested more than 64 deep; that is no forecast", source_name)};
    }
    Json root;
    try {
        root = Json::parse(text);
    } catch (const Json::parse_error& thrown) {
        const auto before = text.substr(0, std::min(thrown.byte, text.size()));
        return Error{ErrorCode::Malformed,
                     said("%1, line %2: the JSON breaks off or has a character that does not belong there", source_name,
                          1 + std::ranges::count(before, '\n'))};
    } catch (const Json::out_of_range&) {
        return Error{ErrorCode::Malformed, said("%1 has a number in its JSON that is beyond any measure", source_name)};
    }
    NamedRows rows;
    rows.source_name_ = std::move(source_name);
    const Json& shown = root.is_array() && !root.empty() ? root.front() : root;
    if (shown.is_object()) {
        for (const auto& [key, value] : shown.items()) {
            rows.found_names_ += (rows.found_names_.empty() ? "" : ", ") + key;
        }
    }
    std::size_t count = 0;
    for (const auto ours : wanted) {
        const auto mapped = std::ranges::find(names, ours, &ColumnName::ours);
        const std::string name = mapped != names.end() ? mapped->theirs : std::string{ours};
        auto cells = column_at(root, name);
        if (!cells && mapped == names.end()) {
            cells = column_at(root, "nights." + name);
        }
        if (!cells && mapped != names.end()) {
            return Error{ErrorCode::Malformed, said("%1 has nothing at \"%2\"; at its top it has %3", rows.source_name_,
                                                    name, rows.found_names_)};
        }
        if (cells) {
            count = std::max(count, cells->size());
            rows.ours_.emplace_back(ours);
            rows.columns_.push_back(std::move(*cells));
        }
    }
    if (count > kMostRows) {
        return Error{ErrorCode::Malformed,
                     said("%1 has more than %2 rows; leave only the nights that matter", rows.source_name_, kMostRows)};
    }
    for (std::size_t at = 0; at < rows.columns_.size(); ++at) {
        auto& cells = rows.columns_[at];
        if (cells.size() == 1) {
            cells.resize(count, cells.front());
        }
        if (cells.size() != count) {
            return Error{ErrorCode::Malformed, said("%1: \"%2\" has %3 values where another has %4", rows.source_name_,
                                                    rows.ours_[at], cells.size(), count)};
        }
    }
    rows.places_are_lines_ = false;
    for (std::size_t row = 0; row < count; ++row) {
        rows.places_.push_back(row + 1);
    }
    return rows;
}

} // namespace lathhouse
