#include "app/chart/chart_ink.h"

#include <QObject>
#include <QPainterPath>
#include <QPixmap>
#include <QVariant>

#include <cmath>

namespace lathhouse::chart {

namespace {

constexpr int kTile = 8;
constexpr qreal kPatternLine = 1.1;
constexpr qreal kHalo = 3.5;

QColor colour(const QObject& theme, const char* name)
{
    return theme.property(name).value<QColor>();
}

QList<QColor> colours(const QObject& theme, const char* name)
{
    QList<QColor> list;
    for (const QVariant& value : theme.property(name).toList()) {
        list.append(value.value<QColor>());
    }
    return list;
}

void draw_tile(QPainter& painter, models::Pattern pattern)
{
    switch (pattern) {
    case models::Pattern::Plain:
        break;
    case models::Pattern::Rising:
        painter.drawLine(QPointF(-2, 2), QPointF(2, -2));
        painter.drawLine(QPointF(0, 8), QPointF(8, 0));
        painter.drawLine(QPointF(6, 10), QPointF(10, 6));
        break;
    case models::Pattern::Dots:
        painter.setBrush(painter.pen().color());
        painter.setPen(Qt::NoPen);
        painter.drawEllipse(QPointF(2, 2), 1.15, 1.15);
        painter.drawEllipse(QPointF(6, 6), 1.15, 1.15);
        break;
    case models::Pattern::Slats:
        painter.drawLine(QPointF(0, 2), QPointF(8, 2));
        painter.drawLine(QPointF(0, 6), QPointF(8, 6));
        break;
    case models::Pattern::Posts:
        painter.drawLine(QPointF(2, 0), QPointF(2, 8));
        painter.drawLine(QPointF(6, 0), QPointF(6, 8));
        break;
    case models::Pattern::Grid:
        painter.drawLine(QPointF(0, 4), QPointF(8, 4));
        painter.drawLine(QPointF(4, 0), QPointF(4, 8));
        break;
    case models::Pattern::Sparse:
        painter.drawLine(QPointF(1, 2), QPointF(5, 2));
        painter.drawLine(QPointF(-3, 6), QPointF(1, 6));
        painter.drawLine(QPointF(5, 6), QPointF(9, 6));
        break;
    case models::Pattern::Cross:
        painter.drawLine(QPointF(0, 0), QPointF(8, 8));
        painter.drawLine(QPointF(0, 8), QPointF(8, 0));
        break;
    }
}

QBrush tile_brush(models::Pattern pattern, const QColor& colour, qreal line, qreal device_ratio)
{
    const int side = qRound(kTile * device_ratio);
    QImage tile(side, side, QImage::Format_ARGB32_Premultiplied);
    tile.fill(Qt::transparent);
    {
        QPainter painter(&tile);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(side / qreal(kTile), side / qreal(kTile));
        painter.setPen(QPen(colour, line));
        draw_tile(painter, pattern);
    }
    QBrush brush(tile);
    brush.setTransform(QTransform::fromScale(qreal(kTile) / side, qreal(kTile) / side));
    return brush;
}

/// Half a point, where 1280 px are the long edge of A4: no printer draws thinner lines well.
constexpr qreal kPaperLine = 0.8;

/// The lines of a pattern over a box, at the places that a tile would give them.
QList<QLineF> pattern_lines(models::Pattern pattern, const QRectF& box)
{
    QList<QLineF> lines;
    const auto first = [](qreal edge, qreal step, qreal at) { return std::ceil((edge - at) / step) * step + at; };
    const auto level = [&](qreal step, qreal at) {
        for (qreal y = first(box.top(), step, at); y <= box.bottom(); y += step) {
            lines.append({box.left(), y, box.right(), y});
        }
    };
    const auto upright = [&](qreal step, qreal at) {
        for (qreal x = first(box.left(), step, at); x <= box.right(); x += step) {
            lines.append({x, box.top(), x, box.bottom()});
        }
    };
    const auto rising = [&] {
        for (qreal sum = first(box.left() + box.top(), kTile, 0); sum <= box.right() + box.bottom(); sum += kTile) {
            lines.append({sum - box.bottom(), box.bottom(), sum - box.top(), box.top()});
        }
    };
    const auto falling = [&] {
        for (qreal gap = first(box.left() - box.bottom(), kTile, 0); gap <= box.right() - box.top(); gap += kTile) {
            lines.append({gap + box.top(), box.top(), gap + box.bottom(), box.bottom()});
        }
    };
    const auto dashes = [&](qreal at_y, qreal at_x) {
        for (qreal y = first(box.top(), kTile, at_y); y <= box.bottom(); y += kTile) {
            for (qreal x = first(box.left() - kTile, kTile, at_x); x <= box.right(); x += kTile) {
                lines.append({x, y, x + kTile / 2.0, y});
            }
        }
    };
    switch (pattern) {
    case models::Pattern::Plain:
    case models::Pattern::Dots:
        break;
    case models::Pattern::Rising:
        rising();
        break;
    case models::Pattern::Slats:
        level(kTile / 2.0, 2.0);
        break;
    case models::Pattern::Posts:
        upright(kTile / 2.0, 2.0);
        break;
    case models::Pattern::Grid:
        level(kTile, 4.0);
        upright(kTile, 4.0);
        break;
    case models::Pattern::Sparse:
        dashes(2.0, 1.0);
        dashes(6.0, 5.0);
        break;
    case models::Pattern::Cross:
        rising();
        falling();
        break;
    }
    return lines;
}

QList<QPointF> pattern_dots(const QRectF& box)
{
    QList<QPointF> dots;
    for (const qreal at : {2.0, 6.0}) {
        for (qreal y = std::ceil((box.top() - at) / kTile) * kTile + at; y <= box.bottom(); y += kTile) {
            for (qreal x = std::ceil((box.left() - at) / kTile) * kTile + at; x <= box.right(); x += kTile) {
                dots.append({x, y});
            }
        }
    }
    return dots;
}

void fill_on_paper(QPainter& painter, models::Pattern pattern, const QColor& colour, const QPainterPath& area,
                   bool turned)
{
    painter.save();
    painter.setClipPath(area, Qt::IntersectClip);
    QRectF box = area.boundingRect();
    if (turned) {
        painter.rotate(90.0);
        box = QRectF(box.top(), -box.right(), box.height(), box.width());
    }
    painter.setBrush(Qt::NoBrush);
    if (pattern == models::Pattern::Dots) {
        constexpr qreal kDot = 2.1;
        painter.setPen(QPen(colour, kDot, Qt::SolidLine, Qt::RoundCap));
        painter.drawPoints(pattern_dots(box));
    } else {
        painter.setPen(QPen(colour, kPaperLine, Qt::SolidLine, Qt::FlatCap));
        painter.drawLines(pattern_lines(pattern, box));
    }
    painter.restore();
}

} // namespace

void fill_pattern(QPainter& painter, const ChartInk& ink, models::Pattern pattern, const QColor& colour,
                  const QPainterPath& area, bool turned)
{
    if (pattern == models::Pattern::Plain) {
        return;
    }
    if (ink.paper) {
        fill_on_paper(painter, pattern, ink.ink2, area, turned);
    } else {
        painter.fillPath(area, pattern_brush(pattern, colour, painter.device()->devicePixelRatioF(), turned));
    }
}

void fill_hatch(QPainter& painter, const ChartInk& ink, const QColor& colour, const QPainterPath& area)
{
    if (ink.paper) {
        fill_on_paper(painter, models::Pattern::Rising, ink.edge, area, false);
    } else {
        painter.fillPath(area, hatch_brush(colour, painter.device()->devicePixelRatioF()));
    }
}

ChartInk ChartInk::of_theme(const QObject& theme)
{
    ChartInk ink;
    ink.sheet = colour(theme, "sheet");
    ink.rule = colour(theme, "rule");
    ink.edge = colour(theme, "edge");
    ink.ink = colour(theme, "ink");
    ink.ink2 = colour(theme, "ink2");
    ink.caution = colour(theme, "caution");
    ink.cold = colour(theme, "cold");
    ink.warm = colour(theme, "warm");
    ink.band = colour(theme, "band");
    ink.dusk = colour(theme, "dusk");
    ink.dawn = colour(theme, "dawn");
    ink.straw = colour(theme, "straw");
    ink.well = colour(theme, "well");
    ink.action = colour(theme, "action");
    ink.select = colour(theme, "select");
    ink.cold_wash = colour(theme, "coldWash");
    ink.leaf = colour(theme, "leaf");
    ink.leaf_wash = colour(theme, "leafWash");
    ink.sky_coloured = theme.property("skyColoured").toBool();
    ink.spots = colours(theme, "spotColours");
    ink.tints = colours(theme, "spotTints");
    ink.small = QFont(theme.property("textFamily").toString());
    ink.small.setPixelSize(theme.property("smallSize").toInt());
    ink.small_strong = ink.small;
    ink.small_strong.setWeight(QFont::DemiBold);
    return ink;
}

QBrush pattern_brush(models::Pattern pattern, const QColor& colour, qreal device_ratio, bool turned)
{
    if (pattern == models::Pattern::Plain) {
        return Qt::NoBrush;
    }
    QColor pale = colour;
    pale.setAlphaF(0.62F);
    QBrush brush = tile_brush(pattern, pale, kPatternLine, device_ratio);
    if (turned) {
        brush.setTransform(brush.transform() * QTransform().rotate(90.0));
    }
    return brush;
}

QBrush hatch_brush(const QColor& colour, qreal device_ratio)
{
    QColor pale = colour;
    pale.setAlphaF(0.45F);
    return tile_brush(models::Pattern::Rising, pale, 0.9, device_ratio);
}

void write_with_halo(QPainter& painter, QPointF base, const QString& words, const QFont& font,
                     const QColor& ink, const QColor& ground)
{
    QPainterPath letters;
    letters.addText(base, font, words);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.strokePath(letters, QPen(ground, kHalo, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(base, words);
    painter.restore();
}

} // namespace lathhouse::chart
