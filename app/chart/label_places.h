#pragma once

#include <QRectF>
#include <QSizeF>

#include <functional>
#include <optional>
#include <vector>

namespace lathhouse::chart {

/// The room that words need in a chart, and where they would like to stand.
struct LabelWish {
    QSizeF size;
    qreal ascent;             ///< From the upper edge to the first base line.
    QRectF room;              ///< Never left.
    std::vector<QPointF> homes; ///< Left end of the first base line; the best one first.
    /// First base line where the middle of the words stands at an x; empty: the base line is kept.
    std::function<qreal(qreal)> base_at = {};

    QRectF box(QPointF at) const { return {{at.x(), at.y() - ascent}, size}; }
};

/// Left end of the first base line; nullopt for words that have found no room.
using LabelPlace = std::optional<QPointF>;

/// Pixels left and right of the cursor that stay free of words.
constexpr qreal kClearOfCursor = 8.0;

/// Places in the order of the wishes: who comes first stands, who would touch another is left out.
std::vector<LabelPlace> places_at_home(const std::vector<LabelWish>& wishes);

/// The same with the words that the cursor would cross moved to its nearer side, else to the other one, else
/// to another home of theirs, else left out. Words that the cursor does not reach stay where they are.
std::vector<LabelPlace> places_beside(const std::vector<LabelWish>& wishes,
                                      const std::vector<LabelPlace>& at_home, qreal cursor_x);

} // namespace lathhouse::chart
