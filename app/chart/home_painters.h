#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/home_facts.h"

#include <QRectF>

namespace lathhouse::chart {

/// The stations round the home: true distances and directions, rings at round distances, north up.
void draw_place_map(QPainter& painter, const ChartInk& ink, const models::PlaceMap& map, QRectF room);

/// Light of a spot month by month, with lines from which its plants thrive.
void draw_spot_light(QPainter& painter, const ChartInk& ink, const models::SpotLight& light,
                     const models::YearWords& words, QRectF room);

/// How a spot's offset was learnt: the middle, its band of 9 in 10, and every logged night; open dots clear and
/// calm, filled ones cloud or wind, squares where the sky was not noted.
void draw_offset_course(QPainter& painter, const ChartInk& ink, const models::OffsetCourse& course,
                        const models::YearWords& words, QRectF room);

} // namespace lathhouse::chart
