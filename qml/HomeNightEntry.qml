import QtQuick
import Lathhouse.Models

// A night with all that was read of it, at any spot, also in a room.
Column {
    id: root

    required property NightEntryModel entry
    required property string unit
    property int sky: 0
    readonly property int wrong: root.entry.error === "" ? NightEntryModel.None : root.entry.wrong
    readonly property real cell: root.width < Theme.px(480) ? root.width : Math.floor((root.width - 2 * Theme.px(12)) / 3)

    spacing: Theme.px(8)

    function keep(): void {
        if (root.entry.keep(low.value, high.value, station.value, root.sky, ago.value, note.value)) {
            for (const field of [low, high, station, ago, note])
                field.value = "";
            root.sky = 0;
            low.focusField();
        } else {
            (root.wrong === NightEntryModel.High ? high : root.wrong === NightEntryModel.Station ? station : root.wrong === NightEntryModel.Ago ? ago : low).focusField();
        }
    }
    function change(field: LabelledField, words: string): void {
        field.value = words;
        root.entry.forgive();
    }

    /// A night that is kept, into the fields, to be put right.
    function mend(was: var): void {
        low.value = was.low;
        high.value = was.high;
        station.value = was.station;
        ago.value = was.ago;
        note.value = was.note;
        root.sky = was.sky;
        low.focusField();
    }

    Heading {
        width: parent.width
        text: qsTr("A night with all that was read, also in a room")
    }
    SpotChips {
        objectName: "nightEntrySpots"
        width: parent.width
        spots: root.entry.spots
        current: root.entry.spot
        onChosen: index => root.entry.spot = index
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: low
            objectName: "entryLow"
            width: root.cell
            label: qsTr("Lowest of the night")
            unit: root.unit
            number: true
            trouble: root.wrong === NightEntryModel.Low ? root.entry.error : ""
            instead: root.wrong === NightEntryModel.Low ? root.entry.instead : ""
            onEdited: words => root.change(low, words)
            onEntered: root.keep()
        }
        LabelledField {
            id: high
            objectName: "entryHigh"
            width: root.cell
            label: qsTr("Highest since the last reading")
            unit: root.unit
            note: qsTr("May be left blank")
            number: true
            trouble: root.wrong === NightEntryModel.High ? root.entry.error : ""
            onEdited: words => root.change(high, words)
            onEntered: root.keep()
        }
        LabelledField {
            id: station
            objectName: "entryStation"
            width: root.cell
            label: qsTr("Low of a station near by")
            unit: root.unit
            note: qsTr("In the open, of that same night; may be left blank")
            number: true
            trouble: root.wrong === NightEntryModel.Station ? root.entry.error : ""
            instead: root.wrong === NightEntryModel.Station ? root.entry.instead : ""
            onEdited: words => root.change(station, words)
            onEntered: root.keep()
        }
        LabelledField {
            id: ago
            objectName: "entryAgo"
            width: root.cell
            label: qsTr("The night ended")
            unit: qsTr("days ago")
            note: qsTr("Blank: this morning")
            number: true
            trouble: root.wrong === NightEntryModel.Ago ? root.entry.error : ""
            onEdited: words => root.change(ago, words)
            onEntered: root.keep()
        }
        LabelledField {
            id: note
            objectName: "entryNote"
            width: root.cell
            label: qsTr("Anything worth keeping")
            note: qsTr("May be left blank")
            onEdited: words => root.change(note, words)
            onEntered: root.keep()
        }
    }
    ChoiceChips {
        width: parent.width
        title: qsTr("The sky of that night")
        part: "entrySky"
        choices: [qsTr("not noted"), qsTr("clear, calm"), qsTr("cloud or wind")]
        chosen: root.sky
        onChoose: index => root.sky = index
    }
    SheetButton {
        objectName: "entryKeep"
        text: qsTr("Keep the night")
        onClicked: root.keep()
    }
    Trouble { // What could not be written.
        objectName: "entryTrouble"
        width: parent.width
        words: root.wrong === NightEntryModel.None ? root.entry.error : ""
    }
    Words {
        objectName: "entrySaid"
        visible: text !== ""
        width: parent.width
        text: root.entry.said
        strong: true
    }
    Words {
        objectName: "entryKept"
        visible: text !== ""
        width: parent.width
        text: root.entry.kept
        quiet: true
    }
    SheetButton {
        objectName: "entryListed"
        visible: root.entry.spots.count > 0
        text: root.entry.listed ? qsTr("Less") : qsTr("The nights of this spot")
        reason: qsTr("Lists what was read there, to look it up or put it right")
        onClicked: root.entry.listed = !root.entry.listed
    }
    FormLoader {
        id: nights
        width: parent.width
        open: root.entry.listed
        file: "HomeKeptNights.qml"
        given: ({
                entry: root.entry
            })
    }
    Connections {
        target: nights.item
        ignoreUnknownSignals: true
        function onMend(row: int): void {
            root.mend(root.entry.mend(row));
        }
    }
}
