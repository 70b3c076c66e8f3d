#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace lathhouse::exchange {

/// An entry of an archive as anyone may have made it.
struct SampleEntry {
    std::string name;
    std::string content;
    unsigned int mode = 0100644; ///< As Unix archivers leave it: kind and rights.
};

/// Writes a zip without looking at names or modes, squeezed.
void write_sample_zip(const std::filesystem::path& archive, const std::vector<SampleEntry>& entries);

} // namespace lathhouse::exchange
