#pragma once

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace lathhouse::sheet {

/// The sheets' words in the language of the window.
QString tr(const char* words);

QFont text_font(int size);
QFont strong_font(int size);
QFont title_font(int size);
/// Of botanical names.
QFont slanted_font(int size);

qreal text_width(const QFont& font, const QString& words);
/// Height that wrapped words take.
qreal text_height(const QFont& font, const QString& words, qreal width);
/// Writes words that wrap at the width; returns the height they took.
qreal write_wrapped(QPainter& painter, const QFont& font, const QColor& ink, QPointF upper_left, qreal width,
                    const QString& words);
/// Writes one line from its base line on.
void write_line(QPainter& painter, const QFont& font, const QColor& ink, QPointF base, const QString& words);
/// The same up to its base line's right end.
void write_line_to(QPainter& painter, const QFont& font, const QColor& ink, QPointF end, const QString& words);
/// A name within a box, right in the middle of its height: smaller, then on two lines, where it is long; only what
/// fits neither way is cut.
void write_name(QPainter& painter, const QFont& font, const QColor& ink, const QRectF& box, const QString& name);

} // namespace lathhouse::sheet
