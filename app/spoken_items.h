#pragma once

#include <QStringList>

class QQuickWindow;

namespace lathhouse {

/// What a person without eyes cannot use, of all that stands in the window now: an item that the keyboard stops at, or
/// that is pressed, ticked, moved or typed into, without a name or without a role. One line each: which, and what it
/// lacks.
QStringList items_that_say_nothing(QQuickWindow& window);

/// What is pressed, ticked, moved or typed into and is narrower or lower than `least` pixels, with its size, a line each.
QStringList items_too_small(QQuickWindow& window, double least);

/// What the keyboard stops at, in the order of the Tab key from the first on: "Button: On to the spots" with the role as
/// the accessibility tree names it; behind it ", checked" and ", selected" where that is so, ", not checkable" for a box or
/// one of several that says it could not be. Empty where nothing in the window takes the keys.
QStringList stops_in_order(QQuickWindow& window);

} // namespace lathhouse
