pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Today's tasks in an order in which pests do not travel.
FocusScope {
    id: root

    required property RoundModel round
    required property TonightModel tonight
    /// How much feed goes into the water; null where none is told.
    property DoseModel dose: null
    required property bool narrow
    property bool wide: false
    /// The tasks stand left, tonight beside them; where there is no room, one below the other.
    readonly property real tonightWidth: root.narrow ? 0 : Theme.px(root.wide ? 500 : 390)
    readonly property real taskWidth: root.narrow ? root.width : root.width - root.tonightWidth - Theme.px(46)
    readonly property real bandEnd: band.visible ? band.height : 0
    readonly property real side: root.narrow ? 11 : 19
    readonly property real headEnd: root.narrow ? progress.y + (progress.visible ? progress.height + Theme.px(8) : 0) : headLine.y + headLine.height + Theme.px(10)
    property bool asTable: false
    readonly property real lineHeight: root.narrow && tonightLine.text !== "" ? tonightLine.height + Theme.px(12) : 0
    readonly property real noteEnd: note.y + (note.visible ? note.implicitHeight : 0)

    signal printAsked

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Today's round")
    onVisibleChanged: if (!root.visible)
        undoBar.passed = true

    Connections {
        target: root.round
        function onSaidChanged(): void {
            undoBar.passed = false;
        }
    }

    /// The field for tonight's low has the keys and is in sight.
    function typeLow(): void {
        if (root.narrow)
            list.contentY = Math.min(below.y + below.lowAt - Theme.px(80), list.originY + list.contentHeight + list.bottomMargin - list.height);
        else
            beside.contentY = Math.max(0, Math.min(below.lowAt - Theme.px(80), beside.contentHeight - beside.height));
        below.typeLow();
    }

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
        else if (event.key === Qt.Key_S && !control)
            leaving.ask();
        else if (event.key === Qt.Key_D && !control)
            root.round.askDose(root.round.currentRow);
        else if (event.key === Qt.Key_B && !control)
            root.round.askSpray(root.round.currentRow);
        else if (event.key === Qt.Key_T && !control)
            root.asTable = !root.asTable;
        else if (event.key === Qt.Key_Z && control && (event.modifiers & Qt.ShiftModifier))
            root.round.redo();
        else if (event.key === Qt.Key_U || event.key === Qt.Key_Z && control)
            root.round.undo();
        else if (event.key === Qt.Key_F5) {
            root.round.reload();
            root.tonight.reload();
        } else
            event.accepted = false;
    }

    Text {
        id: title
        textFormat: Text.PlainText
        x: root.side
        y: root.bandEnd + 10
        text: root.round.title
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: root.narrow ? Math.min(Theme.titleSize, Theme.px(25)) : Theme.titleSize
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Text {
        id: headLine
        textFormat: Text.PlainText
        objectName: "headLine"
        x: root.side
        y: title.y + title.height + 2
        width: (root.narrow ? root.taskWidth - root.side : progress.x - 20) - x
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
        x: root.narrow ? root.side : root.taskWidth - width
        y: root.narrow ? headLine.y + headLine.height + Theme.px(6) : root.bandEnd + Theme.px(26)
        width: Theme.px(200)
        height: Theme.px(30)
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("%1, %2").arg(root.round.doneLine).arg(root.round.minutesLine)

        Text {
            textFormat: Text.PlainText
            text: root.round.doneLine
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        Text {
            textFormat: Text.PlainText
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
    // What went wrong, where it happened.
    Rectangle {
        id: failure
        objectName: "failure"
        visible: root.round.error !== ""
        x: root.side
        y: root.headEnd
        width: root.taskWidth - 2 * root.side
        height: visible ? Math.max(failureText.height, again.height) + Theme.px(16) : 0
        color: Theme.cautionWash
        border.width: 1
        border.color: Theme.caution
        Accessible.role: Accessible.AlertMessage
        Accessible.name: root.round.error

        Text {
            id: failureText
            textFormat: Text.PlainText
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
    // Why the chosen task is left out.
    RoundAsk {
        id: leaving
        objectName: "leaving"
        visible: leaving.open && root.round.count > 0
        x: root.side
        y: root.headEnd + (failure.visible ? failure.height + Theme.px(8) : 0)
        width: root.taskWidth - 2 * root.side
        fieldName: "whyField"
        actName: "leaveButton"
        label: qsTr("Why is this task left out")
        example: qsTr("Why, for the journal")
        act: qsTr("Leave it out")
        leaveWords: qsTr("Keep it")
        onDone: {
            root.round.skip(root.round.currentRow, leaving.words);
            if (root.round.error === "")
                leaving.givenUp();
        }
        onGivenUp: {
            leaving.close();
            list.forceActiveFocus();
        }
    }
    // What is sown becomes a tray, what is potted becomes plants.
    RoundAsk {
        id: sowing
        objectName: "sowing"
        x: root.side
        y: leaving.y + (leaving.visible ? leaving.height + Theme.px(8) : 0)
        width: root.taskWidth - 2 * root.side
        fieldName: "sownSeedsField"
        actName: "sownSeedsButton"
        question: root.round.seedsAsked
        label: root.round.seedsAsked
        example: qsTr("How many")
        number: true
        act: qsTr("Done today")
        leaveWords: qsTr("Not done")
        onDone: {
            if (!root.round.sow(sowing.words))
                sowing.focusField();
        }
        onGivenUp: root.round.leaveSowing()
    }
    Connections {
        target: root.round
        function onSeedsAskedChanged(): void {
            if (root.round.seedsAsked !== "") {
                leaving.close();
                sowing.ask();
            } else if (sowing.open) {
                sowing.close();
                list.forceActiveFocus();
            }
        }
    }
    Text {
        id: note
        textFormat: Text.PlainText
        objectName: "roundNote"
        visible: text !== ""
        x: root.side
        y: sowing.y + (sowing.visible ? sowing.height + Theme.px(8) : 0)
        width: Math.min(root.taskWidth - 2 * root.side, Theme.px(760))
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
        y: root.noteEnd + Theme.px(24) + root.lineHeight
        spacing: Theme.gap2

        EmptyPot {}
        Text {
            textFormat: Text.PlainText
            width: Math.min(Theme.px(480), root.taskWidth - 2 * root.side - Theme.px(48))
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
        textFormat: Text.PlainText
        visible: root.round.working && root.round.count === 0 && root.tonight.late
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
        width: root.taskWidth - 2 * root.side
        height: acts.y - y - Theme.px(4)
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
        topMargin: root.lineHeight
        bottomMargin: root.narrow ? below.height + Theme.px(40) : 0
        delegate: RoundRow {
            width: list.width - 10
            round: root.round
            dose: root.dose
            narrow: root.narrow || width < Theme.px(640)
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
    Flow {
        id: acts
        visible: root.round.count > 0
        x: root.side
        y: root.height - height - 4 - (undoBar.visible ? undoBar.height + Theme.px(6) : 0)
        width: root.taskWidth - 2 * root.side
        height: visible ? implicitHeight : 0
        spacing: Theme.px(8)

        SheetButton {
            objectName: "typeLowButton"
            visible: below.asksForLow
            text: qsTr("Type tonight’s low")
            reason: qsTr("Goes to the field for it; then tonight is in the round.")
            onClicked: root.typeLow()
        }
        SheetButton {
            objectName: "laterButton"
            focusPolicy: Qt.TabFocus // The arrows and Space stay with the tasks after a click.
            text: qsTr("Put off a day")
            reason: qsTr("Key P. The chosen task is due again tomorrow.")
            onClicked: root.round.postpone(root.round.currentRow, 1)
        }
        SheetButton {
            objectName: "skipButton"
            focusPolicy: Qt.TabFocus
            text: qsTr("Leave out")
            reason: qsTr("Key S. The chosen task is not done this time; the journal is told why.")
            onClicked: leaving.ask()
        }
        SheetButton {
            objectName: "roundPrintButton"
            focusPolicy: Qt.TabFocus
            text: qsTr("Print the list")
            reason: qsTr("Control and P. The week's tasks as a PDF with boxes to tick.")
            onClicked: root.printAsked()
        }
    }
    // In a narrow window tonight stands in one line above the tasks and in full below them, and scrolls with them.
    // (Qt 6.4 takes no bound components for the header and footer of a list, nor for a Loader.)
    Words {
        id: tonightLine
        objectName: "tonightLine"
        parent: list.contentItem
        visible: root.narrow
        y: list.originY - height - Theme.px(6)
        width: list.width - 10
        text: root.narrow ? root.tonight.line : ""
    }
    TonightColumn {
        id: below
        parent: root.narrow ? list.contentItem : beside.contentItem
        y: root.narrow ? list.originY + list.contentHeight + Theme.px(root.round.count === 0 ? 150 : 16) : 0
        width: root.narrow ? list.width - 10 : root.tonightWidth - Theme.px(10)
        tonight: root.tonight
        asTable: root.asTable
        onTableAsked: root.asTable = !root.asTable
    }
    // What was done last stays in words until the next change.
    Rectangle {
        id: undoBar
        objectName: "undoBar"
        /// One has gone to another page since.
        property bool passed: false
        visible: root.round.said !== "" && !undoBar.passed
        x: root.side
        y: root.height - height - 4
        width: root.taskWidth - 2 * root.side
        height: Math.max(saidText.height, undoButton.height) + Theme.px(12)
        radius: Theme.controlRadius
        color: Theme.ink
        Accessible.role: Accessible.StatusBar
        Accessible.name: root.round.said

        Text {
            id: saidText
            textFormat: Text.PlainText
            objectName: "said"
            x: Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            width: (redoButton.visible ? redoButton.x : undoButton.visible ? undoButton.x : parent.width) - x - Theme.px(12)
            text: root.round.said
            color: Theme.sheet
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.ignored: true
        }
        SheetButton {
            id: redoButton
            objectName: "redoButton"
            visible: root.round.canRedo
            x: (undoButton.visible ? undoButton.x : parent.width) - width - Theme.px(8)
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Redo")
            reason: qsTr("Control, Shift and Z. Does again what was taken back last.")
            onClicked: {
                root.round.redo();
                list.forceActiveFocus();
            }
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
    ColdBand {
        id: band
        objectName: "coldBand"
        visible: root.round.carriesLeft > 0
        width: root.width
        round: root.round
        tonight: root.tonight
        narrow: root.narrow
    }
    Rectangle {
        visible: !root.narrow
        x: root.taskWidth + Theme.px(13)
        y: root.bandEnd + Theme.px(12)
        width: 1
        height: root.height - y - Theme.px(16)
        color: Theme.rule
    }
    Flickable {
        id: beside
        objectName: "tonightSide"
        visible: !root.narrow
        x: root.taskWidth + Theme.px(27)
        y: root.bandEnd + Theme.px(10)
        width: root.width - x - 10
        height: root.height - y - 4
        contentHeight: below.height + Theme.px(16)
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        ScrollBar.vertical: ScrollBar {
            policy: beside.contentHeight > beside.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            width: 8
            Accessible.ignored: true
        }
    }
}
