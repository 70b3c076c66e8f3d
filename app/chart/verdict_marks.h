#pragma once

#include "app/chart/chart_ink.h"

#include <QRectF>

namespace lathhouse::chart {

/// The ring of a verdict: its shape says it without its colour.
void draw_verdict_ring(QPainter& painter, const ChartInk& ink, int verdict, double share, double low, double high,
                       QRectF room);

/// The share regained on a scale from none to somewhat more than all, with its interval.
void draw_verdict_scale(QPainter& painter, const ChartInk& ink, double share, double low, double high, QRectF room);

} // namespace lathhouse::chart
