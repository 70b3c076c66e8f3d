#pragma once

#include <string>

namespace lathhouse::cli {

/// A path as it is typed at a shell: in single quotes where anything in it could mean something there (POSIX.1-2017, Shell
/// Command Language, 2.2.2 Single-Quotes).
inline std::string shell_word(const std::string& path)
{
    constexpr const char* kPlain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_./,:@%+=-";
    if (!path.empty() && path.find_first_not_of(kPlain) == std::string::npos) {
        return path;
    }
    std::string quoted = "'";
    for (const char letter : path) {
        quoted += letter == '\'' ? std::string{"'\\''"} : std::string(1, letter);
    }
    return quoted + "'";
}

} // namespace lathhouse::cli
