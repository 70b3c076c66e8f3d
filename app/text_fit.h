#pragma once

#include <QStringList>

class QQuickWindow;

namespace lathhouse {

/// Texts of the window, as they stand on screen now, that do not fit: cut with an ellipsis, longer than the room they
/// were given, or beyond the left or right edge of the window, where they do not scroll into sight from there. A plant's own
/// name may be cut; an item whose property `mayBeCut` is true is passed over.
QStringList texts_that_do_not_fit(const QQuickWindow& window);

/// Pairs of texts of the window, as they stand on screen now, of which one is drawn over the other on the same ground.
QStringList texts_over_each_other(const QQuickWindow& window);

} // namespace lathhouse
