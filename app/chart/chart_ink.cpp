#include "app/chart/chart_ink.h"

#include <QObject>
#include <QPainterPath>
#include <QPixmap>
#include <QVariant>

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

} // namespace

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
