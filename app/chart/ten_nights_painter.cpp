#include "app/chart/ten_nights_painter.h"

#include "app/chart/axis.h"
#include "app/chart/chart_label.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <QPolygonF>

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

qreal on_ruler(const QRectF& room, qreal share)
{
    constexpr qreal kEdge = 2.0;
    return room.left() + kEdge + (room.width() - 2.0 * kEdge) * share;
}

void draw_night_curves(QPainter& painter, const ChartInk& ink, const std::vector<models::SpotNight>& spots,
                       const std::vector<models::RulerTick>& ticks, QRectF room, QRectF words_room)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(ink.small);
    const qreal axis = std::round(room.bottom() - metrics.height() - 8.0) + 0.5;
    const qreal height = axis - room.top() - 6.0;
    const auto hand = [&](const models::SpotNight& night, const QList<QColor>& of, const QColor& otherwise) {
        return night.hand >= 0 && !of.isEmpty() ? of[night.hand % of.size()] : otherwise;
    };
    const auto x = [&](qreal share) { return on_ruler(room, share); };
    const std::vector<Qt::PenStyle> styles{Qt::SolidLine, Qt::DashLine, Qt::DashDotLine};
    std::vector<ChartLabel> labels;
    for (std::size_t at = spots.size(); at-- > 0;) { // The first lies on top.
        const auto& night = spots[at];
        QPolygonF curve;
        for (std::size_t step = 0; step < night.heights.size(); ++step) {
            const qreal share = static_cast<qreal>(step) / static_cast<qreal>(night.heights.size() - 1);
            curve.append({x(share), axis - height * night.heights[step]});
        }
        QPainterPath area;
        area.addPolygon(curve);
        area.lineTo(x(1.0), axis);
        area.lineTo(x(0.0), axis);
        area.closeSubpath();
        QColor tint = hand(night, ink.tints, ink.cold_wash);
        tint.setAlphaF(0.7F);
        painter.fillPath(area, tint);
        painter.setPen(QPen(hand(night, ink.spots, ink.cold), 2.0, styles[std::min(at, styles.size() - 1)]));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(curve);
    }
    painter.setPen(QPen(ink.edge, 1.0));
    painter.drawLine(QPointF(x(0.0), axis), QPointF(x(1.0), axis));
    for (const auto& tick : ticks) {
        const qreal at = std::round(x(tick.at)) + 0.5;
        painter.setPen(QPen(tick.freezing ? ink.ink : ink.edge, tick.freezing ? 1.5 : 1.0));
        painter.drawLine(QPointF(at, tick.freezing ? room.top() : axis), QPointF(at, axis + 4.0));
        painter.setPen(tick.freezing ? ink.ink : ink.ink2);
        painter.setFont(tick.freezing ? ink.small_strong : ink.small);
        const qreal half = metrics.horizontalAdvance(tick.words) / 2.0;
        const qreal left = std::clamp(at - half, room.left(), room.right() - 2.0 * half - 1.0);
        painter.drawText(QPointF(left, axis + 5.0 + metrics.ascent()), tick.words);
    }
    const auto zero = std::ranges::find(ticks, true, &models::RulerTick::freezing);
    const qreal freezing = zero != ticks.end() ? x(zero->at) : words_room.left() - 1.0;
    double mean = 0.0;
    for (const auto& night : spots) {
        mean += night.middle_at / static_cast<double>(spots.size());
    }
    for (const auto& night : spots) { // The milder ones are named on their right, the colder ones on their left.
        ChartLabel label{.lines = {night.head, night.spread}, .font = ink.small, .colour = ink.ink};
        measure(label);
        label.wish.room = QRectF(words_room.left(), room.top(), words_room.width(), axis - room.top() - 2.0);
        const auto steps = static_cast<qreal>(night.heights.size() - 1);
        for (const qreal level : {1.0, 0.8, 0.6, 0.4}) {
            const auto reaches = [&](double of) { return of >= level * 0.9 * *std::ranges::max_element(night.heights); };
            const auto last = std::find_if(night.heights.rbegin(), night.heights.rend(), reaches);
            const auto first = std::ranges::find_if(night.heights, reaches);
            const qreal right = x(static_cast<qreal>(night.heights.rend() - last - 1) / steps) + 12.0;
            const qreal left = x(static_cast<qreal>(first - night.heights.begin()) / steps) - 12.0 - label.wish.size.width();
            const qreal y = room.top() + (axis - room.top()) * (1.0 - level) + label.wish.ascent;
            const bool milder = night.middle_at >= mean;
            qreal at = milder ? right : left;
            if (at < freezing && freezing < at + label.wish.size.width()) { // The line of freezing stays clear of words.
                at = milder ? freezing + 6.0 : freezing - 6.0 - label.wish.size.width();
            }
            label.wish.homes.emplace_back(at, y);
        }
        labels.push_back(std::move(label));
    }
    const auto places = places_at_home(wishes_of(labels));
    for (std::size_t at = 0; at < labels.size(); ++at) {
        if (places[at]) {
            write_label(painter, ink, labels[at], *places[at]);
        }
    }
}

} // namespace lathhouse::chart
