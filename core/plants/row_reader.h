#pragma once

#include "core/base/cell_reader.h"
#include "core/base/parse.h"
#include "core/plants/plant_kind.h"
#include "core/units/light.h"
#include "core/units/temperature.h"

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

// Of use inside core/plants only: how the rows of its tables are read.

namespace lathhouse::plants {

/// How sure a row is of its figures.
inline constexpr std::array<std::string_view, 3> kConfidences{"high", "medium", "low"};

/// The words that a column may hold, each with what it stands for.
template <class Value>
using Words = std::span<const std::pair<std::string_view, Value>>;

/// The word of a value; empty where it has none.
template <class Value>
std::string_view word_of(Words<Value> words, Value value)
{
    const auto found = std::ranges::find(words, value, &std::pair<std::string_view, Value>::second);
    return found == words.end() ? std::string_view{} : found->first;
}

/// Reads the cells of one row, those that hold what plants are described by as well.
class RowReader : public CellReader {
public:
    using CellReader::CellReader;
    using CellReader::word;

    Celsius degrees(std::string_view column) { return Celsius::from_degrees(number(column)); }
    DailyLight light(std::string_view column) { return DailyLight::from_moles(number(column)); }
    /// "2" or "1-2".
    Range range(std::string_view column)
    {
        const auto written = filled(column);
        const auto ends = split(written, '-');
        const auto low = parse_number(ends.front());
        const auto high = parse_number(ends.back());
        if (ends.size() > 2 || !low || !high || *low < 0.0 || *high < *low) {
            fail_at(std::string{column} + " must be a number or two with a hyphen, not \"" + written + "\"");
            return {0.0, 0.0};
        }
        return {*low, *high};
    }
    template <class Value>
    Value word(std::string_view column, Words<Value> words)
    {
        return word<Value>(
            column,
            [&](std::string_view written) {
                const auto found = std::ranges::find(words, written, &std::pair<std::string_view, Value>::first);
                return found == words.end() ? std::nullopt : std::optional{found->second};
            },
            words.front().second);
    }
    std::string one_of(std::string_view column, std::span<const std::string_view> known)
    {
        auto written = text(column);
        if (std::ranges::find(known, written) == known.end()) {
            fail_at("the word \"" + written + "\" is not known in " + std::string{column});
        }
        return written;
    }
};

/// The pieces between ';', blanks cut off, empty ones left out.
inline std::vector<std::string> names_in(std::string_view text)
{
    std::vector<std::string> names;
    for (const auto piece : split(text, ';')) {
        if (const auto name = trimmed(piece); !name.empty()) {
            names.emplace_back(name);
        }
    }
    return names;
}

} // namespace lathhouse::plants
