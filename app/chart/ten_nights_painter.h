#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/tonight_facts.h"

#include <QRectF>

namespace lathhouse::chart {

/// A box and a line for each coming night, tonight's filled, and the lines where damage begins with their names.
/// Nights without a forecast are paler and dashed.
void draw_ten_nights(QPainter& painter, const ChartInk& ink, const models::TenNights& ten,
                     const models::YearWords& words, QRectF room);

/// How likely each of tonight's lows is at each spot, over the ruler that the rows below share; the highest curve fills the
/// height. words_room: where the names may stand.
void draw_night_curves(QPainter& painter, const ChartInk& ink, const std::vector<models::SpotNight>& spots,
                       const std::vector<models::RulerTick>& ticks, QRectF room, QRectF words_room);

/// Where a share of that ruler lies in so wide a room.
qreal on_ruler(const QRectF& room, qreal share);

} // namespace lathhouse::chart
