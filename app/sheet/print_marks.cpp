#include "app/sheet/print_marks.h"

#include "app/chart/plant_bars.h"

#include <QPainter>
#include <QPainterPath>

namespace lathhouse::sheet {

void draw_lozenge(QPainter& painter, QPointF middle)
{
    constexpr qreal kHalf = 5.2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    painter.drawPolygon(QPolygonF{{middle.x(), middle.y() - kHalf},
                                  {middle.x() + kHalf, middle.y()},
                                  {middle.x(), middle.y() + kHalf},
                                  {middle.x() - kHalf, middle.y()}});
}

void draw_spot_plate(QPainter& painter, const chart::ChartInk& ink, const models::YearSpot& spot, const QRectF& box)
{
    QPainterPath area;
    area.addRect(box);
    chart::fill_spot(painter, ink, spot, area);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.ink, 1.3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(box);
    if (spot.turned && spot.colour == 0) { // Plain has no pattern to turn.
        painter.setPen(QPen(ink.ink, 1.0));
        painter.drawRect(box.adjusted(2.5, 2.5, -2.5, -2.5));
    }
    painter.fillRect(QRectF(box.left() - 1.0, box.top() - 0.65, 3.0, box.height() + 1.3), ink.ink);
}

void draw_tick_box(QPainter& painter, QPointF upper_left)
{
    painter.setBrush(Qt::white);
    painter.setPen(QPen(Qt::black, 1.3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(QRectF(upper_left, QSizeF(kTickBox, kTickBox)));
}

void draw_laths(QPainter& painter, int count, QPointF lower_left)
{
    constexpr qreal kWidth = 4.0;
    constexpr qreal kHeight = 14.0;
    for (int lath = 0; lath < count; ++lath) {
        painter.fillRect(QRectF(lower_left.x() + lath * (kWidth + 3.0), lower_left.y() - kHeight, kWidth, kHeight),
                         Qt::black);
    }
}

void draw_rule(QPainter& painter, const QColor& ink, qreal left, qreal right, qreal y, qreal width)
{
    painter.setPen(QPen(ink, width));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
}

} // namespace lathhouse::sheet
