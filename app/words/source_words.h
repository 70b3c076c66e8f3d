#pragma once

#include <string>
#include <vector>

namespace lathhouse::words {

/// "Sources: title (publisher, year); title; common practice, no source." and a line end, each once in the
/// order given; keys that are not in the source table stand as they are. Empty without keys.
std::string sources_line(const std::vector<std::string>& keys);

} // namespace lathhouse::words
