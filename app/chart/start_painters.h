#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/place_gives.h"

#include <QRectF>

namespace lathhouse::chart {

/// A year of nights at a place, January to December: band of 18 nights in 20 with its middle on the sky's colours of
/// each day's length, freezing as a line with the dates of half the years and of one in ten.
void draw_place_nights(QPainter& painter, const ChartInk& ink, const models::PlaceNightsYear& year,
                       const models::YearWords& words, QRectF room);

} // namespace lathhouse::chart
