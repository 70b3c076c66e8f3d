pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T

// The risk one accepts, in five stops. The dates follow while it is dragged.
T.Slider {
    id: root

    required property list<string> stops
    required property string spoken
    required property int stop
    signal chosen(int stop)

    implicitWidth: Theme.px(300)
    implicitHeight: Theme.px(44)
    from: 0
    to: root.stops.length - 1
    stepSize: 1
    snapMode: T.Slider.SnapAlways
    live: true
    focusPolicy: Qt.StrongFocus
    leftPadding: Theme.px(26)
    rightPadding: Theme.px(26)
    value: root.stop
    onMoved: root.chosen(Math.round(root.value))
    onStopChanged: root.value = root.stop

    Accessible.role: Accessible.Slider
    Accessible.name: root.spoken
    Accessible.description: qsTr("For each plant, each way. Left and right choose the stop.")
    Accessible.onIncreaseAction: root.chosen(Math.min(root.stop + 1, root.stops.length - 1))
    Accessible.onDecreaseAction: root.chosen(Math.max(root.stop - 1, 0))

    background: Item {
        Rectangle {
            x: root.leftPadding
            y: Theme.px(16)
            width: root.availableWidth
            height: 1.6
            color: Theme.edge
            antialiasing: true
        }
        Repeater {
            model: root.stops

            RiskTick {
                required property string modelData
                required property int index
                words: modelData
                here: index === root.stop
                x: root.leftPadding + root.availableWidth * index / (root.stops.length - 1)
            }
        }
    }
    handle: Rectangle {
        x: root.leftPadding + root.visualPosition * root.availableWidth - width / 2
        y: Theme.px(5)
        width: Theme.px(14)
        height: Theme.px(24)
        radius: 2
        color: root.hovered || root.pressed ? Qt.darker(Theme.action, Theme.dark ? 0.9 : 1.18) : Theme.action

        Repeater {
            model: 2

            Rectangle {
                required property int index
                x: Theme.px(4 + index * 4)
                y: Theme.px(6)
                width: 1.4
                height: Theme.px(12)
                color: Theme.actionInk
                antialiasing: true
            }
        }
        FocusRing {
            visible: root.visualFocus
        }
    }
}
