pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Today's tasks in an order in which pests do not travel.
FocusScope {
    id: root

    required property RoundModel round
    required property bool narrow
    readonly property real side: root.narrow ? 11 : 19
    readonly property real noteEnd: note.y + (note.visible ? note.implicitHeight : 0)

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Today's round")

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Up)
            root.round.currentRow -= 1;
        else if (event.key === Qt.Key_Down)
            root.round.currentRow += 1;
        else if (event.key === Qt.Key_Home)
            root.round.currentRow = 0;
        else if (event.key === Qt.Key_End)
            root.round.currentRow = root.round.count - 1;
        else if (event.key === Qt.Key_Space)
            root.round.tick(root.round.currentRow);
        else if (event.key === Qt.Key_P && !control)
            root.round.postpone(root.round.currentRow, 1);
        else if (event.key === Qt.Key_U || event.key === Qt.Key_Z && control)
            root.round.undo();
        else if (event.key === Qt.Key_F5)
            root.round.reload();
        else
            event.accepted = false;
    }

    Text {
        id: title
        x: root.side
        y: 10
        text: root.round.title
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: root.narrow ? Math.min(Theme.titleSize, Theme.px(25)) : Theme.titleSize
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Text {
        id: headLine
        objectName: "headLine"
        x: root.side
        y: title.y + title.height + 2
        width: (root.narrow ? root.width - root.side : progress.x - 20) - x
        text: root.round.headLine
        color: Theme.ink2
        wrapMode: Text.WordWrap
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Item {
        id: progress
        visible: root.round.count > 0
        x: root.narrow ? root.side : later.x - width - Theme.px(24)
        y: root.narrow ? headLine.y + headLine.height + Theme.px(6) : Theme.px(20)
        width: Theme.px(200)
        height: Theme.px(30)
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("%1, %2").arg(root.round.doneLine).arg(root.round.minutesLine)

        Text {
            text: root.round.doneLine
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        Text {
            anchors.right: parent.right
            text: root.round.minutesLine
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: Theme.px(8)
            color: Theme.sheet
            border.width: 1
            border.color: Theme.edge

            Rectangle {
                width: Math.round(parent.width * root.round.doneShare)
                height: parent.height
                color: Theme.action
            }
        }
    }
    SheetButton {
        id: later
        objectName: "laterButton"
        visible: root.round.count > 0
        anchors.right: parent.right
        anchors.rightMargin: root.side
        y: root.narrow ? headLine.y + headLine.height + Theme.px(4) : Theme.px(16)
        focusPolicy: Qt.TabFocus // The arrows and Space stay with the tasks after a click.
        text: qsTr("Put off a day")
        reason: qsTr("Key P. The chosen task is due again tomorrow.")
        onClicked: root.round.postpone(root.round.currentRow, 1)
    }

    // What went wrong, where it happened.
    Rectangle {
        id: failure
        objectName: "failure"
        visible: root.round.error !== ""
        x: root.side
        y: root.narrow ? later.y + (later.visible ? later.height + Theme.px(8) : 0) : headLine.y + headLine.height + Theme.px(10)
        width: root.width - 2 * root.side
        height: visible ? Math.max(failureText.height, again.height) + Theme.px(16) : 0
        color: Theme.cautionWash
        border.width: 1
        border.color: Theme.caution
        Accessible.role: Accessible.AlertMessage
        Accessible.name: root.round.error

        Text {
            id: failureText
            objectName: "failureText"
            x: Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            width: again.x - x - Theme.px(12)
            text: root.round.error
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.ignored: true
        }
        SheetButton {
            id: again
            anchors.right: parent.right
            anchors.rightMargin: Theme.px(8)
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Read again")
            reason: qsTr("Key F5. Reads the household anew.")
            onClicked: {
                root.round.reload();
                list.forceActiveFocus();
            }
        }
    }
    Text {
        id: note
        objectName: "roundNote"
        visible: text !== ""
        x: root.side
        y: failure.y + (failure.visible ? failure.height + Theme.px(8) : 0)
        width: Math.min(root.width - 2 * root.side, Theme.px(760))
        text: root.round.note
        color: Theme.ink2
        wrapMode: Text.WordWrap
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Column {
        objectName: "roundEmpty"
        visible: root.round.emptySentence !== ""
        x: root.side + Theme.px(24)
        y: root.noteEnd + Theme.px(24)
        spacing: Theme.gap2

        EmptyPot {}
        Text {
            width: Math.min(Theme.px(480), root.width - 2 * root.side - Theme.px(48))
            text: root.round.emptySentence
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
    Text {
        visible: root.round.working && root.round.count === 0
        x: root.side
        y: root.noteEnd + Theme.px(24)
        text: qsTr("The round is being worked out.")
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ListView {
        id: list
        objectName: "roundRows"
        x: root.side
        y: root.noteEnd + Theme.px(4)
        width: root.width - 2 * root.side
        height: root.height - y - (undoBar.visible ? undoBar.height : 0) - 4
        clip: true
        focus: true
        activeFocusOnTab: true
        keyNavigationEnabled: false
        model: root.round
        boundsBehavior: Flickable.StopAtBounds
        highlightFollowsCurrentItem: true
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Tasks")

        ScrollBar.vertical: ScrollBar {
            policy: list.contentHeight > list.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            width: 8
            Accessible.ignored: true
        }
        delegate: RoundRow {
            width: list.width - 10
            round: root.round
            narrow: root.narrow
            chosen: index === root.round.currentRow
            focused: list.activeFocus && index === root.round.currentRow
        }
        Connections {
            target: root.round

            function onCurrentRowChanged(): void {
                list.currentIndex = root.round.currentRow;
                list.positionViewAtIndex(list.currentIndex, ListView.Contain);
            }
            function onModelReset(): void {
                list.currentIndex = root.round.currentRow;
            }
        }
    }
    // What was done last stays in words until the next change.
    Rectangle {
        id: undoBar
        objectName: "undoBar"
        visible: root.round.said !== ""
        x: root.side
        y: root.height - height - 4
        width: root.width - 2 * root.side
        height: Math.max(saidText.height, undoButton.height) + Theme.px(12)
        radius: Theme.controlRadius
        color: Theme.ink
        Accessible.role: Accessible.StatusBar
        Accessible.name: root.round.said

        Text {
            id: saidText
            objectName: "said"
            x: Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            width: undoButton.x - x - Theme.px(12)
            text: root.round.said
            color: Theme.sheet
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.ignored: true
        }
        SheetButton {
            id: undoButton
            objectName: "undoButton"
            visible: root.round.canUndo
            anchors.right: parent.right
            anchors.rightMargin: Theme.px(8)
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Undo")
            reason: qsTr("Control and Z, or U. Takes back what was done last in this window.")
            onClicked: {
                root.round.undo();
                list.forceActiveFocus();
            }
        }
    }
}
