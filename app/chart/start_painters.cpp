#include "app/chart/start_painters.h"

#include "app/chart/axis.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

namespace {

QColor between(const QColor& from, const QColor& to, double share)
{
    const auto mixed = [share](float a, float b) { return static_cast<float>(a + (b - a) * share); };
    return QColor::fromRgbF(mixed(from.redF(), to.redF()), mixed(from.greenF(), to.greenF()), mixed(from.blueF(), to.blueF()));
}

/// The sky's colour for the share of the day that has daylight: dusk at a quarter, straw at three.
QColor sky(const ChartInk& ink, double day_share)
{
    const double share = std::clamp((day_share - 0.25) / 0.5, 0.0, 1.0);
    return share < 0.5 ? between(ink.dusk, ink.dawn, share * 2.0) : between(ink.dawn, ink.straw, share * 2.0 - 1.0);
}

} // namespace

void draw_place_nights(QPainter& painter, const ChartInk& ink, const models::PlaceNightsYear& year,
                       const models::YearWords& words, QRectF room)
{
    if (year.days.size() < 2) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    double least = year.freezing;
    double most = year.freezing;
    for (const auto& day : year.days) {
        least = std::min(least, day.cold);
        most = std::max(most, day.warm);
    }
    const Axis axis(least, most, 4);
    const QFontMetricsF metrics(ink.small);
    const qreal left = axis.label_width(ink, words, false);
    const QRectF plot(room.left() + left, room.top() + metrics.height() / 2.0, room.width() - left,
                      room.height() - 1.5 * metrics.height() - 6.0);
    if (plot.width() < 60.0 || plot.height() < 30.0) {
        return;
    }
    const auto x = [&](double at) { return plot.left() + plot.width() * at; };
    if (ink.sky_coloured) {
        painter.setPen(Qt::NoPen);
        painter.setRenderHint(QPainter::Antialiasing, false);
        for (std::size_t day = 0; day + 1 < year.days.size(); ++day) {
            const qreal from = std::round(x(year.days[day].at));
            painter.setBrush(sky(ink, year.days[day].day_share));
            painter.drawRect(QRectF(from, plot.top(), std::round(x(year.days[day + 1].at)) - from, plot.height()));
        }
        painter.setRenderHint(QPainter::Antialiasing);
    }
    axis.draw(painter, ink, plot, words, false);

    QPolygonF band;
    QPolygonF middle;
    for (const auto& day : year.days) {
        band.append({x(day.at), axis.y(plot, day.warm)});
        middle.append({x(day.at), axis.y(plot, day.middle)});
    }
    for (auto day = year.days.rbegin(); day != year.days.rend(); ++day) {
        band.append({x(day->at), axis.y(plot, day->cold)});
    }
    const qreal frost = axis.y(plot, year.freezing);
    painter.setPen(QPen(ink.cold, 0.9));
    painter.setBrush(ink.band);
    painter.drawPolygon(band);
    painter.save(); // Below the frost line the band is hatched as well.
    painter.setClipRect(QRectF(plot.left(), frost, plot.width(), plot.bottom() - frost));
    painter.setBrush(hatch_brush(ink.cold, painter.device() != nullptr ? painter.device()->devicePixelRatioF() : 1.0));
    painter.drawPolygon(band);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.cold, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(middle);

    painter.setPen(QPen(ink.ink, 1.5));
    painter.drawLine(QPointF(plot.left(), frost), QPointF(plot.right(), frost));
    const auto mark = [&](const std::optional<double>& half, const std::optional<double>& tenth) {
        if (half && tenth) { // Thick from the date of half the years to that of one in ten.
            painter.setPen(QPen(ink.ink, 5.0, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(x(*half), frost), QPointF(x(*tenth), frost));
        }
        if (tenth) {
            painter.setPen(QPen(ink.ink, 2.0, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(x(*tenth), frost - 8.0), QPointF(x(*tenth), frost + 8.0));
        }
    };
    mark(year.last_half, year.last_tenth);
    mark(year.first_half, year.first_tenth);
    if (!year.words.isEmpty()) {
        const QFontMetricsF strong(ink.small_strong);
        const qreal width = strong.horizontalAdvance(year.words);
        qreal middle_x = plot.center().x();
        if (year.last_tenth && year.first_tenth && *year.last_tenth < *year.first_tenth) {
            middle_x = x((*year.last_tenth + *year.first_tenth) / 2.0);
        } else if (year.last_tenth && year.first_tenth) { // The free months lie over the turn of the year.
            middle_x = plot.left() + width / 2.0 + 8.0;
        }
        middle_x = std::clamp(middle_x, plot.left() + width / 2.0 + 4.0, std::max(plot.left() + width / 2.0 + 4.0, plot.right() - width / 2.0 - 4.0));
        const qreal below = frost + strong.height();
        const qreal base = below < plot.bottom() - 2.0 ? below : frost - 6.0;
        write_with_halo(painter, {middle_x - width / 2.0, base}, year.words, ink.small_strong, ink.ink, ink.sheet);
    }
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const qreal step = plot.width() / 12.0;
    for (int month = 0; month < 12; ++month) {
        const QString name = words.month(calendar::Date{2001, static_cast<unsigned short>(month + 1), 15});
        if (step >= metrics.horizontalAdvance(name) + 2.0 || month % 3 == 0) {
            painter.drawText(QRectF(plot.left() + step * (month + 0.5) - 30.0, plot.bottom() + 5.0, 60.0, metrics.height()),
                             Qt::AlignHCenter, name);
        }
    }
}

} // namespace lathhouse::chart
