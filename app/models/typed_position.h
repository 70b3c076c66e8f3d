#pragma once

#include "core/base/result.h"
#include "core/units/position.h"

#include <QString>

#include <optional>

namespace lathhouse::models {

enum class Side { Latitude, Longitude };

/// Both coordinates in one text, with decimal points or commas. Errors: as geodesy::read_position.
Result<Position> typed_position(const QString& text);

/// One coordinate: a decimal number with point or comma, with or without its letter, or degrees, minutes and seconds.
std::optional<double> typed_coordinate(const QString& typed, Side side);

} // namespace lathhouse::models
