#include "app/chart/plant_bars.h"

#include "app/models/year_words.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

QPolygonF ladder_steps(const QRectF& box, int steps)
{
    QPolygonF line;
    for (int step = 0; step < steps; ++step) {
        const qreal y = box.bottom() - box.height() * (step + 1) / (steps + 1);
        line.append({box.left() + box.width() * step / steps, y});
        line.append({box.left() + box.width() * (step + 1) / steps, y});
    }
    return line;
}

void fill_spot(QPainter& painter, const ChartInk& ink, const models::YearSpot& spot, const QPainterPath& area)
{
    const auto colour = static_cast<qsizetype>(spot.colour);
    painter.fillPath(area, ink.tints[colour]);
    fill_pattern(painter, ink, static_cast<models::Pattern>(spot.colour), ink.spots[colour], area, spot.turned);
}

qreal bar_top(const QRectF& row, qreal bar_height)
{
    return std::round(row.top() + (row.height() - bar_height) / 2.0 + 3.0) + 0.5;
}

void draw_plant_bar(QPainter& painter, const ChartInk& ink, const PlantBar& bar, QRectF row, qreal bar_height)
{
    const models::YearData& year = bar.year;
    const models::DaySpan view = bar.view;
    const std::vector<models::YearStay>& stays = bar.stays;
    const auto x = [&row, view](qreal day) {
        return row.left() + row.width() * (day - view.first) / std::max(1, view.count);
    };
    const qreal top = bar_top(row, bar_height);
    const bool old = bar.outdated;
    if (ink.spots.size() < 8 || ink.tints.size() < 8) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (view.first > 0 || view.count < static_cast<int>(year.days.size())) { // Whole bars draw their outline on the edge.
        painter.setClipRect(row.adjusted(-0.5, 0, 0, 0));
    }

    for (std::size_t place = 0; place < stays.size(); ++place) {
        const models::YearStay& stay = stays[place];
        const models::YearSpot& spot = year.spots[stay.spot];
        const auto colour = static_cast<qsizetype>(spot.colour);
        const QColor full = ink.spots[colour];
        const bool own_ladder_inside = stay.ladder_days > 0 && !spot.outdoors && place > 0;
        const qreal begin = x(own_ladder_inside ? stay.first + stay.ladder_days : stay.first);
        const bool next_ladder_inside = place + 1 < stays.size() && stays[place + 1].ladder_days > 0 &&
                                        year.spots[stays[place + 1].spot].outdoors;
        const qreal end =
            x(next_ladder_inside ? stay.last + 1 - stays[place + 1].ladder_days : stay.last + 1);
        const QRectF box(begin, top, std::max(1.0, end - begin), bar_height);
        QPainterPath area;
        area.addRect(box);
        fill_spot(painter, ink, spot, area);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(full, 1.3, old ? Qt::DashLine : Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.drawRect(box);
        if (spot.turned && colour == 0) { // Plain has no pattern to turn.
            painter.setPen(QPen(full, 1.0));
            painter.drawRect(box.adjusted(2.5, 2.5, -2.5, -2.5));
        }
        painter.fillRect(QRectF(box.left() - 1.0, box.top() - 0.65, 3.0, box.height() + 1.3), full);

        if (stay.ladder_days > 0 && place > 0) {
            const models::YearSpot& before = year.spots[stays[place - 1].spot];
            const qreal from = x(spot.outdoors ? stay.first - stay.ladder_days : stay.first);
            const QRectF ladder(from, top, box.left() - from, bar_height);
            const QPolygonF steps =
                ladder_steps(ladder, spot.outdoors ? models::kStepsOut : models::kStepsIn);
            QPainterPath old_light;
            old_light.addRect(ladder);
            fill_spot(painter, ink, before, old_light);
            QPolygonF below = steps;
            below.append(ladder.bottomRight());
            below.append(ladder.bottomLeft());
            QPainterPath new_light;
            new_light.addPolygon(below);
            new_light.closeSubpath();
            fill_spot(painter, ink, spot, new_light);
            const QColor old_full = ink.spots[static_cast<qsizetype>(before.colour)];
            painter.setPen(QPen(old_full, 1.3, old ? Qt::DashLine : Qt::SolidLine));
            painter.drawLine(ladder.topLeft(), ladder.topRight());
            painter.setPen(QPen(full, 1.3, old ? Qt::DashLine : Qt::SolidLine));
            painter.drawLine(ladder.bottomLeft(), ladder.bottomRight());
            painter.setPen(QPen(full, 2.0, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
            painter.drawPolyline(steps);
        }

        const QString name = models::text(spot.short_name);
        const QFontMetricsF metrics(ink.small_strong);
        const qreal name_width = metrics.horizontalAdvance(name);
        // The name stands at the bar's beginning, or at that of what is in view.
        const qreal seen_from = std::max(box.left(), row.left());
        if (std::min(box.right(), row.right()) - seen_from >= name_width + 16.0) {
            const QRectF plate(std::round(seen_from + 7.0), box.top() + 1.0, name_width + 8.0,
                               bar_height - 2.0);
            painter.fillRect(plate, ink.tints[colour]);
            painter.setFont(ink.small_strong);
            painter.setPen(ink.ink);
            painter.drawText(
                QPointF(plate.left() + 4.0, std::round(plate.center().y() + metrics.capHeight() / 2.0 - 0.5)),
                name);
            // Why it is not let out, where that has room.
            const QString reason = models::text(stay.stays_in);
            const qreal left = plate.right() + 8.0;
            const qreal width = QFontMetricsF(ink.small).horizontalAdvance(reason);
            if (!reason.isEmpty() && left + width + 12.0 <= std::min(box.right(), row.right())) {
                painter.fillRect(QRectF(left, plate.top(), width + 8.0, plate.height()), ink.tints[colour]);
                painter.setFont(ink.small);
                painter.drawText(QPointF(left + 4.0, std::round(plate.center().y() + metrics.capHeight() / 2.0 - 0.5)), reason);
            }
        }
    }
    painter.setBrush(Qt::NoBrush);
    for (const models::RiskDate& date : bar.dates) {
        const qreal fifth = x(static_cast<qreal>(date.at_fifth));
        const qreal twentieth = x(static_cast<qreal>(date.at_twentieth));
        const qreal chosen = x(static_cast<qreal>(date.chosen));
        const qreal y = top - 3.5;
        painter.setPen(QPen(ink.ink, 1.0));
        painter.drawLine(QPointF(fifth, y), QPointF(twentieth, y));
        painter.drawLine(QPointF(fifth, y - 2.5), QPointF(fifth, y + 2.5));
        painter.drawLine(QPointF(twentieth, y - 2.5), QPointF(twentieth, y + 2.5));
        painter.setPen(QPen(ink.ink, 2.4, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(chosen, y - 2.5), QPointF(chosen, y + 2.5));
    }
    painter.restore();
}

void draw_feeds(QPainter& painter, const ChartInk& ink, const std::vector<int>& days, models::DaySpan view, QRectF row,
                qreal bar_height)
{
    const qreal below = bar_top(row, bar_height) + bar_height;
    painter.save();
    painter.setPen(QPen(ink.leaf, 2.0, Qt::SolidLine, Qt::FlatCap));
    for (const int day : days) {
        if (day >= view.first && day < view.first + view.count) {
            const qreal x = row.left() + row.width() * (day + 0.5 - view.first) / std::max(1, view.count);
            painter.drawLine(QPointF(x, below - 2.5), QPointF(x, below + 2.3));
        }
    }
    painter.restore();
}

void draw_sowing(QPainter& painter, const ChartInk& ink, const models::YearSowing& sowing, models::DaySpan view,
                 QRectF row)
{
    const auto x = [&row, view](int day) {
        return row.left() + row.width() * (day - view.first) / std::max(1, view.count);
    };
    const qreal middle = std::round(row.center().y()) + 0.5;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(row);
    const int last = sowing.ready ? sowing.ready->first + sowing.ready->count
                     : sowing.out ? *sowing.out
                     : sowing.up  ? sowing.up->first + sowing.up->count
                                  : sowing.sow;
    painter.setPen(QPen(ink.ink2, 1.0));
    painter.drawLine(QPointF(x(sowing.sow), middle), QPointF(x(last), middle));
    const auto bracket = [&](const models::DaySpan& span, const QColor& colour) {
        const qreal left = x(span.first);
        const qreal right = std::max(left + 2.0, x(span.first + span.count));
        painter.setPen(QPen(colour, 1.6));
        painter.drawLine(QPointF(left, middle - 5.0), QPointF(right, middle - 5.0));
        painter.drawLine(QPointF(left, middle - 5.0), QPointF(left, middle - 1.5));
        painter.drawLine(QPointF(right, middle - 5.0), QPointF(right, middle - 1.5));
    };
    if (sowing.up) {
        bracket(*sowing.up, ink.leaf);
    }
    if (sowing.harden && sowing.out && *sowing.harden < *sowing.out) {
        const qreal left = x(*sowing.harden);
        const qreal step = (x(*sowing.out) - left) / models::kStepsOut;
        QPolygonF ladder{{left, middle + 5.0}};
        for (int at = 0; at < models::kStepsOut; ++at) {
            const qreal y = middle + 5.0 - 10.0 * (at + 1) / models::kStepsOut;
            ladder << QPointF(left + step * at, y) << QPointF(left + step * (at + 1), y);
        }
        painter.setPen(QPen(ink.ink, 1.6));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(ladder);
    } else if (sowing.out) {
        painter.setPen(QPen(ink.ink, 1.6));
        painter.drawLine(QPointF(x(*sowing.out), middle - 5.0), QPointF(x(*sowing.out), middle + 5.0));
    }
    if (sowing.ready) {
        painter.setPen(QPen(ink.ink, 2.2));
        const qreal at = x(sowing.ready->first);
        painter.drawLine(QPointF(at - 3.0, middle + 5.0), QPointF(at + 3.0, middle - 5.0));
    }
    painter.setPen(QPen(ink.ink, 1.8));
    painter.setBrush(ink.sheet);
    painter.drawEllipse(QPointF(x(sowing.sow) + 4.5, middle), 4.5, 4.5);
    const QString words = models::text(sowing.end_words);
    const QFontMetricsF metrics(ink.small);
    const qreal width = metrics.horizontalAdvance(words);
    // Behind the end, or before the beginning where there is no room behind.
    qreal left = std::max(x(sowing.sow) + 14.0, x(last) + 8.0);
    if (left + width > row.right()) {
        left = x(sowing.sow) - 8.0 - width;
    }
    if (left >= row.left()) {
        write_with_halo(painter, QPointF(left, middle + metrics.capHeight() / 2.0), words, ink.small, ink.ink2, ink.sheet);
    }
    painter.restore();
}

} // namespace lathhouse::chart
