pragma ComponentBehavior: Bound

import QtQuick

// A step of the first start: five laths, full in the step that is open, with its number and what it has so far.
SpokenButton {
    id: root

    required property int number
    required property string words
    required property bool open

    implicitHeight: Math.max(Theme.px(50), column.height)
    on: root.open
    reason: root.words
    spokenRole: Accessible.PageTab
    Accessible.name: qsTr("Step %1, %2").arg(root.number).arg(root.text)

    background: Item {
        FocusRing {
            visible: root.visualFocus
        }
    }
    Item {
        anchors.fill: parent

        Repeater {
            model: 5

            Rectangle {
                required property int index
                x: Math.round(index * Theme.px(10) / 2)
                width: Math.max(1, root.open ? Theme.px(4) : Theme.px(1))
                height: Theme.px(48)
                color: root.open ? Theme.action : root.hovered ? Theme.ink : Theme.edge
            }
        }
        Column {
            id: column
            x: Theme.px(38)
            width: root.width - x

            Words {
                width: parent.width
                text: qsTr("%1. %2").arg(root.number).arg(root.text)
                strong: root.open
                font.pixelSize: Theme.subheadSize
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                text: root.words
                quiet: true
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
        }
    }
}
