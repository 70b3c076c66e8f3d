#pragma once

#include "core/climate/quadrature.h"
#include "core/units/temperature.h"

#include <span>

namespace lathhouse::climate {

/// How a spot's night lows differ from the open air: a normal distribution that is integrated into every
/// chance.
struct NightOffset {
    KelvinDelta mean = KelvinDelta::from_kelvins(0.0);   ///< Spot less open air; warmer is positive.
    KelvinDelta spread = KelvinDelta::from_kelvins(0.0); ///< Standard deviation of what is not known of it.
    friend constexpr bool operator==(const NightOffset&, const NightOffset&) = default;
};

/// Where the offset of a spot is looked at.
inline std::span<const QuadratureNode> offset_nodes(NightOffset offset)
{
    if (offset.spread.kelvins() > 0.0) {
        return kFiveNodes;
    }
    return kOneNode;
}

/// A line of the open air, not of a spot.
inline bool is_bare(NightOffset offset)
{
    return offset == NightOffset{};
}

/// Line of the open air that the spot's line is at one node of the offset.
inline double open_air_degrees(double line_degrees, NightOffset offset, const QuadratureNode& node)
{
    return line_degrees - offset.mean.kelvins() - node.at * offset.spread.kelvins();
}

} // namespace lathhouse::climate
