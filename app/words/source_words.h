#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::words {

/// "Sources: title (publisher, year); title; common practice, no source." and a line end, each once in the
/// order given; keys that are not in the source table stand as they are. Empty without keys.
std::string sources_line(const std::vector<std::string>& keys);
/// The keys of a table's cell, which separates them by semicolons.
std::vector<std::string> source_keys(std::string_view cell);

} // namespace lathhouse::words
