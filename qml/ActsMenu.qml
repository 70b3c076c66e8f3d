pragma ComponentBehavior: Bound

import QtQuick

// What can be done with a plant or a row, on a small sheet beside it: by the menu key, a right click or a long press.
FocusScope {
    id: root

    /// Whose acts they are.
    property string title: ""
    /// Each has a name, its words, the key that does the same, and whether it can be done now (on), where it cannot always.
    property var acts: []
    /// Where it was asked for.
    property point at
    property Item before: null

    signal chosen(name: string)

    visible: false
    anchors.fill: parent
    z: 30
    Accessible.role: Accessible.PopupMenu
    Accessible.name: root.title
    // One has gone on to something else.
    onActiveFocusChanged: if (!root.activeFocus)
        root.visible = false

    /// Whether a key asks for the acts of what is chosen.
    function isAsked(event: KeyEvent): bool {
        return event.key === Qt.Key_Menu || event.key === Qt.Key_F10 && (event.modifiers & Qt.ShiftModifier) !== 0;
    }
    function open(title: string, acts: var, at: point): void {
        if (!root.visible)
            root.before = root.Window.activeFocusItem;
        root.title = title;
        root.acts = acts.filter(act => act.on !== false);
        root.at = at;
        sheet.contentY = 0;
        sheet.widest = head.implicitWidth;
        for (let row = 0; row < rows.count; ++row)
            sheet.widest = Math.max(sheet.widest, rows.itemAt(row).implicitWidth);
        root.visible = true;
        root.goTo(0);
    }
    function goTo(row: int): void {
        rows.itemAt((row + rows.count) % rows.count).forceActiveFocus(Qt.TabFocusReason);
    }
    function goBy(by: int): void {
        for (let row = 0; row < rows.count; ++row) {
            if (rows.itemAt(row).activeFocus) {
                root.goTo(row + by);
                return;
            }
        }
    }
    function close(): void {
        root.visible = false;
        if (root.before !== null)
            root.before.forceActiveFocus(Qt.TabFocusReason);
    }
    function choose(name: string): void {
        root.close();
        root.chosen(name);
    }

    // All keys are for the acts while they are shown.
    Keys.onShortcutOverride: event => event.accepted = event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter
    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Escape || root.isAsked(event))
            root.close();
        else if (event.key === Qt.Key_Down || event.key === Qt.Key_Tab)
            root.goBy(1);
        else if (event.key === Qt.Key_Up || event.key === Qt.Key_Backtab)
            root.goBy(-1);
        else if (event.key === Qt.Key_Home)
            root.goTo(0);
        else if (event.key === Qt.Key_End)
            root.goTo(-1);
    }

    MouseArea { // What lies below is not for the pointer now.
        anchors.fill: parent
        acceptedButtons: Qt.AllButtons
        hoverEnabled: true
        onPressed: root.close()
        onWheel: wheel => wheel.accepted = true
    }
    Rectangle {
        id: paper
        objectName: "actsSheet"
        x: Math.max(8, Math.min(root.at.x, root.width - width - 8))
        y: Math.max(8, Math.min(root.at.y, root.height - height - 8))
        width: Math.min(sheet.widest + 2, root.width - 16)
        height: Math.min(sheet.contentHeight + 2, root.height - 16)
        radius: Theme.sheetRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge

        SheetScroll {
            id: sheet
            property real widest: 0
            anchors.fill: parent
            anchors.margins: 1
            contentHeight: column.height

            Column {
                id: column
                width: sheet.width
                bottomPadding: Theme.px(4)

                Words {
                    id: head
                    objectName: "actsTitle"
                    width: parent.width
                    leftPadding: Theme.px(14)
                    rightPadding: Theme.px(14)
                    topPadding: Theme.px(8)
                    bottomPadding: Theme.px(4)
                    text: root.title
                    strong: true
                    Accessible.ignored: true
                }
                Repeater {
                    id: rows
                    model: root.acts

                    SpokenButton {
                        id: act

                        required property var modelData

                        objectName: "act_" + modelData.name
                        spokenRole: Accessible.MenuItem
                        width: column.width
                        implicitWidth: label.implicitWidth + (key.text === "" ? 0 : key.implicitWidth + Theme.px(24)) + Theme.px(28)
                        height: Math.max(Theme.target(32), label.height + Theme.px(8))
                        text: modelData.words
                        reason: modelData.key === undefined ? "" : qsTr("Key %1").arg(modelData.key)
                        onClicked: root.choose(modelData.name)

                        background: Rectangle {
                            color: act.down ? Theme.select : act.hovered || act.activeFocus ? Theme.well : Theme.sheet
                            border.width: act.activeFocus ? 2 : 0
                            border.color: Theme.focus
                        }
                        contentItem: Item {}

                        Words {
                            id: label
                            x: Theme.px(14)
                            width: parent.width - 2 * x - (key.text === "" ? 0 : key.width + Theme.px(24))
                            anchors.verticalCenter: parent.verticalCenter
                            text: act.text
                            Accessible.ignored: true
                        }
                        Words {
                            id: key
                            anchors.right: parent.right
                            anchors.rightMargin: Theme.px(14)
                            anchors.verticalCenter: parent.verticalCenter
                            text: act.modelData.key ?? ""
                            quiet: true
                            font.pixelSize: Theme.smallSize
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
}
