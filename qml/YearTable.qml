import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// The chart as a table: the same numbers, the same date under the cursor.
FocusScope {
    id: root

    required property YearModel year

    readonly property list<string> heads: [qsTr("Date"), qsTr("Night low, middle"), qsTr("9 nights in 10"),
        qsTr("Frost this night"), qsTr("Frost after this night"), qsTr("Day length")]
    readonly property real column: root.width / 6

    focus: true
    Component.onCompleted: {
        list.positionViewAtIndex(root.year.cursorDay, ListView.Center);
        list.forceActiveFocus();
    }

    Row {
        id: header
        height: 30

        Repeater {
            model: root.heads

            Text {
                required property string modelData
                width: root.column
                height: header.height
                leftPadding: 8
                verticalAlignment: Text.AlignVCenter
                text: modelData
                color: Theme.ink
                elide: Text.ElideRight
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                font.weight: Font.DemiBold
                Accessible.role: Accessible.ColumnHeader
                Accessible.name: modelData
            }
        }
    }
    Rectangle {
        y: header.height
        width: root.width
        height: 1.5
        color: Theme.ink
    }
    ListView {
        id: list
        objectName: "tableRows"
        y: header.height + 2
        width: root.width
        height: root.height - y
        clip: true
        focus: true
        keyNavigationEnabled: false
        boundsBehavior: Flickable.StopAtBounds
        model: root.year.nights
        currentIndex: root.year.cursorDay
        highlight: Item {}
        highlightMoveDuration: 0
        reuseItems: true
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("The year from today, a row for each date")
        Accessible.description: root.year.cursorSentence

        ScrollBar.vertical: ScrollBar {
            policy: ScrollBar.AlwaysOn
            width: 8
            Accessible.ignored: true
        }
        delegate: TableRow {
            width: list.width - 10
            column: root.column
            chosen: index === root.year.cursorDay
            focused: list.activeFocus && index === root.year.cursorDay
            onPressed: {
                root.year.cursorDay = index;
                list.forceActiveFocus();
            }
        }
    }
}
