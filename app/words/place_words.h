#pragma once

#include "core/units/position.h"

#include <string>

namespace lathhouse::words {

/// "48.200° N, 20.500° E": a position to a thousandth of a degree (some 100 m).
std::string position(Position position);

} // namespace lathhouse::words
