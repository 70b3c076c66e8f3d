#pragma once

#include "core/base/result.h"
#include "core/climate/place_climate.h"

#include <optional>

namespace lathhouse::cli {

/// The climate of a place by the shipped stations, the coast counted into its expected error. Without the
/// shipped coast lines the error is the one of distance and height alone.
/// Errors: as stations() and climate_at.
Result<climate::PlaceClimate> shipped_climate(Position position, std::optional<Metres> elevation);

} // namespace lathhouse::cli
