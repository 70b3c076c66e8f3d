#pragma once

#include "app/chart/chart_ink.h"
#include "app/chart/chart_label.h"
#include "app/models/home_facts.h"

#include <QRectF>

#include <vector>

namespace lathhouse::chart {

/// The stations round the home: true distances and directions, rings at round distances, north up.
void draw_place_map(QPainter& painter, const ChartInk& ink, const models::PlaceMap& map, QRectF room);

/// Words of the map and where they stand, none over another nor over a mark; where room is short, towns go first, then
/// rings, then stations of little weight.
struct MapLabels {
    std::vector<QRectF> marks; ///< The home, the four winds, and the stations' triangles.
    std::vector<ChartLabel> labels;
    std::vector<LabelPlace> places; ///< Of each label; nullopt where it found no room.
};
MapLabels place_map_labels(const ChartInk& ink, const models::PlaceMap& map, QRectF room);

/// How a spot's offset was learnt: the middle, its band of 9 in 10, and every logged night; open dots clear and
/// calm, filled ones cloud or wind, squares where the sky was not noted.
void draw_offset_course(QPainter& painter, const ChartInk& ink, const models::OffsetCourse& course,
                        const models::YearWords& words, QRectF room);

} // namespace lathhouse::chart
