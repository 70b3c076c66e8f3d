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

/// The neighbour check, in two parts.
///
/// *Year*: the means of the year's lows and highs are foretold from up to ten stations within 400 km and 600
/// m of height, brought to the station's height by 5.5 K a kilometre and weighted by distance (scale 100 km)
/// and height (300 m). Where at least four speak, a station is at fault more than 7 K away in its lows and
/// four times their own scatter, or more than 9 K in its highs. Deserts, valleys and coasts stay within that;
/// swapped signs, heights in feet and wrong positions do not.
///
/// *Month*: a month's bend, its value less the mean of the months before and after, is compared with the
/// median bend of up to eight stations within 700 km. Where at least three speak and no height differs by
/// more than 600 m, more than 4.5 K off in any month of the lows or highs is a fault: one month is wrong.
///
/// Suspects are asked again without each other's word, so that a bad station does not take its neighbours
/// along. Returns for each station its fault or nullopt.
std::vector<std::optional<std::string>> neighbour_faults(std::span<const Station> stations);

} // namespace lathhouse::climate
