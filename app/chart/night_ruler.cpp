#include "app/chart/night_ruler.h"

#include "app/chart/translated.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::chart {

void draw_night_ruler(QPainter& painter, const ChartInk& ink, const models::NightNeeds& needs,
                      const models::YearWords& words, QRectF room)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(ink.small);
    // Room for the zone words above the bar, for the figures below it, and for the spot's night below those.
    const qreal top = room.top() + metrics.height() + 4.0;
    const QRectF bar(room.left() + 4.0, top, room.width() - 8.0, std::max(12.0, metrics.height() * 0.8));
    double least = needs.lethal.degrees() - 6.0;
    double most = needs.heat.degrees() + 4.0;
    if (needs.here) {
        least = std::min(least, needs.here->degrees() - 2.0);
        most = std::max(most, needs.here->degrees() + 2.0);
    }
    const auto x = [&](double degrees) { return bar.left() + bar.width() * (degrees - least) / (most - least); };
    const auto mixed = [&](const QColor& colour, double share) {
        return QColor::fromRgbF(static_cast<float>(colour.redF() * share + ink.sheet.redF() * (1.0 - share)),
                                static_cast<float>(colour.greenF() * share + ink.sheet.greenF() * (1.0 - share)),
                                static_cast<float>(colour.blueF() * share + ink.sheet.blueF() * (1.0 - share)));
    };
    struct Zone {
        double from, to;
        QColor colour;
        QString words;
    };
    const double lethal = needs.lethal.degrees();
    const double damage = needs.damage.degrees();
    const double safe = needs.safe.degrees();
    const double heat = needs.heat.degrees();
    const Zone zones[] = {{least, lethal, ink.caution, tr("lethal")},
                          {lethal, damage, mixed(ink.caution, 0.5), tr("harm")},
                          {damage, safe, mixed(ink.caution, 0.17), tr("stress")},
                          {safe, heat, ink.leaf_wash, tr("at ease")},
                          {heat, most, mixed(ink.warm, 0.3), QString{}}};
    painter.setFont(ink.small);
    qreal words_end = room.left();
    for (const auto& zone : zones) {
        const QRectF box(QPointF(x(zone.from), bar.top()), QPointF(x(zone.to), bar.bottom()));
        painter.fillRect(box, zone.colour);
        const qreal width = metrics.horizontalAdvance(zone.words);
        qreal left = std::max(box.center().x() - width / 2.0, words_end);
        if (!zone.words.isEmpty() && left + width <= std::max(box.right() + 30.0, box.center().x() + width)) {
            painter.setPen(ink.ink2);
            painter.drawText(QPointF(left, bar.top() - 4.0 - metrics.descent()), zone.words);
            words_end = left + width + 6.0;
        }
    }
    painter.setPen(QPen(ink.edge, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setFont(ink.small_strong);
    const QFontMetricsF strong(ink.small_strong);
    qreal end = room.left() - 4.0;
    const std::array lines{needs.lethal, needs.damage, needs.safe, needs.heat};
    for (std::size_t at = 0; at < lines.size(); ++at) {
        const qreal here = x(lines[at].degrees());
        painter.setPen(QPen(ink.ink, 1.6));
        painter.drawLine(QPointF(here, bar.top() - 3.0), QPointF(here, bar.bottom() + 3.0));
        const QString figure = words.whole(static_cast<int>(std::lround(words.shown(lines[at])))) + (at + 1 == lines.size() ? QChar(0x202F) + words.unit() : QString{});
        const qreal width = strong.horizontalAdvance(figure);
        const qreal left = std::min(here - width / 2.0, room.right() - width);
        if (left > end + 4.0) {
            painter.setPen(ink.ink);
            painter.drawText(QPointF(left, bar.bottom() + 5.0 + strong.ascent()), figure);
            end = left + width;
        }
    }
    if (needs.here) {
        const qreal here = x(needs.here->degrees());
        const qreal base = bar.bottom() + 5.0 + strong.height();
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink.cold);
        painter.drawPolygon(QPolygonF{{here, base + 1.0}, {here + 5.0, base + 9.0}, {here - 5.0, base + 9.0}});
        painter.setPen(QPen(ink.cold, 1.4));
        painter.drawLine(QPointF(here, bar.top()), QPointF(here, bar.bottom()));
        QString figure = tr("its spot tonight, about %1").arg(words.temperature(*needs.here));
        if (metrics.horizontalAdvance(figure) + 9.0 > std::max(room.right() - here, here - room.left())) {
            figure = tr("tonight about %1").arg(words.temperature(*needs.here)); // Else it would lie over its mark.
        }
        const qreal width = metrics.horizontalAdvance(figure);
        const qreal left = here + 9.0 + width <= room.right() ? here + 9.0 : here - 9.0 - width;
        painter.setFont(ink.small);
        painter.setPen(ink.ink);
        painter.drawText(QPointF(std::max(left, room.left()), base + metrics.ascent()), figure);
    }
}

} // namespace lathhouse::chart
