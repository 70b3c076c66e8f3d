import QtQuick

// A rule beside what the keys scroll; a ring round the whole page would frame everything on it.
Rectangle {
    id: root

    required property Item of
    property bool inside: false
    property real away: 8

    x: root.of.x + (root.inside ? 5 : -root.away)
    y: root.of.y
    height: root.of.height
    visible: root.of.activeFocus
    width: 3
    radius: 1
    color: Theme.focus
}
