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

    readonly property real widest: root.widestOf(root.stops)
    /// Where the words of all stops would touch, those of every other one from the chosen one on stand, or those of the
    /// chosen one alone.
    readonly property bool someNamed: 2 * root.availableWidth >= (root.widest + Theme.px(4)) * root.to
    readonly property bool allNamed: root.availableWidth >= (root.widest + Theme.px(4)) * root.to

    /// With that, the words of every other stop have room.
    readonly property real leastWidth: Math.max(Theme.px(160), (root.widest + Theme.px(4)) * root.to / 2 + root.leftPadding + root.rightPadding)
    implicitWidth: Math.max(Theme.px(300), (root.widest + Theme.px(8)) * root.to + root.leftPadding + root.rightPadding)
    implicitHeight: Theme.px(44)
    from: 0
    to: root.stops.length - 1
    stepSize: 1
    snapMode: T.Slider.SnapAlways
    live: true
    focusPolicy: Qt.StrongFocus
    leftPadding: Math.max(Theme.px(26), root.widest / 2)
    rightPadding: leftPadding
    value: root.stop
    onMoved: root.chosen(Math.round(root.value))
    onStopChanged: root.value = root.stop

    Accessible.role: Accessible.Slider
    Accessible.name: root.spoken
    Accessible.description: qsTr("For each plant, each way. Left and right choose the stop.")
    Accessible.onIncreaseAction: root.chosen(Math.min(root.stop + 1, root.stops.length - 1))
    Accessible.onDecreaseAction: root.chosen(Math.max(root.stop - 1, 0))

    function widestOf(words: list<string>): real {
        let most = wordSize.height; // It is asked again where the font changes.
        for (let place = 0; place < words.length; ++place)
            most = Math.max(most, wordSize.advanceWidth(words[place]));
        return most;
    }

    FontMetrics {
        id: wordSize
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: Font.DemiBold
    }
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
                named: root.allNamed || here || root.someNamed && (index - root.stop) % 2 === 0
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
