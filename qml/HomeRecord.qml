pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The household's own record of days, month by month against the shipped table; taken in, removed, brought back.
Item {
    id: root

    required property HomeRecordModel record
    required property bool narrow
    readonly property real leftWidth: root.narrow ? root.width : Math.round(root.width * 0.36)
    readonly property real rightX: root.narrow ? 0 : root.leftWidth + Theme.px(36)
    /// The chosen column of words in rows that are narrower than three of them.
    readonly property bool shortRows: root.width - root.rightX < Theme.px(620)

    implicitHeight: Math.max(own.height, table.y + table.height)

    Keys.onPressed: event => {
        const shift = (event.modifiers & Qt.ShiftModifier) !== 0;
        event.accepted = event.key === Qt.Key_Z && (event.modifiers & Qt.ControlModifier) !== 0;
        if (event.accepted && shift)
            root.record.redo();
        else if (event.accepted)
            root.record.undo();
    }

    Column {
        id: own
        width: root.leftWidth
        spacing: Theme.px(8)

        Heading {
            objectName: "recordTitle"
            width: parent.width
            text: root.record.isThere ? root.record.title : qsTr("No record of your own yet")
        }
        Words {
            visible: root.record.known && !root.record.isThere
            width: parent.width
            text: qsTr("The shipped stations answer for this place. A thermometer’s record of ten years and more, kept here, answers better: dates of frost are then counted in it.")
            quiet: true
        }
        Words {
            visible: root.record.isThere
            width: parent.width
            text: root.record.origin
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        Words {
            objectName: "recordUse"
            visible: root.record.isThere
            width: parent.width
            text: root.record.use
        }
        Repeater {
            model: root.record.figures

            FactRow {
                width: own.width
            }
        }
        SheetButton {
            objectName: "removeRecord"
            visible: root.record.isThere
            text: qsTr("Remove the record")
            reason: qsTr("It can be brought back while this window is open")
            onClicked: root.record.remove()
        }
        UndoBar {
            objectName: "recordUndo"
            width: parent.width
            said: root.record.said
            canUndo: root.record.canUndo
            canRedo: root.record.canRedo
            onUndo: root.record.undo()
            onRedo: root.record.redo()
        }
        Words {
            visible: root.record.canUndo
            width: parent.width
            text: qsTr("The record taken out or replaced can be brought back until the window is closed; its file is never touched.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        Item {
            width: 1
            height: Theme.px(6)
        }
        Heading {
            width: parent.width
            text: root.record.isThere ? qsTr("Another record") : qsTr("Take a record in")
            font.pixelSize: Theme.subheadSize
        }
        HomeRecordImport {
            width: parent.width
            record: root.record
        }
    }
    Column {
        id: table
        x: root.rightX
        y: root.narrow ? own.height + Theme.px(24) : 0
        width: root.width - x
        spacing: Theme.px(8)

        Heading {
            width: parent.width
            text: qsTr("Month by month against the shipped table")
        }
        Words {
            visible: !root.record.isThere
            width: parent.width
            text: qsTr("Here its lows and highs will stand beside those of the stations, so that a wrong unit, place or thermometer shows before it counts.")
            quiet: true
        }
        Row {
            id: verdict
            visible: root.record.isThere
            width: parent.width
            spacing: Theme.px(8)

            Lozenge {
                visible: root.record.doubtful
                y: Theme.px(5)
            }
            Words {
                objectName: "recordVerdict"
                width: verdict.width - (root.record.doubtful ? Theme.px(19) : 0)
                text: root.record.verdict
                strong: true
            }
        }
        Column {
            objectName: "recordMonths"
            visible: root.record.months.count > 0
            width: parent.width
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("Mean lows and highs, here, by the table, and apart")

            TwinRow {
                width: table.width
                head: true
                cells: root.shortRows ? [root.record.unit, qsTr("low"), qsTr("apart"), qsTr("high"), qsTr("apart")] : [qsTr("Means, %1").arg(root.record.unit), qsTr("low here"), qsTr("low, table"), qsTr("apart"), qsTr("high here"), qsTr("high, table"), qsTr("apart")]
                sentence: qsTr("Month, mean low here, by the table, apart, mean high here, by the table, apart")
            }
            Repeater {
                model: root.record.months

                TwinRow {
                    required property string month
                    required property string low
                    required property string tableLow
                    required property string lowApart
                    required property string high
                    required property string tableHigh
                    required property string highApart
                    width: table.width
                    cells: root.shortRows ? [month, low, lowApart, high, highApart] : [month, low, tableLow, lowApart, high, tableHigh, highApart]
                }
            }
        }
        Words {
            visible: root.record.months.count > 0
            width: parent.width
            text: qsTr("Apart: here less the table. Frost hollows and warm walls explain a degree or two; more is more often a wrong unit, place or hour of reading.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    Rectangle {
        visible: !root.narrow
        x: root.leftWidth + Theme.px(17)
        width: 1
        height: root.implicitHeight
        color: Theme.rule
    }
}
