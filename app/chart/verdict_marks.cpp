#include "app/chart/verdict_marks.h"

#include "app/chart/translated.h"
#include "core/growth/recovery.h"

#include <QFontMetricsF>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

void draw_verdict_ring(QPainter& painter, const ChartInk& ink, int verdict, double share, double low, double high,
                       QRectF room)
{
    if (verdict < 0) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const auto kind = static_cast<growth::Verdict>(verdict);
    const qreal side = std::min(room.width(), room.height());
    const qreal thick = side * 0.11;
    const QRectF ring = QRectF(room.center().x() - side / 2.0, room.center().y() - side / 2.0, side, side)
                            .adjusted(thick, thick, -thick, -thick);
    const auto arc = [&](double from, double to, const QPen& pen) {
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawArc(ring, static_cast<int>(std::lround((90.0 - 360.0 * from) * 16.0)),
                        static_cast<int>(std::lround(-360.0 * (to - from) * 16.0)));
    };
    const QPen pale(ink.edge, thick * 0.5, Qt::SolidLine, Qt::FlatCap);
    const QPen full(ink.leaf, thick, Qt::SolidLine, Qt::FlatCap);
    QPen dotted(ink.leaf, thick * 0.7, Qt::CustomDashLine, Qt::RoundCap);
    dotted.setDashPattern({0.1, 1.5});
    const auto within = [](double value) { return std::clamp(value, 0.0, 1.0); };
    const QPointF middle = ring.center();
    const qreal unit = side / 40.0;
    const QPen stroke(ink.ink, unit * 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    switch (kind) {
    case growth::Verdict::NoSetback:
        arc(0.0, 1.0, full);
        painter.setPen(stroke);
        painter.drawLine(middle - QPointF(6, 0) * unit, middle + QPointF(6, 0) * unit);
        break;
    case growth::Verdict::Recovered:
        arc(0.0, 1.0, full);
        painter.setPen(stroke);
        painter.drawPolyline(QPolygonF{middle + QPointF(-6, 0) * unit, middle + QPointF(-1.5, 4.5) * unit,
                                       middle + QPointF(6.5, -5) * unit});
        break;
    case growth::Verdict::Recovering:
        arc(0.0, 1.0, pale);
        arc(std::isnan(low) ? 0.0 : within(low), std::isnan(high) ? 1.0 : within(high), dotted);
        arc(0.0, std::isnan(share) ? 0.0 : within(share), full);
        painter.setPen(stroke);
        painter.drawLine(middle + QPointF(0, 6) * unit, middle + QPointF(0, -6) * unit);
        painter.drawPolyline(QPolygonF{middle + QPointF(-4.5, -1.5) * unit, middle + QPointF(0, -6.5) * unit,
                                       middle + QPointF(4.5, -1.5) * unit});
        break;
    case growth::Verdict::Holding:
        arc(0.0, 1.0, pale);
        painter.setPen(stroke);
        for (const qreal y : {-2.6, 2.6}) {
            painter.drawLine(middle + QPointF(-5.5, y) * unit, middle + QPointF(5.5, y) * unit);
        }
        break;
    case growth::Verdict::Declining:
        arc(0.0, 1.0, pale);
        arc(0.5, 1.0, QPen(ink.caution, thick, Qt::SolidLine, Qt::FlatCap));
        painter.setPen(QPen(ink.caution, unit * 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawLine(middle + QPointF(0, -6) * unit, middle + QPointF(0, 6) * unit);
        painter.drawPolyline(QPolygonF{middle + QPointF(-4.5, 1.5) * unit, middle + QPointF(0, 6.5) * unit,
                                       middle + QPointF(4.5, 1.5) * unit});
        break;
    case growth::Verdict::TooEarly:
        dotted.setColor(ink.ink2);
        arc(0.0, 1.0, dotted);
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink.ink);
        for (const qreal x : {-6.0, 0.0, 6.0}) {
            painter.drawEllipse(middle + QPointF(x, 0) * unit, 1.8 * unit, 1.8 * unit);
        }
        break;
    }
}

void draw_verdict_scale(QPainter& painter, const ChartInk& ink, double share, double low, double high, QRectF room)
{
    constexpr double kLittle = 0.2;
    constexpr double kNearlyAll = 0.8;
    constexpr double kEnd = 1.3;
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(ink.small);
    const qreal left = room.left() + metrics.horizontalAdvance(tr("none")) / 2.0;
    const QRectF bar(left, room.top() + metrics.height() + 3.0, room.right() - left - 4.0, 11.0);
    const auto x = [&](double of) { return bar.left() + bar.width() * std::clamp(of, 0.0, kEnd) / kEnd; };
    painter.fillRect(QRectF(QPointF(x(0.0), bar.top()), QPointF(x(kLittle), bar.bottom())), ink.well);
    painter.fillRect(QRectF(QPointF(x(kLittle), bar.top()), QPointF(x(kNearlyAll), bar.bottom())), ink.leaf_wash);
    QColor deep = ink.leaf;
    deep.setAlphaF(0.45F);
    painter.fillRect(QRectF(QPointF(x(kNearlyAll), bar.top()), QPointF(x(kEnd), bar.bottom())), deep);
    painter.setPen(QPen(ink.rule, 0.9)); // High contrast has no washes.
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const auto centred = [&](double at, qreal base, const QString& words) {
        const qreal width = metrics.horizontalAdvance(words);
        painter.drawText(QPointF(std::clamp(x(at) - width / 2.0, room.left(), room.right() - width), base), words);
    };
    const qreal above = room.top() + metrics.ascent();
    centred((kLittle + kNearlyAll) / 2.0, above, tr("recovering"));
    centred((kNearlyAll + kEnd) / 2.0, above, tr("recovered"));
    const qreal below = bar.bottom() + 4.0 + metrics.ascent();
    centred(0.0, below, tr("none"));
    centred(kLittle, below, QStringLiteral("0.2").replace(QLatin1Char('.'), QLocale().decimalPoint()));
    centred(kNearlyAll, below, QStringLiteral("0.8").replace(QLatin1Char('.'), QLocale().decimalPoint()));
    centred(1.0 + 0.1, below, tr("as before"));
    painter.setPen(QPen(ink.edge, 1.0));
    for (const double tick : {0.0, kLittle, kNearlyAll, 1.0}) {
        painter.drawLine(QPointF(x(tick), bar.top() - 2.0), QPointF(x(tick), bar.bottom() + 2.0));
    }
    if (std::isnan(share)) {
        return;
    }
    const qreal y = bar.center().y();
    painter.setPen(QPen(ink.ink, 2.0));
    const qreal from = std::isnan(low) ? bar.left() : x(low);
    const qreal to = std::isnan(high) ? bar.right() : x(high);
    painter.drawLine(QPointF(from, y), QPointF(to, y));
    for (const qreal end : {from, to}) {
        painter.drawLine(QPointF(end, y - 5.0), QPointF(end, y + 5.0));
    }
    painter.setBrush(ink.sheet);
    painter.drawEllipse(QPointF(x(share), y), 5.0, 5.0);
}

} // namespace lathhouse::chart
