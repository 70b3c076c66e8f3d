import QtQuick
import Lathhouse.Models

// Seedlings of a tray become plants: how many, what they are called, where they stand.
Column {
    id: root

    required property SeedsModel page
    required property int tray
    property int spot: -1

    signal closed

    spacing: Theme.px(8)
    Keys.onEscapePressed: root.closed()

    function open(): void {
        number.clear();
        called.clear();
        root.spot = -1;
        number.forceActiveFocus();
    }
    function pot(): void {
        if (root.page.pot(root.tray, number.text, called.text, root.spot))
            root.closed();
        else
            number.forceActiveFocus();
    }

    Flow {
        width: root.width
        spacing: Theme.px(8)

        SheetField {
            id: number
            objectName: "pottedField"
            least: Theme.px(130)
            label: qsTr("How many seedlings were potted, each in a pot of its own")
            placeholderText: qsTr("How many")
            inputMethodHints: Qt.ImhDigitsOnly
            onTextEdited: root.page.forgive()
            onAccepted: root.pot()
        }
        SheetField {
            id: called
            objectName: "pottedName"
            least: Theme.px(240)
            most: root.width
            label: qsTr("What they are called; several are numbered; blank for crop and tray")
            placeholderText: qsTr("Name, or blank for crop and tray")
            onTextEdited: root.page.forgive()
            onAccepted: root.pot()
        }
    }
    Words {
        width: root.width
        text: root.page === null ? "" : (root.page.dayAgo === "" ? qsTr("Potted: today.") : qsTr("Potted: %1 days ago, %2.").arg(root.page.daysAgo).arg(root.page.dayAgo)) + " " + qsTr("Where they stand, if not where the tray does:")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    SpotChips {
        objectName: "pottedSpots"
        width: root.width
        spots: root.page === null ? null : root.page.spots // Of a page that is being replaced.
        current: root.spot
        onChosen: index => root.spot = root.spot === index ? -1 : index
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)

        SheetButton {
            objectName: "pottedKeep"
            text: qsTr("Pot them up")
            reason: qsTr("They stand under Plants then")
            onClicked: root.pot()
        }
        SheetButton {
            objectName: "pottedLeave"
            text: qsTr("Not done")
            reason: qsTr("Escape")
            onClicked: root.closed()
        }
    }
}
