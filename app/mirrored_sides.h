#pragma once

class QQuickWindow;

namespace lathhouse {

/// Turns a window round for languages that are read from right to left, by one rule instead of one at each place: all
/// that stands in it is mirrored about its middle, and what must be read or known again is mirrored back where it
/// stands: texts, fields, pictures, painted charts, and items with a true property `keepsSides` with all within them.
/// So charts keep their time from left to right. Items that come later follow. Positions of mouse and touch follow by
/// Qt's own mapping, boxes told to screen readers by `told_items.h`. The arrow keys left and right go where they
/// point: for an item that is mirrored they change places, for one that kept its sides they do not.
///
/// What it cannot tell: a text that itself runs from right to left and is set to the right by `horizontalAlignment`
/// stands at the reading side, not at the other one, since Qt says no difference from a text that was not set.
void mirror_sides(QQuickWindow& window);

} // namespace lathhouse
