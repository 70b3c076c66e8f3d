pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The steps by which a length is measured in a photograph: something of known size, then the plant.
Column {
    id: root

    required property MeasureModel measure
    /// The card that is photographed beside the plant is wanted on paper.
    signal cardAsked
    /// The keys go to the photograph.
    signal pictureWanted

    spacing: Theme.px(8)

    Heading {
        width: parent.width
        text: qsTr("1. Something of known size")
    }
    Row {
        spacing: Theme.px(10)

        Rectangle { // As the line in the photograph: dashed.
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.px(34)
            height: 3
            color: "#2B4A7F"

            Rectangle {
                x: Math.round(parent.width / 3)
                width: Theme.px(5)
                height: 3
                color: Theme.sheet
            }
            Rectangle {
                x: Math.round(2 * parent.width / 3)
                width: Theme.px(5)
                height: 3
                color: Theme.sheet
            }
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("A to B is")
        }
        SheetField {
            objectName: "knownSize"
            label: qsTr("Length from A to B")
            unit: root.measure.unit
            text: root.measure.knownSize
            wrong: root.measure.knownWrong
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            onTextEdited: root.measure.knownSize = text
            onAccepted: root.pictureWanted()
        }
    }
    Words {
        width: parent.width
        text: root.measure.knownWrong ? qsTr("Write a number such as 14.0; between 1 mm and 10 m.") : qsTr("The pot’s rim, a ruler, or the 10 cm of the printed card.")
        quiet: !root.measure.knownWrong
        font.pixelSize: Theme.smallSize
    }
    SheetButton {
        objectName: "cardButton"
        text: qsTr("A card to print")
        reason: qsTr("A ruler of 10 cm and a grey patch, to stand beside the plant; print it at 100 %")
        onClicked: root.cardAsked()
    }
    Heading {
        width: parent.width
        text: qsTr("2. The plant")
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        Repeater {
            model: root.measure.kinds

            Chip {
                required property int index
                objectName: "lengthKind" + index
                text: root.measure.kinds.at(index, "text")
                on: root.measure.kind === index
                onClicked: root.measure.kind = index
            }
        }
    }
    Row {
        spacing: Theme.px(10)

        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.px(34)
            height: 3
            color: "#9C3810"
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("from 1 to 2")
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.apart(6)

        Repeater {
            model: 4

            Chip {
                id: markChip

                required property int index
                readonly property bool there: root.measure.marks >= 0 && root.measure.isSet(markChip.index)
                objectName: "mark" + index
                text: markChip.there ? qsTr("%1 set").arg(root.measure.plate(markChip.index)) : qsTr("%1 not set").arg(root.measure.plate(markChip.index))
                reason: qsTr("Chooses the point; the arrow keys in the photograph move it.")
                on: root.measure.chosen === markChip.index
                onClicked: {
                    root.measure.chosen = markChip.index;
                    root.pictureWanted();
                }
            }
        }
    }
}
