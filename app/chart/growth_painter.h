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

/// Where a plant's nights are lethal, harm, stress and leave it at ease, with its spot's night on the same ruler.
void draw_night_ruler(QPainter& painter, const ChartInk& ink, const models::NightNeeds& needs,
                      const models::YearWords& words, QRectF room);

/// The ring of a verdict: its shape says it without its colour.
void draw_verdict_ring(QPainter& painter, const ChartInk& ink, int verdict, double share, double low, double high,
                       QRectF room);

/// The share regained on a scale from none to somewhat more than all, with its interval.
void draw_verdict_scale(QPainter& painter, const ChartInk& ink, double share, double low, double high, QRectF room);

} // namespace lathhouse::chart
