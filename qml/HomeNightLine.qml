pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Nights at or below a line of one's own, in the open air or at a spot: their dates by chance, and the chance of one between two dates.
Column {
    id: root

    required property NightLineModel line
    required property string unit

    spacing: Theme.px(8)

    function ask(): void {
        if (root.line.ask(low.text, from.text, to.text, chance.text))
            return;
        if (root.line.chanceWrong)
            chance.forceActiveFocus();
        else
            low.forceActiveFocus();
    }
    /// What was asked is asked of the other place at once.
    function choosePlace(place: int): void {
        root.line.place = place;
        if (low.text !== "" && root.line.head !== "")
            root.ask();
    }

    Heading {
        width: parent.width
        text: qsTr("Nights at or below a line of your own")
    }
    ChoiceChips {
        visible: root.line.places.length > 1
        width: parent.width
        title: qsTr("Where")
        part: "linePlace"
        choices: root.line.places
        chosen: root.line.place
        onChoose: index => root.choosePlace(index)
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: low
            objectName: "lineLow"
            least: Theme.px(110)
            label: qsTr("The line")
            placeholderText: qsTr("line")
            unit: root.unit
            wrong: root.line.error !== "" && !root.line.chanceWrong
            inputMethodHints: Qt.ImhPreferNumbers
            onTextEdited: root.line.forgive()
            onAccepted: root.ask()
        }
        SheetField {
            id: from
            objectName: "lineFrom"
            least: Theme.px(190)
            label: qsTr("From which night on, may be left blank")
            placeholderText: qsTr("from, such as 1.5.2027")
            wrong: root.line.error !== "" && !root.line.chanceWrong
            onTextEdited: root.line.forgive()
            onAccepted: root.ask()
        }
        SheetField {
            id: to
            objectName: "lineTo"
            least: Theme.px(190)
            label: qsTr("To which night, may be left blank")
            placeholderText: qsTr("to, such as 31.5.2027")
            wrong: root.line.error !== "" && !root.line.chanceWrong
            onTextEdited: root.line.forgive()
            onAccepted: root.ask()
        }
        SheetField {
            id: chance
            objectName: "lineChance"
            least: Theme.px(190)
            label: qsTr("One more chance to give dates for, such as 1 in 12, may be left blank")
            placeholderText: qsTr("chance, such as 1 in 12")
            wrong: root.line.chanceWrong
            onTextEdited: root.line.forgive()
            onAccepted: root.ask()
        }
        SheetButton {
            objectName: "lineAsk"
            text: qsTr("Tell the chances")
            reason: qsTr("A night is named by its morning. Without dates: the last and the first of the season.")
            onClicked: root.ask()
        }
    }
    Trouble {
        objectName: "lineTrouble"
        width: parent.width
        words: root.line.error
        instead: root.line.instead
        onTaken: words => {
            low.text = words;
            root.line.forgive();
            low.forceActiveFocus();
        }
    }
    Words {
        objectName: "lineBetween"
        visible: text !== ""
        width: parent.width
        text: root.line.between
        strong: true
    }
    Words {
        objectName: "lineHead"
        visible: text !== ""
        width: parent.width
        text: root.line.head
    }
    Column {
        objectName: "lineDates"
        visible: root.line.dates.count > 0
        width: parent.width
        Accessible.role: Accessible.Table
        Accessible.name: root.line.head

        TwinRow {
            width: parent.width
            head: true
            cells: [qsTr("Chance"), qsTr("one more after"), qsTr("the first one by"), qsTr("more days without than")]
            sentence: qsTr("Chance, one more after, the first one by, more days without than")
        }
        Repeater {
            model: root.line.dates

            TwinRow {
                required property string chance
                required property string last
                required property string first
                required property string free
                width: root.width
                cells: [chance, last, first, free]
            }
        }
    }
    Words {
        visible: text !== ""
        width: parent.width
        text: root.line.basis
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
