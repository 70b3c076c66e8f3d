#pragma once

#include "core/climate/cold_chain.h"

#include <span>

namespace lathhouse::climate {

/// As `none_so_far` of cold_chain.h, with a persistence of its own for every night.
///
/// persistence: correlation of each night with the one before it (that of the first is not used), within 0.60
/// and 0.88, taken to the nearest hundredth. Precondition: one a night.
BarrierPaths none_so_far(const BarrierPaths& barriers, std::span<const double> persistence);

} // namespace lathhouse::climate
