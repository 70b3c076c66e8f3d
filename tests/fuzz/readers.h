#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::fuzz {

/// A reader to be given inputs of every kind. It must come back; what it gives back is looked at where something can be
/// said of it, and a broken promise ends the process.
struct Reader {
    std::string name;
    std::function<void(std::string_view)> read;
    std::vector<std::string> seeds; ///< Besides the files of `corpus/NAME`.
};

/// scratch: an empty folder of this process, for readers that want a file.
std::vector<Reader> all_readers(const std::filesystem::path& scratch);

} // namespace lathhouse::fuzz
