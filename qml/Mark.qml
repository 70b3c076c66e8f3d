pragma ComponentBehavior: Bound

import QtQuick

// The mark: five upright laths of falling width with one cross bar.
Item {
    id: root

    readonly property real unit: Theme.textScale

    implicitWidth: 24 * root.unit
    implicitHeight: 24 * root.unit
    Accessible.ignored: true

    Repeater {
        model: [{ at: 0, thick: 4 }, { at: 7, thick: 3 }, { at: 12.5, thick: 2.4 }, { at: 17, thick: 1.7 }, { at: 21.5, thick: 1.2 }]

        Rectangle {
            required property var modelData
            x: modelData.at * root.unit
            width: modelData.thick * root.unit
            height: root.height
            color: Theme.ink
            antialiasing: true
        }
    }
    Rectangle {
        y: 8 * root.unit
        width: root.width
        height: 2 * root.unit
        color: Theme.ink
    }
}
