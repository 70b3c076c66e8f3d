pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Trays of the chosen lot: a new one, and how much has come up in each.
Column {
    id: root

    required property SeedsModel seeds
    /// They stand beside the sowing sheet, not in it.
    property bool besides: false
    /// Where the next tray stands; -1: that is not said.
    property int traySpot: -1
    /// Which cells of the trays were pressed, by head; remembered as long as the page is.
    readonly property var cellsOfTrays: ({})
    /// What else may be said of a tray is asked once there is one.
    readonly property bool sowing: root.seeds.currentRow >= 0 && sown.text.trim() !== ""

    spacing: Theme.px(8)

    /// The field for the seeds of the next tray has the keys.
    function sowNext(): void {
        sown.forceActiveFocus(Qt.TabFocusReason);
    }
    function sow(): void {
        if (root.seeds.sow(sown.text, root.traySpot, mix.text, note.text)) {
            if (mix.activeFocus || note.activeFocus)
                sown.forceActiveFocus(); // They go with the number.
            sown.clear();
            mix.clear();
            note.clear();
            ago.clear(); // The next count is of today.
            root.seeds.daysAgo = 0;
        } else if (sown.text !== "" && mix.text !== "") {
            mix.forceActiveFocus();
        } else {
            sown.forceActiveFocus();
        }
    }

    Heading {
        topPadding: Theme.px(root.besides ? 0 : 6)
        text: qsTr("Trays")
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: sown
            objectName: "sownField"
            least: Theme.px(150)
            label: qsTr("Seeds that went into a tray")
            placeholderText: qsTr("Seeds")
            inputMethodHints: Qt.ImhDigitsOnly
            onTextEdited: root.seeds.forgive()
            onAccepted: root.sow()
        }
        SheetField {
            id: ago
            objectName: "traysAgo"
            least: Theme.px(130)
            label: qsTr("How many days ago it was sown or counted, blank for today")
            placeholderText: qsTr("0 days ago")
            unit: ago.text === "" ? "" : qsTr("days ago")
            wrong: root.seeds.daysAgo < 0
            inputMethodHints: Qt.ImhDigitsOnly
            onTextEdited: {
                root.seeds.forgive();
                root.seeds.daysAgo = ago.text.trim() === "" ? 0 : /^\d{1,4}$/.test(ago.text.trim()) ? parseInt(ago.text) : -1;
            }
            onAccepted: sown.text !== "" ? root.sow() : sown.forceActiveFocus()
        }
        Words {
            objectName: "traysDay"
            visible: text !== ""
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            text: root.seeds.dayAgo
            quiet: true
        }
        SheetButton {
            objectName: "sownButton"
            text: root.seeds.dayAgo === "" ? qsTr("Sown today") : qsTr("Sown on that day")
            reason: qsTr("A tray of this lot, to be counted from now on")
            onClicked: root.sow()
        }
    }
    Words {
        visible: root.sowing
        width: parent.width
        text: qsTr("Where it stands, how warm its mix is and a note may be left out.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    SpotChips {
        objectName: "traySpots"
        visible: root.sowing
        width: parent.width
        spots: root.seeds.spots
        current: root.traySpot
        onChosen: index => root.traySpot = root.traySpot === index ? -1 : index
    }
    Flow {
        visible: root.sowing
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: mix
            objectName: "mixField"
            least: Theme.px(150)
            label: qsTr("How warm the mix is, if it was measured")
            placeholderText: qsTr("Warmth of the mix")
            unit: mix.text === "" ? "" : root.seeds.unit
            inputMethodHints: Qt.ImhPreferNumbers
            onTextEdited: root.seeds.forgive()
            onAccepted: sown.text !== "" ? root.sow() : sown.forceActiveFocus()
        }
        SheetField {
            id: note
            objectName: "trayNote"
            width: Math.max(Theme.px(180), Math.min(root.width - Theme.px(166), Theme.px(360)))
            label: qsTr("Note to the tray, may be left blank")
            placeholderText: label
            onAccepted: sown.text !== "" ? root.sow() : sown.forceActiveFocus()
        }
    }
    Column {
        objectName: "trays"
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Trays of this lot")

        Repeater {
            model: root.seeds.trays

            TrayRow {
                width: root.width
                page: root.seeds
                cellsOfTrays: root.cellsOfTrays
            }
        }
    }
    Column {
        objectName: "traysEmpty"
        visible: root.besides && root.seeds.trays.count === 0
        width: parent.width
        topPadding: Theme.px(16)
        spacing: Theme.px(8)

        EmptyPot {}
        Words {
            width: parent.width
            text: qsTr("No tray of this lot yet. Once seeds have gone into one, what comes up is counted here, and your counts tell how much of the lot comes up.")
        }
    }
}
