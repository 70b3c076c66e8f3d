import QtQuick
import Lathhouse.Models

// When photographs were taken that do not say so themselves; asked before they come in.
Column {
    id: root

    required property PhotoImportModel coming

    signal taken

    spacing: Theme.px(6)
    onVisibleChanged: if (root.visible)
        root.focusField()
    Accessible.role: Accessible.Grouping
    Accessible.name: root.coming.askWords

    function focusField(): void {
        field.forceActiveFocus(Qt.TabFocusReason);
        field.selectAll();
    }
    function takeIn(): void {
        if (root.coming.takeIn(field.text)) {
            field.clear();
            root.taken();
        } else {
            root.focusField();
        }
    }

    Words {
        objectName: "askTakenWords"
        width: parent.width
        text: root.coming.askWords
        strong: true
        Accessible.role: Accessible.AlertMessage
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: field
            objectName: "askTaken"
            width: Theme.px(230)
            label: qsTr("When they were taken, blank for the dates of their files")
            placeholderText: qsTr("as their files say")
            wrong: root.coming.error !== ""
            onTextEdited: root.coming.forgive()
            onAccepted: root.takeIn()
            Keys.onEscapePressed: leave.clicked()
        }
        SheetButton {
            objectName: "askTakenTake"
            text: qsTr("Take them in")
            reason: qsTr("A date such as %1, with the time behind it where it is known. Those that say it themselves keep their own.").arg(root.coming.dateExample)
            onClicked: root.takeIn()
        }
        SheetButton {
            id: leave
            objectName: "askTakenLeave"
            text: qsTr("Leave them out")
            reason: qsTr("Escape. None of what was chosen comes in.")
            onClicked: {
                root.coming.leaveOut();
                field.clear();
                root.taken();
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("Left blank, the date of each file stands for it; pictures that were sent or copied often have a later one.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
