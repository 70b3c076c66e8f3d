#include "app/chart/tonight_items.h"

#include "app/chart/ten_nights_painter.h"

namespace lathhouse::chart {

void TonightChart::setTonight(models::TonightModel* tonight)
{
    if (tonight == tonight_) {
        return;
    }
    if (tonight_) {
        tonight_->disconnect(this);
    }
    tonight_ = tonight;
    if (tonight_) {
        connect(tonight_, &models::TonightModel::tonightChanged, this, [this] { update(); });
    }
    emit tonightChanged();
    update();
}

void TenNightsChart::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (tonight() != nullptr) {
        draw_ten_nights(painter, ink, tonight()->ten(), tonight()->words(), room);
    }
}

NightCurves::NightCurves(QQuickItem* parent) : TonightChart(parent)
{
    connect(this, &NightCurves::rulerChanged, this, [this] { update(); });
}

void NightCurves::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (tonight() != nullptr) {
        draw_night_curves(painter, ink, tonight()->spots(), tonight()->ruler_ticks(), {ruler_x_, room.top(), ruler_width_, room.height()}, room);
    }
}

NightRuler::NightRuler(QQuickItem* parent) : SheetChart(parent)
{
    connect(this, &NightRuler::placesChanged, this, [this] { update(); });
}

void NightRuler::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    painter.setRenderHint(QPainter::Antialiasing);
    const auto x = [&](qreal share) { return on_ruler(room, share); };
    const qreal y = room.center().y();
    const QColor hand = spot_colour_ >= 0 && !ink.spots.isEmpty() ? ink.spots[spot_colour_ % ink.spots.size()] : ink.cold;
    painter.setPen(QPen(ink.rule, 1.0));
    painter.drawLine(QPointF(x(0.0), y), QPointF(x(1.0), y));
    if (zero_at_ >= 0.0) {
        painter.setPen(QPen(ink.edge, 1.0));
        painter.drawLine(QPointF(x(zero_at_), room.top() + 2.0), QPointF(x(zero_at_), room.bottom() - 2.0));
    }
    if (line_at_ > low_at_) { // What of the range lies at or below the line.
        const QRectF harm(QPointF(x(low_at_), y - 7.0), QPointF(x(qMin(line_at_, high_at_)), y + 7.0));
        painter.setPen(QPen(ink.caution, 1.0));
        painter.setBrush(hatch_brush(ink.caution, painter.device()->devicePixelRatioF()));
        painter.drawRect(harm);
    }
    painter.setPen(QPen(hand, 2.0));
    painter.drawLine(QPointF(x(low_at_), y), QPointF(x(high_at_), y));
    for (const qreal end : {low_at_, high_at_}) {
        painter.drawLine(QPointF(x(end), y - 5.0), QPointF(x(end), y + 5.0));
    }
    painter.setBrush(ink.sheet);
    painter.drawEllipse(QPointF(x(middle_at_), y), 3.8, 3.8);
    painter.setPen(QPen(ink.caution, 3.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x(line_at_), y - 11.0), QPointF(x(line_at_), y + 11.0));
}

} // namespace lathhouse::chart
