#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/plant_facts.h"

#include <QRectF>

namespace lathhouse::chart {

/// Where a plant's nights are lethal, harm, stress and leave it at ease, with its spot's night on the same ruler.
void draw_night_ruler(QPainter& painter, const ChartInk& ink, const models::NightNeeds& needs,
                      const models::YearWords& words, QRectF room);

} // namespace lathhouse::chart
