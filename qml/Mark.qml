import QtQuick

// The mark: five upright laths of falling width with one cross bar.
Item {
    id: root

    implicitWidth: 24
    implicitHeight: 24
    Accessible.ignored: true

    Repeater {
        model: [{ at: 0, thick: 4 }, { at: 7, thick: 3 }, { at: 12.5, thick: 2.4 }, { at: 17, thick: 1.7 }, { at: 21.5, thick: 1.2 }]

        Rectangle {
            required property var modelData
            x: modelData.at
            width: modelData.thick
            height: root.height
            color: Theme.ink
            antialiasing: true
        }
    }
    Rectangle {
        y: 8
        width: root.width
        height: 2
        color: Theme.ink
    }
}
