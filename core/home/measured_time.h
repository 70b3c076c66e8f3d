#pragma once

#include "core/home/measurement.h"

namespace lathhouse::home {

/// Date and time on the household's clock, so that a trip over a time zone leaves the order of its readings alone.
/// zone_name: where the clock was read; empty for the household's. Errors: NotFound for an unknown zone.
Result<void> set_time(Measurement& measurement, std::chrono::minutes time, const std::string& zone_name,
                      const std::string& home_zone);

} // namespace lathhouse::home
