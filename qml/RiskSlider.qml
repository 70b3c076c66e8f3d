import QtQuick
import QtQuick.Templates as T

// The risk one accepts, in five stops. The dates follow while it is dragged.
T.Slider {
    id: root

    required property list<string> stops
    required property string spoken
    required property int stop
    signal chosen(int stop)

    implicitWidth: 300
    implicitHeight: 44
    from: 0
    to: root.stops.length - 1
    stepSize: 1
    snapMode: T.Slider.SnapAlways
    live: true
    focusPolicy: Qt.StrongFocus
    leftPadding: 26
    rightPadding: 26
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
            y: 16
            width: root.availableWidth
            height: 1.6
            color: Theme.edge
            antialiasing: true
        }
        Repeater {
            model: root.stops

            Item {
                id: tick
                required property string modelData
                required property int index
                readonly property bool here: tick.index === root.stop
                x: root.leftPadding + root.availableWidth * tick.index / (root.stops.length - 1)

                Rectangle {
                    x: -0.8
                    y: 11
                    width: 1.6
                    height: 12
                    color: Theme.edge
                    antialiasing: true
                }
                Text {
                    x: Math.round(-width / 2)
                    y: 26
                    text: tick.modelData
                    color: tick.here ? Theme.ink : Theme.ink2
                    font.family: Theme.textFamily
                    font.pixelSize: Theme.smallSize
                    font.weight: tick.here ? Font.DemiBold : Font.Normal
                    Accessible.ignored: true
                }
            }
        }
    }
    handle: Rectangle {
        x: root.leftPadding + root.visualPosition * root.availableWidth - width / 2
        y: 5
        width: 14
        height: 24
        radius: 2
        color: root.hovered || root.pressed ? Qt.darker(Theme.action, Theme.dark ? 0.9 : 1.18) : Theme.action

        Repeater {
            model: 2

            Rectangle {
                required property int index
                x: 4 + index * 4
                y: 6
                width: 1.4
                height: 12
                color: Theme.actionInk
                antialiasing: true
            }
        }
        FocusRing {
            visible: root.visualFocus
        }
    }
}
