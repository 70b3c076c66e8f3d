#include "app/sheet/print_text.h"

#include "app/chart/print_ink.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>
#include <QTextOption>

#include <algorithm>
#include <cmath>

namespace lathhouse::sheet {

namespace {

/// A printed line is some three in a hundred longer than it is measured here (seen on PDFs of lines of a hundred letters).
constexpr qreal kPrintedLonger = 1.03;

/// The lines into which words break at a width, where they are measured: a printer's own letters are a little wider or
/// narrower, so that it would break a long paragraph elsewhere, over what stands below.
QStringList lines_of(const QFont& font, const QString& words, qreal width)
{
    QStringList lines;
    for (const QString& paragraph : words.split(QLatin1Char('\n'))) {
        QTextLayout layout(paragraph, font);
        QTextOption option;
        option.setWrapMode(QTextOption::WordWrap);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width / kPrintedLonger);
            lines.append(paragraph.mid(line.textStart(), line.textLength()).trimmed());
        }
        layout.endLayout();
    }
    return lines;
}

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
    return kPrintedLonger * QFontMetricsF(font).horizontalAdvance(words);
}

qreal text_height(const QFont& font, const QString& words, qreal width)
{
    return words.isEmpty() ? 0.0 : std::ceil(static_cast<double>(lines_of(font, words, width).size()) * QFontMetricsF(font).lineSpacing());
}

qreal write_wrapped(QPainter& painter, const QFont& font, const QColor& ink, QPointF upper_left, qreal width,
                    const QString& words)
{
    if (words.isEmpty()) {
        return 0.0;
    }
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    painter.setPen(ink);
    qreal base = upper_left.y() + metrics.ascent();
    for (const QString& line : lines_of(font, words, width)) {
        painter.drawText(QPointF(upper_left.x(), base), line);
        base += metrics.lineSpacing();
    }
    return text_height(font, words, width);
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
