pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Where a plant, or those that are marked, went today: each spot under its number.
FocusScope {
    id: root

    required property PlantsModel plants
    /// Whether the plant can be kept at a spot here.
    property bool canKeep: false

    signal closed
    signal keep

    implicitHeight: body.height + Theme.px(32)
    Accessible.role: Accessible.Dialog
    Accessible.name: title.text

    Keys.onEscapePressed: root.closed()
    // Numbers are for the spots here, not for the places of the window.
    Keys.onShortcutOverride: event => event.accepted = event.key >= Qt.Key_1 && event.key <= Qt.Key_9 && event.modifiers === Qt.NoModifier
    Keys.onPressed: event => {
        if (event.key >= Qt.Key_1 && event.key <= Qt.Key_9 && event.modifiers === Qt.NoModifier) {
            event.accepted = true;
            root.move(event.key - Qt.Key_1);
        }
    }

    function open(): void {
        root.visible = true;
        root.forceActiveFocus();
        if (chips.count > 0)
            chips.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
    }
    function move(spot: int): void {
        if (root.plants.moveTo(spot))
            root.closed();
    }

    Rectangle {
        anchors.fill: parent
        radius: Theme.controlRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge
    }
    MouseArea {
        anchors.fill: parent
    }
    Column {
        id: body
        x: Theme.px(18)
        y: Theme.px(14)
        width: root.width - 2 * x
        spacing: Theme.px(12)

        Heading {
            id: title
            width: parent.width
            text: qsTr("%1 moved today: where to?").arg(root.plants.target)
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            Repeater {
                id: chips
                model: root.plants.spots

                Chip {
                    required property string name
                    required property int hand
                    required property int number
                    required property int index
                    objectName: "spotChip" + number
                    spokenRole: Accessible.Button
                    text: qsTr("%1  %2").arg(number).arg(name)
                    spotColour: hand
                    onClicked: root.move(index)
                    Keys.onLeftPressed: chips.itemAt(Math.max(0, index - 1)).forceActiveFocus(Qt.TabFocusReason)
                    Keys.onRightPressed: chips.itemAt(Math.min(chips.count - 1, index + 1)).forceActiveFocus(Qt.TabFocusReason)
                }
            }
        }
        Trouble {
            width: parent.width
            words: root.plants.error
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            SheetButton {
                text: qsTr("Leave")
                reason: qsTr("Escape")
                onClicked: root.closed()
            }
            SheetButton {
                objectName: "keepAtSpotButton"
                visible: root.canKeep
                text: qsTr("Keep it at a spot")
                reason: qsTr("Key K. Always, or from one evening to another; the plan keeps to it.")
                onClicked: root.keep()
            }
        }
    }
}
