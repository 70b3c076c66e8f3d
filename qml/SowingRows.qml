pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Below the plants: the seasons of the lots that can be sown in the year.
Column {
    id: root

    required property YearModel year
    required property real labelWidth
    required property real rowHeight

    /// The row with the keys, while the rows have them.
    property int current: 0

    /// It lies at that height of the rows, and is to be seen.
    signal currentShown(y: real, high: real)
    signal opened(sowing: int)
    /// What can be done with it is asked there.
    signal actsAsked(sowing: int, x: real)

    function rowAt(y: real): int {
        for (let row = 0; row < rows.count; ++row) {
            const at = rows.itemAt(row);
            if (at !== null && y >= at.y && y < at.y + at.height)
                return row;
        }
        return -1;
    }
    function bottomOf(row: int): real {
        const at = rows.itemAt(row);
        return at === null ? 0 : at.y + at.height;
    }
    function show(row: int): void {
        root.current = Math.max(0, Math.min(rows.count - 1, row));
        const at = rows.itemAt(root.current);
        if (at !== null && root.activeFocus)
            root.currentShown(at.y, at.height);
    }

    activeFocusOnTab: true
    onActiveFocusChanged: {
        if (root.activeFocus)
            root.show(root.current);
        else
            root.focus = false; // Else the list of plants would hand on the keys that it gets.
    }
    Keys.onBacktabPressed: root.focus = false
    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Up)
            root.show(root.current - 1);
        else if (event.key === Qt.Key_Down)
            root.show(root.current + 1);
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
            root.opened(root.current);
        else if (event.key === Qt.Key_Menu || event.key === Qt.Key_F10 && (event.modifiers & Qt.ShiftModifier) !== 0)
            root.actsAsked(root.current, Theme.px(40));
        else
            event.accepted = false;
    }
    visible: root.year.sowings.count > 0
    height: visible ? implicitHeight : 0
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Sowings")

    Item {
        width: root.width
        height: Math.max(Theme.target(26), key.height + Theme.px(10))

        Text {
            textFormat: Text.PlainText
            x: 8
            y: Theme.px(6)
            text: qsTr("Sowings")
            color: Theme.ink
            font.family: Theme.titleFamily
            font.pixelSize: Theme.subheadSize
            Accessible.role: Accessible.Heading
            Accessible.name: text
        }
        Text {
            id: key
            textFormat: Text.PlainText
            x: root.labelWidth + 16
            y: Theme.px(8)
            width: root.width - x
            text: qsTr("ring: sow · bracket: comes up · steps: hardening · slash: first ripe or in flower")
            color: Theme.ink2
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    Repeater {
        id: rows
        model: root.year.sowings

        Item {
            id: sowing
            required property int index
            required property string name
            required property string sentence
            readonly property bool focused: root.activeFocus && sowing.index === root.current
            objectName: "sowingRow" + sowing.index
            width: root.width
            height: Math.max(root.rowHeight, nameText.implicitHeight + Theme.px(6))
            Accessible.role: Accessible.ListItem
            Accessible.name: sowing.sentence
            Accessible.description: qsTr("Its lot: Enter, or press twice")
            Accessible.focusable: true
            Accessible.focused: sowing.focused
            Accessible.onPressAction: root.opened(sowing.index)

            Rectangle {
                y: 1
                width: root.labelWidth
                height: sowing.height - 1
                color: label.containsMouse ? Theme.well : "transparent"
                border.width: sowing.focused ? 2 : 0
                border.color: Theme.focus
            }
            MouseArea {
                id: label
                width: root.labelWidth + 8
                height: sowing.height
                hoverEnabled: true
                acceptedButtons: Qt.LeftButton | Qt.RightButton
                onClicked: mouse => {
                    root.current = sowing.index;
                    root.forceActiveFocus();
                    if (mouse.button === Qt.RightButton)
                        root.actsAsked(sowing.index, mouse.x);
                }
                onDoubleClicked: mouse => {
                    if (mouse.button === Qt.LeftButton)
                        root.opened(sowing.index);
                }
                onPressAndHold: mouse => root.actsAsked(sowing.index, mouse.x)
            }
            Text {
                id: nameText
                textFormat: Text.PlainText
                x: 8
                width: root.labelWidth - Theme.px(14)
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                text: sowing.name
                color: Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
            YearSowingBar {
                x: root.labelWidth + 8
                width: sowing.width - x
                height: sowing.height
                year: root.year
                theme: Theme
                scheme: Theme.look
                row: sowing.index
                Accessible.ignored: true
            }
        }
    }
}
