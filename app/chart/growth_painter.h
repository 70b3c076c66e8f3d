#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/plant_facts.h"

#include <QRectF>

namespace lathhouse::chart {

/// A plant's readings over the calendar: dots with the error of one, the fit with its band, events as lozenges on
/// full-height lines, moves as ticks, time without growth hatched, the next reading as an open mark. Sizes stand on
/// a logarithmic scale.
void draw_growth(QPainter& painter, const ChartInk& ink, const models::GrowthChartData& chart,
                 const models::YearWords& words, calendar::Date today, QRectF room);

} // namespace lathhouse::chart
