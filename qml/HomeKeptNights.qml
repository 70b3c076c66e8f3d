pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The nights that are kept of a spot, the newest first; each can be put right.
Column {
    id: root

    required property NightEntryModel entry
    readonly property real wordsWidth: root.width - Math.max(Theme.px(120), Math.ceil(mendWords.advanceWidth) + Theme.px(40))

    /// The night of that row belongs into the fields.
    signal mend(row: int)

    spacing: Theme.px(8)

    TextMetrics {
        id: mendWords
        text: qsTr("Put right")
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
    }
    Column {
        objectName: "keptNights"
        visible: root.entry.readings.count > 0
        width: parent.width
        Accessible.role: Accessible.Table
        Accessible.name: root.entry.kept

        TwinRow {
            width: root.wordsWidth
            head: true
            cells: [qsTr("Night to"), qsTr("low"), qsTr("high"), qsTr("station"), qsTr("sky"), qsTr("note")]
            sentence: qsTr("Night to, low, high, station, sky, note")
        }
        Repeater {
            model: root.entry.readings

            Item {
                id: night
                required property int index
                required property string date
                required property string low
                required property string high
                required property string station
                required property string sky
                required property string note
                required property string sentence
                width: root.width
                height: Math.max(row.height, put.height)

                TwinRow {
                    id: row
                    width: root.wordsWidth
                    cells: [night.date, night.low, night.high, night.station, night.sky, night.note]
                    sentence: night.sentence
                }
                SheetButton {
                    id: put
                    objectName: "mendNight" + night.index
                    anchors.right: parent.right
                    text: mendWords.text
                    reason: night.sentence
                    onClicked: root.mend(night.index)
                }
            }
        }
    }
    SheetButton {
        objectName: "allNights"
        visible: root.entry.more > 0
        text: qsTr("%1 nights more").arg(root.entry.more)
        onClicked: root.entry.listAll()
    }
    Words {
        visible: root.entry.readings.count > 0
        width: parent.width
        text: qsTr("Put right, a night takes its own place. One that was kept for another day or spot is taken back with Undo above the pages.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
