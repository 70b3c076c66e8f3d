#include "app/chart/chart_label.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

namespace {

qreal line_height(const QFontMetricsF& metrics)
{
    return std::round(metrics.height() * 0.92);
}

} // namespace

void measure(ChartLabel& label)
{
    const QFontMetricsF metrics(label.font);
    qreal width = 0.0;
    for (const QString& line : label.lines) {
        width = std::max(width, metrics.horizontalAdvance(line));
    }
    label.wish.ascent = metrics.ascent();
    label.wish.size = {width, metrics.height() + line_height(metrics) * static_cast<qreal>(label.lines.size() - 1)};
}

std::vector<LabelWish> wishes_of(const std::vector<ChartLabel>& labels)
{
    std::vector<LabelWish> wishes;
    std::transform(labels.begin(), labels.end(), std::back_inserter(wishes),
                   [](const ChartLabel& label) { return label.wish; });
    return wishes;
}

void write_label(QPainter& painter, const ChartInk& ink, const ChartLabel& label, QPointF at)
{
    const QFontMetricsF metrics(label.font);
    if (label.ground) {
        constexpr qreal kAround = 3.0;
        painter.fillRect(label.wish.box(at).adjusted(-kAround, 0.0, kAround, 0.0), ink.sheet);
    }
    qreal y = at.y();
    for (const QString& line : label.lines) {
        const qreal indent =
            label.right_aligned ? label.wish.size.width() - metrics.horizontalAdvance(line) : 0.0;
        const QPointF base(std::round(at.x() + indent), std::round(y));
        if (label.halo) {
            write_with_halo(painter, base, line, label.font, label.colour, ink.sheet);
        } else {
            painter.setFont(label.font);
            painter.setPen(label.colour);
            painter.drawText(base, line);
        }
        y += line_height(metrics);
    }
}

} // namespace lathhouse::chart
