#pragma once

#include "app/chart/chart_ink.h"
#include "app/chart/label_places.h"

#include <QStringList>

#include <vector>

namespace lathhouse::chart {

/// Words that stand in a chart beside what they name.
struct ChartLabel {
    enum class Part { Other, LastFrost, FirstFrost };
    QStringList lines;
    QFont font;
    QColor colour;
    bool halo = true; ///< Not on the sky, whose colours carry ink.
    bool ground = false; ///< Stands on paper of its own: a line that must run behind it is hidden there.
    bool right_aligned = false;
    Part part = Part::Other;
    LabelWish wish = {};
};

/// Sets what the words measure.
void measure(ChartLabel& label);
std::vector<LabelWish> wishes_of(const std::vector<ChartLabel>& labels);
/// Writes the lines one below the other, the first base line beginning at `at` (within a pixel).
void write_label(QPainter& painter, const ChartInk& ink, const ChartLabel& label, QPointF at);

} // namespace lathhouse::chart
