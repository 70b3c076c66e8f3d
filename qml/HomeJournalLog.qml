import QtQuick
import Lathhouse.Models

// What happened at a spot or in the whole household, without a plant.
Column {
    id: root

    required property HomeJournalModel journal
    property int place: 0
    property int sort: 0
    readonly property var sorts: root.journal.places.length > 0 ? root.journal.sorts(root.place) : []
    readonly property bool note: root.sorts.length > 0 && root.journal.isNote(root.place, root.sort)
    readonly property string asked: root.sorts.length > 0 ? root.journal.asked(root.place, root.sort) : ""
    readonly property var names: root.sorts.length > 0 ? root.journal.choices(root.place, root.sort) : []

    signal closed

    spacing: Theme.px(8)
    Keys.onEscapePressed: root.closed()

    function focusFirst(): void {
        (detail.visible ? detail : words).forceActiveFocus();
    }
    function keep(): void {
        if (root.journal.log(root.place, root.sort, detail.text, words.text, ago.text)) {
            detail.clear();
            words.clear();
            ago.clear();
            root.closed();
        } else if (root.journal.wrong === HomeJournalModel.Days) {
            ago.forceActiveFocus();
        } else if (root.journal.wrong === HomeJournalModel.Detail) {
            detail.forceActiveFocus();
        } else {
            words.forceActiveFocus();
        }
    }

    ChoiceChips {
        width: parent.width
        title: qsTr("Where")
        part: "journalSpot"
        choices: root.journal.places
        chosen: root.place
        onChoose: index => {
            root.sort = Math.max(0, root.journal.sorts(index).indexOf(root.sorts[root.sort]));
            root.place = index;
            root.journal.forgive();
        }
    }
    ChoiceChips {
        width: parent.width
        title: qsTr("What happened")
        part: "journalWhat"
        choices: root.sorts
        chosen: root.sort
        note: root.sorts.length > 0 ? root.journal.heed(root.place, root.sort) : ""
        onChoose: index => {
            root.sort = index;
            detail.clear();
            root.journal.forgive();
        }
    }
    ChoiceChips {
        visible: root.names.length > 0
        width: parent.width
        title: qsTr("Which pest")
        part: "journalPest"
        choices: root.names
        chosen: root.names.indexOf(detail.text)
        onChoose: index => {
            detail.text = root.names[index];
            root.journal.forgive();
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: detail
            objectName: "journalDetail"
            visible: root.asked !== ""
            least: Theme.px(260)
            most: root.width
            label: root.asked
            placeholderText: label
            wrong: root.journal.error !== "" && root.journal.wrong === HomeJournalModel.Detail
            onTextEdited: root.journal.forgive()
            onAccepted: root.keep()
        }
        SheetField {
            id: words
            objectName: "journalWords"
            width: Math.min(root.width, Theme.px(420))
            label: root.note ? qsTr("Note") : qsTr("Note, may be left blank")
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
