#pragma once

#include "core/climate/place_climate.h"

#include <string>

namespace lathhouse::words {

/// Who publishes the figures behind a place's climate, as their licences ask; one line, for everywhere that
/// figures are shown, exported or printed.
std::string credits(const climate::PlaceClimate& climate);

} // namespace lathhouse::words
