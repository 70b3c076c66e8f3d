#pragma once

#include "app/cli/commands.h"

#include <optional>

namespace lathhouse::cli {

/// As json_number; null where there is none.
inline Json number_or_null(const std::optional<double>& value)
{
    return value ? json_number(*value) : Json(nullptr);
}

} // namespace lathhouse::cli
