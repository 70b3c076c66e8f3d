pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// One plant's year.
Item {
    id: root

    required property int index
    required property string name
    required property string hazard
    required property string sentence
    required property string pinned
    required property YearModel year
    /// What is to be carried today, by the number of the plant.
    property var carries: ({})
    /// What is to be carried today of this one, in words below its name.
    readonly property string due: root.carries[root.year.plants.idAt(root.index)] ?? ""
    required property real labelWidth
    required property real barHeight
    required property real rowHeight
    required property bool chosen
    required property bool focused

    /// The spot that the plants from here on begin the year at, where they stand by spot.
    readonly property string heading: ListView.section !== "" && ListView.section !== ListView.previousSection ? ListView.section : ""

    signal opened
    /// What can be done with it is asked there.
    signal actsAsked(x: real, y: real)

    height: root.rowHeight + dueText.room + (root.heading === "" ? 0 : Math.max(Theme.px(24), group.implicitHeight))

    Accessible.role: Accessible.ListItem
    Accessible.name: root.due === "" ? root.sentence : qsTr("%1 Due: %2.").arg(root.sentence).arg(root.due)
    Accessible.description: qsTr("Its page: Enter, or press twice")
    Accessible.selected: root.chosen
    Accessible.focusable: true
    Accessible.focused: root.focused
    Accessible.onPressAction: root.year.currentRow = root.index

    SpotGroup {
        id: group
        visible: root.heading !== ""
        width: root.width
        section: root.heading
    }
    Item {
        id: row
        y: root.height - height - dueText.room
        width: root.width
        height: root.rowHeight

        Rectangle {
            x: 0
            y: 1
            width: root.labelWidth
            height: row.height - 1 + dueText.room
            color: root.chosen ? Theme.select : label.containsMouse ? Theme.well : "transparent"
            border.width: root.focused ? 2 : Theme.contrast && root.chosen ? 1 : 0
            border.color: root.focused ? Theme.focus : Theme.edge

            Rectangle {
                visible: root.chosen && !root.focused
                width: 4
                height: parent.height
                color: Theme.action
            }
        }
        Text {
            id: dueText
            objectName: "dueWords"
            readonly property real room: visible ? Math.ceil(implicitHeight) : 0
            textFormat: Text.PlainText
            visible: root.due !== ""
            x: 8
            y: row.height - 2
            width: root.labelWidth - Theme.px(14)
            text: root.due
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
        // Kept by hand: a nail.
        Rectangle {
            id: nail
            objectName: "nail"
            visible: root.pinned !== ""
            x: root.labelWidth - Theme.px(root.hazard === "" ? 12 : 28)
            y: (row.height - height) / 2 + 1.5
            width: Theme.px(8)
            height: width
            radius: width / 2
            color: "transparent"
            border.width: 2
            border.color: Theme.ink
            Accessible.ignored: true
        }
        Text {
            id: nameText
            readonly property bool mayBeCut: true
            textFormat: Text.PlainText
            x: 8
            width: root.labelWidth - Theme.px((root.hazard === "" ? 14 : 34) + (root.pinned === "" ? 0 : 14))
            height: row.height
            verticalAlignment: Text.AlignVCenter
            topPadding: 3
            text: root.name
            color: Theme.ink
            elide: Text.ElideRight
            font.family: Theme.textFamily
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
        Rectangle {
            visible: root.hazard !== ""
            x: root.labelWidth - Theme.px(14)
            y: (row.height - height) / 2 + 1.5
            width: 8.5 * Theme.textScale
            height: width
            rotation: 45
            color: Theme.caution
            antialiasing: true
            Accessible.ignored: true
        }
        MouseArea {
            id: label
            width: root.labelWidth + 8
            height: row.height + dueText.room
            hoverEnabled: true
            acceptedButtons: Qt.LeftButton | Qt.RightButton
            onClicked: mouse => {
                root.year.currentRow = root.index;
                if (mouse.button === Qt.RightButton)
                    root.actsAsked(mouse.x, row.y + mouse.y);
            }
            onDoubleClicked: mouse => {
                if (mouse.button === Qt.LeftButton)
                    root.opened();
            }
            onPressAndHold: mouse => root.actsAsked(mouse.x, row.y + mouse.y)
        }
        ToolTip {
            visible: label.containsMouse
            delay: 400
            text: root.name + (root.hazard === "" ? "" : qsTr(": %1").arg(root.hazard)) + (root.pinned === "" ? "" : qsTr(", %1").arg(root.pinned)) + (root.due === "" ? "" : qsTr(", %1").arg(root.due)) + "\n" + qsTr("Its page: Enter, or press twice")
            font.family: Theme.textFamily
            font.pixelSize: Theme.rowSize
        }
        YearBar {
            objectName: "bar"
            x: root.labelWidth + 8 - margin
            width: root.width - x
            height: row.height
            year: root.year
            theme: Theme
            scheme: Theme.look
            row: root.index
            moveTime: Theme.moveTime
            barHeight: root.barHeight
            Accessible.ignored: true
        }
    }
}
