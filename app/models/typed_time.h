#pragma once

#include <QString>

#include <chrono>
#include <optional>

namespace lathhouse::models {

/// A time of day as people type it: "14:30", "14.30", "2:30 pm"; nullopt where it is none.
std::optional<std::chrono::minutes> typed_time(const QString& typed);

} // namespace lathhouse::models
