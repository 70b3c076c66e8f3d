#pragma once

#include "core/base/result.h"

#include <optional>
#include <string_view>
#include <vector>

namespace lathhouse {

/// The whole of `text` as a finite decimal number with a point, independent of the locale; surrounding blanks
/// and a leading plus are allowed, anything else around it is not. nullopt where it is not one.
std::optional<double> parse_number(std::string_view text);

/// The whole of `text` as a decimal whole number; surrounding blanks and a leading plus are allowed.
std::optional<int> parse_integer(std::string_view text);

/// `text` without blanks, tabs and carriage returns at its ends.
std::string_view trimmed(std::string_view text);

/// The pieces of `text` between `separator`s, at least one; pieces are not trimmed and may be empty.
std::vector<std::string_view> split(std::string_view text, char separator);

/// ASCII letters in lower case; other bytes unchanged.
std::string lower_case(std::string_view text);

} // namespace lathhouse
