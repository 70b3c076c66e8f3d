#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/year_data.h"

#include <QPointF>
#include <QRectF>

namespace lathhouse::sheet {

/// The mark of a hazard.
void draw_lozenge(QPainter& painter, QPointF middle);
/// A small plate in the hand of a spot, as its bars are drawn.
void draw_spot_plate(QPainter& painter, const chart::ChartInk& ink, const models::YearSpot& spot, const QRectF& box);
/// An open box to tick.
void draw_tick_box(QPainter& painter, QPointF upper_left);
constexpr qreal kTickBox = 14.0;
/// One, two or three laths for clean, suspect, infested.
void draw_laths(QPainter& painter, int count, QPointF lower_left);
void draw_rule(QPainter& painter, const QColor& ink, qreal left, qreal right, qreal y, qreal width = 1.0);

} // namespace lathhouse::sheet
