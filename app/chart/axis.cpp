#include "app/chart/axis.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

namespace {

constexpr qreal kAway = 8.0; ///< From the plot to its numbers.

double round_step(double span, int steps)
{
    const double least = std::max(span, 1e-6) / std::max(1, steps);
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double part : {1.0, 2.0, 5.0}) {
        if (part * power >= least) {
            return part * power;
        }
    }
    return 10.0 * power;
}

} // namespace

Axis::Axis(double least, double most, int steps, double finest)
{
    step_ = std::max(round_step(most - least, steps), finest);
    bottom_ = std::floor(least / step_ + 1e-9) * step_;
    top_ = std::ceil(most / step_ - 1e-9) * step_;
    if (top_ <= bottom_) {
        top_ = bottom_ + step_;
    }
}

QString Axis::number(double value, const models::YearWords& words, bool signs) const
{
    const QString plain = words.decimal(value, step_ < 1.0 ? 1 : 0);
    return signs && value > step_ / 2.0 ? QLatin1Char('+') + plain : plain;
}

qreal Axis::label_width(const ChartInk& ink, const models::YearWords& words, bool signs) const
{
    const QFontMetricsF metrics(ink.small_strong);
    qreal width = 0.0;
    for (double value = bottom_; value <= top_ + step_ / 2.0; value += step_) {
        width = std::max(width, metrics.horizontalAdvance(number(value, words, signs)));
    }
    return std::ceil(width) + kAway;
}

void Axis::draw(QPainter& painter, const ChartInk& ink, const QRectF& plot, const models::YearWords& words,
                bool signs) const
{
    const QFontMetricsF metrics(ink.small);
    for (double value = bottom_; value <= top_ + step_ / 2.0; value += step_) {
        const bool zero = std::abs(value) < step_ / 2.0;
        const qreal at = std::round(y(plot, value)) + 0.5;
        painter.setPen(QPen(zero ? ink.edge : ink.rule, zero ? 1.2 : 0.9));
        painter.drawLine(QPointF(plot.left(), at), QPointF(plot.right(), at));
        painter.setFont(zero ? ink.small_strong : ink.small);
        painter.setPen(ink.ink2);
        painter.drawText(QRectF(plot.left() - 200.0, at - metrics.height() / 2.0, 200.0 - kAway, metrics.height()),
                         Qt::AlignRight | Qt::AlignVCenter, number(value, words, signs));
    }
}

void draw_side_labels(QPainter& painter, const ChartInk& ink, std::vector<SideLabel> labels, qreal x, qreal width,
                      qreal top, qreal bottom)
{
    const QFontMetricsF metrics(ink.small_strong);
    const qreal height = metrics.height();
    std::ranges::stable_sort(labels, {}, &SideLabel::y);
    // Down from the top, each below the one before it; then up again from the bottom where that ran out.
    qreal free = top;
    for (auto& label : labels) {
        label.y = std::max(label.y, free + height / 2.0);
        free = label.y + height / 2.0;
    }
    free = bottom;
    for (auto label = labels.rbegin(); label != labels.rend(); ++label) {
        label->y = std::min(label->y, free - height / 2.0);
        free = label->y - height / 2.0;
    }
    for (const auto& label : labels) {
        if (label.y - height / 2.0 < top - 1.0) {
            continue; // No room: the lists beside the chart name it all the same.
        }
        painter.setFont(label.strong ? ink.small_strong : ink.small);
        painter.setPen(label.colour);
        const QFontMetricsF own(painter.font());
        painter.drawText(QRectF(x, label.y - height / 2.0, width, height), Qt::AlignLeft | Qt::AlignVCenter,
                         own.elidedText(label.words, Qt::ElideRight, width));
    }
}

} // namespace lathhouse::chart
