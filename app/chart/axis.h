#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/year_words.h"

#include <QRectF>

#include <vector>

namespace lathhouse::chart {

/// A straight scale from the bottom to the top of a plot, with ticks at round numbers.
class Axis {
public:
    /// steps: at most about so many ticks, and none closer to the next than `finest`: 1 for what is counted.
    Axis(double least, double most, int steps, double finest = 0.0);

    double bottom() const { return bottom_; }
    double top() const { return top_; }
    double step() const { return step_; }
    qreal y(const QRectF& plot, double value) const
    {
        return plot.bottom() - plot.height() * (value - bottom_) / (top_ - bottom_);
    }
    /// Grid lines and numbers left of the plot; zero is bold. `signs`: numbers above zero carry a plus.
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& plot, const models::YearWords& words,
              bool signs) const;
    /// Width that the numbers need, with their distance to the plot.
    qreal label_width(const ChartInk& ink, const models::YearWords& words, bool signs) const;

private:
    QString number(double value, const models::YearWords& words, bool signs) const;
    double bottom_;
    double top_;
    double step_;
};

/// Words one below the other beside a plot, kept apart from each other: each wishes a middle height.
struct SideLabel {
    QString words;
    QColor colour;
    qreal y;
    bool strong = false;
};
void draw_side_labels(QPainter& painter, const ChartInk& ink, std::vector<SideLabel> labels, qreal x, qreal width,
                      qreal top, qreal bottom);

} // namespace lathhouse::chart
