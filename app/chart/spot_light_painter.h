#pragma once

#include "app/chart/axis.h"
#include "app/chart/chart_label.h"
#include "app/models/home_facts.h"

#include <QPolygonF>

#include <vector>

namespace lathhouse::chart {

/// What stands in the chart of a spot's light, measured out for a room.
struct SpotLightParts {
    Axis axis;
    QRectF plot;
    QPolygonF line;  ///< The mean of each month.
    QPolygonF dark;  ///< Edges of the band; empty where nothing is known of the days.
    QPolygonF bright;
    QPolygonF beside; ///< The spot to compare with; empty without one.
    std::vector<QPolygonF> needs; ///< From where each plant thrives.
    std::vector<ChartLabel> labels; ///< What is most needed first.
    std::vector<LabelPlace> places; ///< Of each label, none over another nor over a line; nullopt where it found no room.
};
SpotLightParts spot_light_parts(const ChartInk& ink, const models::SpotLight& light, const models::SpotLight* beside,
                                const models::YearWords& words, QRectF room);

/// Light of a spot month by month: the mean in the band of 9 days in 10, with lines from which its plants thrive, and the mean of
/// another spot in long dashes.
void draw_spot_light(QPainter& painter, const ChartInk& ink, const models::SpotLight& light,
                     const models::SpotLight* beside, const models::YearWords& words, QRectF room);

} // namespace lathhouse::chart
