pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Log something for a plant or for those that are marked: a second sheet over the page.
FocusScope {
    id: root

    required property PlantsModel plants
    /// Place in PlantsModel.What.
    property int what: PlantsModel.Watered
    property int measure: 0
    readonly property bool measuring: root.what === PlantsModel.Measured

    signal closed

    implicitHeight: body.height + Theme.px(32)
    Accessible.role: Accessible.Dialog
    Accessible.name: title.text

    Keys.onEscapePressed: root.closed()

    function open(): void {
        number.text = "";
        note.text = "";
        root.visible = true;
        chips.itemAt(root.what).forceActiveFocus();
    }
    function choose(what: int): void {
        root.what = what;
        root.plants.forgive();
    }
    function keep(): void {
        if (root.plants.log(root.what, number.text, root.measure, note.text))
            root.closed();
        else if (number.visible && (root.measuring || number.text !== ""))
            number.forceActiveFocus();
        else
            note.forceActiveFocus();
    }

    Rectangle {
        anchors.fill: parent
        radius: Theme.controlRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge
    }
    MouseArea { // What lies below is not for the pointer now.
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
            text: qsTr("Log for %1").arg(root.plants.target)
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            Repeater {
                id: chips
                model: [qsTr("Watered"), qsTr("Fed"), qsTr("Measured"), qsTr("Note"), qsTr("New growth"), qsTr("Flowered"), qsTr("Repotted"), qsTr("Pruned"), qsTr("Died"), qsTr("Given away")]

                Chip {
                    required property string modelData
                    required property int index
                    objectName: "logChip" + index
                    text: modelData
                    on: root.what === index
                    onClicked: root.choose(index)
                    Keys.onLeftPressed: chips.itemAt(Math.max(0, index - 1)).forceActiveFocus()
                    Keys.onRightPressed: chips.itemAt(Math.min(chips.count - 1, index + 1)).forceActiveFocus()
                }
            }
        }
        Flow {
            visible: root.measuring
            width: parent.width
            spacing: Theme.px(8)

            Repeater {
                model: root.plants.measures

                Chip {
                    required property int index
                    objectName: "measureChip" + index
                    on: root.measure === index
                    text: root.plants.measures.at(index, "text")
                    onClicked: root.measure = index
                }
            }
        }
        Row {
            spacing: Theme.px(10)

            SheetField {
                id: number
                objectName: "logNumber"
                visible: root.measuring || root.what === PlantsModel.Fed
                width: Theme.px(170)
                label: root.measuring ? qsTr("What was read") : qsTr("Nitrogen of the feed, may be left blank")
                unit: root.visible && root.measuring ? root.plants.measures.at(root.measure, "unit") : "ppm"
                placeholderText: root.measuring ? "" : qsTr("nitrogen")
                wrong: root.plants.error !== "" && (root.measuring || number.text !== "")
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onTextEdited: root.plants.forgive()
                onAccepted: root.keep()
            }
            SheetField {
                id: note
                objectName: "logNote"
                width: body.width - (number.visible ? number.width + Theme.px(10) : 0)
                label: root.what === PlantsModel.Noted ? qsTr("Note") : qsTr("Note, may be left blank")
                placeholderText: label
                wrong: root.plants.error !== "" && root.what === PlantsModel.Noted
                onTextEdited: root.plants.forgive()
                onAccepted: root.keep()
            }
        }
        Trouble {
            width: parent.width
            words: root.plants.error
        }
        Row {
            spacing: Theme.px(8)

            ActButton {
                objectName: "keepButton"
                text: qsTr("Keep in the journal")
                onClicked: root.keep()
            }
            SheetButton {
                objectName: "leaveButton"
                text: qsTr("Leave")
                reason: qsTr("Escape")
                onClicked: root.closed()
            }
        }
    }
}
