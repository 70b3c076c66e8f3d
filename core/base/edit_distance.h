#pragma once

#include <cstddef>
#include <string_view>

namespace lathhouse {

/// Least number of letters to insert, remove, change or swap with their neighbour that makes one text the
/// other; bytes count as letters. No letter is touched twice (the restricted distance of Damerau and
/// Levenshtein).
std::size_t edit_distance(std::string_view a, std::string_view b);

} // namespace lathhouse
