#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace lathhouse::cli {

/// "yes" or "no" without case; blank is not answered. Errors: WrongUsage, naming the option.
inline Result<std::optional<bool>> yes_or_no(std::string_view option, std::string_view word)
{
    std::string lower;
    for (const char letter : word) {
        lower += letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    }
    if (lower.empty()) {
        return std::optional<bool>{};
    }
    if (lower != "yes" && lower != "no") {
        return Error{ErrorCode::WrongUsage,
                     std::string{option} + " takes yes or no, not \"" + std::string{word} + "\""};
    }
    return std::optional{lower == "yes"};
}

} // namespace lathhouse::cli
