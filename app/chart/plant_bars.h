#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/risk_dates.h"

#include <QPolygonF>
#include <QRectF>

#include <vector>

namespace lathhouse::chart {

/// One plant's year.
struct PlantBar {
    const models::YearData& year;
    models::DaySpan view;
    const std::vector<models::YearStay>& stays;
    /// At the risk now chosen, whatever plan the stays come from.
    std::vector<models::RiskDate> dates;
    bool outdated = false; ///< Another plan is being made.
};
/// Draws it as a bar of stays within `row`, with the dates as brackets above.
void draw_plant_bar(QPainter& painter, const ChartInk& ink, const PlantBar& bar, QRectF row, qreal bar_height);
/// A tick on the lower edge of the bar on each day on which the plant is fed.
void draw_feeds(QPainter& painter, const ChartInk& ink, const std::vector<int>& days, models::DaySpan view, QRectF row,
                qreal bar_height);
/// One sowing's season on a line: ring = sow, bracket = comes up, steps = hardening and planting out, slash = first ripe,
/// with words at the end.
void draw_sowing(QPainter& painter, const ChartInk& ink, const models::YearSowing& sowing, models::DaySpan view,
                 QRectF row);
/// Upper edge of the bar within its row.
qreal bar_top(const QRectF& row, qreal bar_height);

/// Fills with the tint and the pattern of a spot's hand.
void fill_spot(QPainter& painter, const ChartInk& ink, const models::YearSpot& spot, const QPainterPath& area);
/// A line that steps from a box's lower left to its upper right: one light grows into another.
QPolygonF ladder_steps(const QRectF& box, int steps);

} // namespace lathhouse::chart
