#pragma once

#include "core/climate/station.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// What is impossible about a station's figures by themselves; nullopt where nothing is. Height within -430
/// and 6000 m; mean lows within -75 and 40 C, mean highs within -70 and 55 C; no high below its low; no daily
/// range over 35 K; spreads within 0.2 and 20 K; lowest values not above the mean low; position not exactly
/// 0, 0.
std::optional<std::string> range_fault(const Station& station);

/// The neighbour check. For each station the mean of the year's lows and highs are foretold
/// from up to ten stations within 400 km and 600 m of height, brought to its height by 5.5 K a kilometre
/// (lows and highs alike) and weighted by distance (scale 100 km) and height (300 m). Where at least four
/// speak, the station is at fault if low or high of the mean year is more than 8 K away, or more than 5 K
/// away and more than four times their own scatter. Valleys and coasts stay within that; swapped signs,
/// heights in feet and wrong positions do not. Returns for each station its fault or nullopt.
std::vector<std::optional<std::string>> neighbour_faults(std::span<const Station> stations);

} // namespace lathhouse::climate
