#include "app/sheet/print_text.h"

#include "app/chart/print_ink.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace lathhouse::sheet {

namespace {

constexpr int kWrap = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
constexpr qreal kEndless = 1e5;

} // namespace

QString tr(const char* words)
{
    return QCoreApplication::translate("lathhouse::sheet", words);
}

QFont text_font(int size)
{
    return chart::print_font(chart::text_family(), size);
}

QFont strong_font(int size)
{
    return chart::print_font(chart::text_family(), size, QFont::DemiBold);
}

QFont title_font(int size)
{
    return chart::print_font(chart::title_family(), size);
}

QFont slanted_font(int size)
{
    QFont font = title_font(size);
    font.setItalic(true);
    return font;
}

qreal text_width(const QFont& font, const QString& words)
{
    return QFontMetricsF(font).horizontalAdvance(words);
}

qreal text_height(const QFont& font, const QString& words, qreal width)
{
    return words.isEmpty()
               ? 0.0
               : std::ceil(QFontMetricsF(font).boundingRect(QRectF(0, 0, width, kEndless), kWrap, words).height());
}

qreal write_wrapped(QPainter& painter, const QFont& font, const QColor& ink, QPointF upper_left, qreal width,
                    const QString& words)
{
    const qreal height = text_height(font, words, width);
    painter.setFont(font);
    painter.setPen(ink);
    // A little wider than measured, so that rounding in the device never breaks a line elsewhere.
    painter.drawText(QRectF(upper_left, QSizeF(width + 1.0, height + 2.0)), kWrap | Qt::TextDontClip, words);
    return height;
}

void write_line(QPainter& painter, const QFont& font, const QColor& ink, QPointF base, const QString& words)
{
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(base, words);
}

void write_line_to(QPainter& painter, const QFont& font, const QColor& ink, QPointF end, const QString& words)
{
    write_line(painter, font, ink, {end.x() - text_width(font, words), end.y()}, words);
}

void write_name(QPainter& painter, const QFont& font, const QColor& ink, const QRectF& box, const QString& name)
{
    painter.setPen(ink);
    constexpr int kSmallest = 11;
    QFont fitting = font;
    for (int size = font.pixelSize(); size >= kSmallest; --size) {
        fitting.setPixelSize(size);
        if (text_width(fitting, name) <= box.width()) {
            painter.setFont(fitting);
            painter.drawText(QRectF(box.topLeft(), QSizeF(box.width() + 2.0, box.height())),
                             Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, name);
            return;
        }
    }
    const QFontMetricsF metrics(fitting);
    // The last space that leaves the first line within the width.
    qsizetype space = -1;
    for (qsizetype at = name.indexOf(QLatin1Char(' ')); at >= 0; at = name.indexOf(QLatin1Char(' '), at + 1)) {
        if (metrics.horizontalAdvance(name.left(at)) <= box.width()) {
            space = at;
        }
    }
    const QString first = space < 0 ? QString{} : name.left(space);
    const QString second = metrics.elidedText(name.mid(space + 1), Qt::ElideRight, box.width());
    const qreal line = metrics.height() * 0.88;
    const qreal middle = box.center().y() + metrics.capHeight() / 2.0;
    painter.setFont(fitting);
    if (first.isEmpty()) {
        painter.drawText(QPointF(box.left(), middle), second);
        return;
    }
    painter.drawText(QPointF(box.left(), middle - line / 2.0), first);
    painter.drawText(QPointF(box.left(), middle + line / 2.0), second);
}

} // namespace lathhouse::sheet
