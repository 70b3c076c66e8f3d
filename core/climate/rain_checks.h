#pragma once

#include "core/climate/station.h"

#include <array>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// Months of a station whose rain cannot be right.
struct RainFault {
    std::size_t station; ///< Place in the list that was asked about.
    std::array<bool, 12> months;
    std::string reason;
};

/// Faults in the mean rain of stations with monthly reports, one entry a station at most. A single report
/// that is off by a power of ten spoils a mean of eight or more years.
///
/// *Year*: all months are at fault where the year has more than 11,873 mm, the mean of Mawsynram, the wettest
/// place known, or more than 5,000 mm and 2.5 times the wettest of four or more stations within 400 km.
///
/// *Month*: q = (rain + 30 mm) / (that of the wettest neighbour + 30 mm), of up to ten stations within 700
/// km, four at least. A month is at fault where q is over 1.5 and over three times the station's own median
/// q, so that a wet coast or hill, wet in all its months, is not.
///
/// Source of the year's figure: the published mean of Mawsynram; the factors are set by looking at the
/// reports (docs/methods/between-stations.md).
std::vector<RainFault> rain_faults(std::span<const Station> stations);

} // namespace lathhouse::climate
