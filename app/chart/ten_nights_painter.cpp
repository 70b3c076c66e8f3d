#include "app/chart/ten_nights_painter.h"

#include "app/chart/axis.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

void draw_ten_nights(QPainter& painter, const ChartInk& ink, const models::TenNights& ten,
                     const models::YearWords& words, QRectF room)
{
    if (ten.nights.empty()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    double least = words.shown(ten.nights.front().low5);
    double most = words.shown(ten.nights.front().low95);
    for (const auto& night : ten.nights) {
        least = std::min(least, words.shown(night.low5));
        most = std::max(most, words.shown(night.low95));
    }
    for (const auto& mark : ten.marks) {
        least = std::min(least, words.shown(mark.line) - 0.5);
        most = std::max(most, words.shown(mark.line) + 0.5);
    }
    const Axis axis(least, most, 5);
    const QFontMetricsF metrics(ink.small);
    const qreal left = axis.label_width(ink, words, false);
    qreal right = 0.0;
    const auto label_of = [&](const models::DamageMark& mark, const QString& plants) {
        return words.bare(mark.line) + QStringLiteral("° ") + plants;
    };
    for (const auto& mark : ten.marks) {
        right = std::max(right, metrics.horizontalAdvance(label_of(mark, mark.plants)) + 8.0);
    }
    right = std::min(right, room.width() * 0.4);
    const qreal foot = metrics.height() + 6.0;
    const QRectF plot(room.left() + left, room.top() + metrics.height() / 2.0, room.width() - left - right,
                      room.height() - foot - metrics.height() / 2.0);
    axis.draw(painter, ink, plot, words, false);

    std::vector<SideLabel> labels;
    for (const auto& mark : ten.marks) {
        const qreal y = axis.y(plot, words.shown(mark.line));
        painter.setPen(QPen(ink.caution, 1.5, Qt::DashLine, Qt::FlatCap));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        const QString label = label_of(mark, mark.plants);
        const bool fits = metrics.horizontalAdvance(label) <= right - 6.0;
        labels.push_back({fits ? label : label_of(mark, mark.brief), ink.ink, y});
    }
    draw_side_labels(painter, ink, labels, plot.right() + 6.0, right - 6.0, room.top(), plot.bottom() + 4.0);

    const qreal step = plot.width() / static_cast<qreal>(ten.nights.size());
    const qreal half = std::min(7.0, step * 0.28);
    // Where names would touch, every other night keeps its own.
    const bool all_named = std::ranges::all_of(
        ten.nights, [&](const auto& night) { return step >= metrics.horizontalAdvance(night.day) + 3.0; });
    for (std::size_t place = 0; place < ten.nights.size(); ++place) {
        const auto& night = ten.nights[place];
        const qreal x = std::round(plot.left() + step * (static_cast<qreal>(place) + 0.5)) + 0.5;
        const auto y = [&](Celsius low) { return axis.y(plot, words.shown(low)); };
        const bool tonight = place == 0;
        painter.setPen(QPen(ink.cold, night.forecast ? 1.6 : 1.2, night.forecast ? Qt::SolidLine : Qt::DotLine));
        painter.drawLine(QPointF(x, y(night.low5)), QPointF(x, y(night.low95)));
        const QRectF box(QPointF(x - half, y(night.low75)), QPointF(x + half, y(night.low25)));
        painter.setBrush(!night.forecast ? ink.sheet : tonight ? ink.cold : ink.cold_wash);
        painter.setPen(QPen(ink.cold, 1.2, night.forecast ? Qt::SolidLine : Qt::DotLine));
        painter.drawRect(box);
        painter.setPen(QPen(tonight && night.forecast ? ink.sheet : ink.cold, 2.0));
        painter.drawLine(QPointF(box.left(), y(night.low50)), QPointF(box.right(), y(night.low50)));
        painter.setPen(tonight ? ink.ink : ink.ink2);
        painter.setFont(tonight ? ink.small_strong : ink.small);
        if (all_named || place % 2 == 0) {
            painter.drawText(QRectF(x - 40.0, plot.bottom() + 5.0, 80.0, metrics.height()), Qt::AlignHCenter, night.day);
        }
    }
}

} // namespace lathhouse::chart
