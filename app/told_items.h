#pragma once

class QQuickWindow;

namespace lathhouse {

/// From now on screen readers are told of an item with a property `spokenRole` that it is that (SpokenButton.qml). The
/// templates of Qt 6.4 answer for each control with the role of its class, whatever `Accessible.role` says in QML. All else
/// is told as Qt tells it. Called before the items are made.
void tell_spoken_roles();

/// From now on what is told to screen readers of the items of a mirrored window (`mirrored_sides.h`) has the box in which
/// it is drawn. Qt 6.4 takes the place of an item's own left upper corner, which in a mirror is its right one, for the
/// box's, so that every box lies beside what it is for. Items of other windows are left to Qt.
/// Holds for items that were made after `tell_spoken_roles`, in a program that is laid out from right to left.
void tell_mirrored_boxes(QQuickWindow& window);

} // namespace lathhouse
