#pragma once

#include "core/climate/normals.h"

#include <span>
#include <vector>

namespace lathhouse::climate {

/// As `normals_of`, with dates for these percent chances (each within 0..100) instead of the standard ones. A third of
/// the percents is a third of the dates to sort and to keep.
Result<RecordNormals> normals_with_dates(const DailyRecord& record, BasePeriod base, std::span<const Celsius> lines,
                                         std::vector<double> percents);

} // namespace lathhouse::climate
