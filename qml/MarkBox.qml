import QtQuick

// The mark of a chosen row: a filled box with a tick. As TickBox, of fewer parts, for lists of thousands.
Rectangle {
    id: root

    implicitWidth: Theme.px(20)
    implicitHeight: Theme.px(20)
    radius: Theme.sheetRadius
    color: Theme.action

    Rectangle {
        x: root.width * 0.2
        y: root.height * 0.56
        width: root.width * 0.3
        height: root.width * 0.11
        rotation: 45
        color: Theme.actionInk
        antialiasing: true
    }
    Rectangle {
        x: root.width * 0.34
        y: root.height * 0.44
        width: root.width * 0.5
        height: root.width * 0.11
        rotation: -50
        color: Theme.actionInk
        antialiasing: true
    }
}
