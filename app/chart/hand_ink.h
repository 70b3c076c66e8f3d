#pragma once

#include "app/chart/chart_ink.h"

namespace lathhouse::chart {

/// Colour of a spot's hand; ink for what has none.
inline QColor hand_colour(const ChartInk& ink, int hand)
{
    return hand >= 0 && !ink.spots.isEmpty() ? ink.spots[hand % ink.spots.size()] : ink.ink;
}

inline QColor hand_tint(const ChartInk& ink, int hand)
{
    return hand >= 0 && !ink.tints.isEmpty() ? ink.tints[hand % ink.tints.size()] : ink.band;
}

} // namespace lathhouse::chart
