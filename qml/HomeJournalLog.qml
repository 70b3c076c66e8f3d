import QtQuick
import Lathhouse.Models

// What happened at a spot, without a plant.
Column {
    id: root

    required property HomeJournalModel journal
    property int spot: 0
    property int what: HomeJournalModel.Note

    signal closed

    spacing: Theme.px(8)
    Keys.onEscapePressed: root.closed()

    function focusFirst(): void {
        words.forceActiveFocus();
    }
    function keep(): void {
        if (root.journal.log(root.spot, root.what, words.text, ago.text)) {
            words.clear();
            ago.clear();
            root.closed();
        } else if (root.journal.wrong === HomeJournalModel.Days) {
            ago.forceActiveFocus();
        } else {
            words.forceActiveFocus();
        }
    }

    ChoiceChips {
        width: parent.width
        title: qsTr("At which spot")
        part: "journalSpot"
        choices: root.journal.spots
        chosen: root.spot
        onChoose: index => root.spot = index
    }
    ChoiceChips {
        width: parent.width
        title: qsTr("What happened")
        part: "journalWhat"
        choices: [qsTr("Note"), qsTr("Looked over"), qsTr("Treated")]
        chosen: root.what
        note: root.what === HomeJournalModel.Treated ? qsTr("The label and local advice come first, and say how long to keep away.") : ""
        onChoose: index => {
            root.what = index;
            root.journal.forgive();
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: words
            objectName: "journalWords"
            width: Math.min(root.width, Theme.px(420))
            label: root.what === HomeJournalModel.Note ? qsTr("Note") : root.what === HomeJournalModel.Treated ? qsTr("With what, may be left blank") : qsTr("Note, may be left blank")
            placeholderText: label
            wrong: root.journal.error !== "" && root.journal.wrong === HomeJournalModel.Words
            onTextEdited: root.journal.forgive()
            onAccepted: root.keep()
        }
        SheetField {
            id: ago
            objectName: "journalAgo"
            least: Theme.px(150)
            label: qsTr("How many days ago, blank for today")
            placeholderText: qsTr("0 days ago")
            unit: ago.text === "" ? "" : qsTr("days ago")
            inputMethodHints: Qt.ImhDigitsOnly
            wrong: root.journal.error !== "" && root.journal.wrong === HomeJournalModel.Days
            onTextEdited: root.journal.forgive()
            onAccepted: root.keep()
        }
        ActButton {
            objectName: "journalKeep"
            text: qsTr("Keep in the journal")
            onClicked: root.keep()
        }
        SheetButton {
            objectName: "journalLeave"
            text: qsTr("Leave")
            reason: qsTr("Escape")
            onClicked: root.closed()
        }
    }
    Trouble {
        objectName: "journalTrouble"
        width: parent.width
        words: root.journal.wrong === HomeJournalModel.Nothing ? "" : root.journal.error
    }
}
