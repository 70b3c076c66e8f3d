#pragma once

#include "app/models/year_data.h"

#include <QBrush>
#include <QColor>
#include <QFont>
#include <QList>
#include <QPainter>
#include <QString>

class QObject;
class QPainterPath;

namespace lathhouse::chart {

/// Colours and fonts of a chart, read from the theme of the window (or set by who prints).
struct ChartInk {
    QColor sheet, rule, edge, ink, ink2, caution, cold, warm, band, dusk, dawn, straw;
    QColor well, action, select, cold_wash, leaf, leaf_wash;
    bool sky_coloured = true; ///< High contrast has no sky colours.
    QList<QColor> spots;      ///< Eight full colours, in the theme's order.
    QList<QColor> tints;
    /// For paper: patterns are lines and dots of the page rather than tiles, and nothing is see-through.
    bool paper = false;
    QFont small;        ///< Chart labels.
    QFont small_strong; ///< Axis zero, months, spot names.

    /// Reads the properties of the same names of the QML theme; a missing one stays invalid.
    static ChartInk of_theme(const QObject& theme);
};

/// A tile of 8 x 8 px in the hand of a spot, drawn for the painter's scale; `turned` by a right angle.
QBrush pattern_brush(models::Pattern pattern, const QColor& colour, qreal device_ratio, bool turned = false);

/// Rising hatch of the cold.
QBrush hatch_brush(const QColor& colour, qreal device_ratio);

/// Fills with the hand of a spot, or with the hatch of the cold; on paper with lines that stay sharp at any size.
void fill_pattern(QPainter& painter, const ChartInk& ink, models::Pattern pattern, const QColor& colour,
                  const QPainterPath& area, bool turned = false);
void fill_hatch(QPainter& painter, const ChartInk& ink, const QColor& colour, const QPainterPath& area);

/// Writes with a halo of the ground around the letters. `base` is the left end of the base line.
void write_with_halo(QPainter& painter, QPointF base, const QString& words, const QFont& font,
                     const QColor& ink, const QColor& ground);

} // namespace lathhouse::chart
