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
    unsigned int method = 8;     ///< The way of packing that its head names; it is squeezed whatever this says.
    unsigned int flags = 0x0800; ///< 1: encrypted; 0x0800: its name is UTF-8.
    int said_bytes = -1;         ///< The length that its head names, where it is not its own.
};

/// Writes a zip without looking at names or modes, squeezed.
void write_sample_zip(const std::filesystem::path& archive, const std::vector<SampleEntry>& entries);

} // namespace lathhouse::exchange
