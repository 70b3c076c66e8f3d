#include "app/sheet/sowing_row.h"

#include "app/chart/plant_bars.h"
#include "app/sheet/print_text.h"

#include <QPainter>

#include <algorithm>

namespace lathhouse::sheet {

void SowingRow::draw(QPainter& painter, const YearSheetFacts::Sowing& sowing) const
{
    const auto& [name, bar] = sowing;
    const qreal upper = chart::bar_top(row_, bar_height_);
    const qreal middle = upper + bar_height_ / 2.0;
    write_name(painter, text_font(13), ink_.ink,
               {kMargin, upper - 5.0, row_.left() - kMargin - 10.0, bar_height_ + 10.0}, name);
    if (!bar.sow) {
        return;
    }
    const qreal begin = x_of(bar.sow->from);
    const qreal out = bar.out ? x_of(bar.out->from) : begin;
    const qreal ready = bar.ready ? x_of(bar.ready->from) : out;
    const qreal end = bar.ready ? x_of(bar.ready->to) : std::max(out, x_of(bar.sow->to));
    painter.setBrush(ink_.sheet);
    painter.setPen(QPen(ink_.ink, 0.8));
    if (end > ready) {
        painter.drawRect(QRectF(ready, upper, end - ready, bar_height_));
    }
    painter.setPen(QPen(ink_.ink, 1.3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    if (out > begin) {
        painter.drawRect(QRectF(begin, upper, out - begin, bar_height_));
    }
    if (ready > out) {
        painter.setBrush(ink_.band);
        painter.drawRect(QRectF(out, upper, ready - out, bar_height_));
    }
    if (bar.harden && out > begin) {
        const qreal from = std::max(begin, x_of(*bar.harden));
        const QRectF ladder(from, upper, out - from, bar_height_);
        if (ladder.width() > 1.0) {
            const QPolygonF steps = chart::ladder_steps(ladder, models::kStepsOut);
            QPolygonF below = steps;
            below.append(ladder.bottomRight());
            below.append(ladder.bottomLeft());
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink_.band);
            painter.drawPolygon(below);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(ink_.ink, 2.0, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
            painter.drawPolyline(steps);
        }
    }
    if (bar.ready) {
        painter.setPen(QPen(ink_.ink, 2.0));
        painter.drawLine(QPointF(ready - 3.0, upper + bar_height_ + 1.0), QPointF(ready + 3.0, upper - 1.0));
    }
    if (bar.up) {
        const qreal y = upper - 3.5;
        painter.setPen(QPen(ink_.ink, 1.0));
        painter.drawLine(QPointF(x_of(bar.up->from), y), QPointF(x_of(bar.up->to), y));
        for (const calendar::Date date : {bar.up->from, bar.up->to}) {
            painter.drawLine(QPointF(x_of(date), y - 2.5), QPointF(x_of(date), y + 2.5));
        }
    }
    painter.setBrush(ink_.sheet);
    painter.setPen(QPen(ink_.ink, 1.8));
    painter.drawEllipse(QPointF(begin, middle), 4.4, 4.4);
    const auto words_in = [&](qreal left, qreal room, const QString& words) {
        if (text_width(ink_.small_strong, words) + 12.0 <= room) {
            chart::write_with_halo(painter, {left + 8.0, middle + 4.2}, words, ink_.small_strong, ink_.ink,
                                   ink_.sheet);
        }
    };
    words_in(begin, (bar.harden && bar.out ? x_of(*bar.harden) : out) - begin, tr("in trays"));
    words_in(out, ready - out, tr("out"));
    QString after = bar.ready ? tr("%1 from %2").arg(bar.ready_word, words_.day_and_month(bar.ready->from))
                              : tr("sow %1 to %2").arg(words_.day_and_month(bar.sow->from),
                                                       words_.day_and_month(bar.sow->to));
    const qreal width = text_width(ink_.small, after);
    const qreal last = std::max(end, begin + 6.0);
    const qreal at = last + 8.0 + width <= row_.right() ? last + 8.0 : begin - 10.0 - width;
    if (at >= row_.left() + 2.0) {
        chart::write_with_halo(painter, {at, middle + 4.2}, after, ink_.small, ink_.ink2, ink_.sheet);
    }
}

} // namespace lathhouse::sheet
