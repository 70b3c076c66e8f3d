pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// The chart as a table: the same numbers, the same date under the cursor.
FocusScope {
    id: root

    required property YearModel year

    readonly property list<string> heads: [qsTr("Date"), qsTr("Night low, middle"), qsTr("9 nights in 10"),
        root.year.stripLabel, qsTr("Frost after this night"), qsTr("Day length")]
    /// What does not fit scrolls sideways, the heads with it.
    readonly property real column: Math.max(Theme.px(116), (root.width - 10) / root.heads.length)

    onVisibleChanged: {
        root.fill();
        if (root.visible)
            list.forceActiveFocus();
    }
    onYearChanged: root.fill()

    /// Rows are made where they are seen, and the list forgets its row with its model.
    function fill(): void {
        list.model = root.visible ? root.year.nights : null;
        if (root.visible) {
            list.currentIndex = Qt.binding(() => root.year.cursorDay);
            list.positionViewAtIndex(root.year.cursorDay, ListView.Center);
        }
    }

    clip: true

    Row {
        id: header
        x: -list.contentX
        height: Theme.px(38)

        Repeater {
            model: root.heads

            Text {
                textFormat: Text.PlainText
                required property string modelData
                width: root.column
                height: header.height
                leftPadding: 8
                verticalAlignment: Text.AlignVCenter
                text: modelData
                color: Theme.ink
                wrapMode: Text.WordWrap
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
        contentWidth: root.column * root.heads.length
        flickableDirection: Flickable.AutoFlickIfNeeded
        clip: true
        focus: true
        keyNavigationEnabled: false
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        reuseItems: true
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("The year from today, a row for each date")
        Accessible.description: root.year.cursor.sentence

        ScrollBar.vertical: ScrollBar {
            policy: ScrollBar.AlwaysOn
            width: 8
            Accessible.ignored: true
        }
        delegate: TableRow {
            width: list.contentWidth
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
