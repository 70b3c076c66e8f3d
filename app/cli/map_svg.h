#pragma once

#include "app/words/words.h"
#include "core/climate/station_map.h"

#include <string>
#include <vector>

namespace lathhouse::cli {

/// Distances of a map's rings, round in kilometres or miles.
std::vector<Metres> rings_of(const climate::StationMap& map, words::UnitSystem units);

/// The map as a picture (SVG 1.1) with a list of its stations beside it and the credits below.
/// title: the place as people call it.
std::string map_svg(const climate::StationMap& map, const std::string& title, const std::string& credits,
                    words::UnitSystem units);

} // namespace lathhouse::cli
