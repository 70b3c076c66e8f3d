import QtQuick
import Lathhouse.Models

// A card to print and stand beside a plant in its photographs.
Column {
    id: root

    spacing: Theme.px(8)

    CardModel {
        id: card
    }
    Heading {
        width: parent.width
        text: qsTr("A scale card for your photographs")
    }
    Words {
        width: parent.width
        text: qsTr("A ruler of 100 mm with a target at each end, by which a length is measured in the photo, and a grey patch by which its colours are set.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    PathField {
        id: file
        width: parent.width
        label: qsTr("The card to write, .svg")
        kind: PathField.Save
        filters: [qsTr("Drawings (*.svg)")]
        part: "card"
        wrong: card.error !== ""
        onEdited: card.clear()
        onAccepted: card.write(file.text)
        onPicked: address => file.text = address
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetButton {
            objectName: "cardButton"
            text: qsTr("Write the card")
            onClicked: card.write(file.text)
        }
        SheetButton {
            objectName: "cardReplace"
            visible: card.fileIsThere
            text: qsTr("Replace it")
            onClicked: card.write(file.text, true)
        }
    }
    Trouble {
        objectName: "cardTrouble"
        width: parent.width
        words: card.error
    }
    Words {
        objectName: "cardSaid"
        visible: text !== ""
        width: parent.width
        text: card.said
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
}
