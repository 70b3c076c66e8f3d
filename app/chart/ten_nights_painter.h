#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/tonight_facts.h"

#include <QRectF>

namespace lathhouse::chart {

/// A box and a line for each coming night, tonight's filled, and the lines where damage begins with their names.
/// Nights without a forecast are paler and dashed.
void draw_ten_nights(QPainter& painter, const ChartInk& ink, const models::TenNights& ten,
                     const models::YearWords& words, QRectF room);

} // namespace lathhouse::chart
