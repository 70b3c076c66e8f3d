#pragma once

#include <QString>

#include <optional>

namespace lathhouse::models {

/// A number as people type it: decimal point or comma, a plain or true minus; nullopt where it is none.
std::optional<double> typed_decimal(const QString& typed);

} // namespace lathhouse::models
