#pragma once

#include "app/words/words.h"
#include "core/climate/place_climate.h"

#include <string>

namespace lathhouse::words {

/// "3 stations, the nearest 12 km away, 1991–2018", or "The household's own record Porch, kept 2 km away,
/// 2001–2020".
std::string stations_in_use(const climate::PlaceClimate& climate, UnitSystem units);

/// From the first to the last year of any of the stations in use: those of one source answer together, and their records begin
/// and end in different years. The climate has a station.
climate::BasePeriod years_in_use(const climate::PlaceClimate& climate);

/// Who publishes the figures behind a place's climate, as their licences ask; one line, for everywhere that
/// figures are shown, exported or printed.
std::string credits(const climate::PlaceClimate& climate);

} // namespace lathhouse::words
