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
    /// In a wide window the week has a column of its own at the end.
    readonly property bool weekBeside: root.wide && !root.narrow
    readonly property real weekWidth: root.weekBeside ? Theme.px(380) : 0
    readonly property real taskWidth: root.narrow ? root.width : root.width - root.tonightWidth - root.weekWidth - Theme.px(root.weekBeside ? 73 : 46)
    readonly property real bandEnd: band.visible ? band.height : 0
    readonly property real side: root.narrow ? 11 : 19
    /// On a cold night in little room the band is the title.
    readonly property bool headless: root.narrow && root.cold
    readonly property real headEnd: root.headless ? root.bandEnd + Theme.px(8) : root.narrow ? progress.y + (progress.visible ? progress.height + Theme.px(8) : 0) : headLine.y + headLine.height + Theme.px(10)
    property bool asTable: false
    /// Something must come in: every plant outdoors stands on one ruler above the tasks.
    readonly property bool cold: band.visible && root.tonight.known
    readonly property real lineHeight: root.cold ? coldList.height + Theme.px(20) : root.narrow && tonightLine.text !== "" ? tonightLine.height + Theme.px(12) : 0
    /// Less than that is scrolled as a whole.
    readonly property real leastHeight: root.noteEnd + Theme.px(170) + acts.height + (undoBar.visible ? undoBar.height + Theme.px(6) : 0)
    readonly property real noteEnd: note.y + (note.visible ? note.implicitHeight : 0)

    signal printAsked
    signal plantAsked(plant: int)
    /// Something is to be logged for a plant.
    signal logAsked(plant: int)
    /// Plants are to be added, on the page that has them.
    signal addAsked
    /// Nothing is due: what comes next is looked at.
    signal yearAsked

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Today's round")

    /// The field for tonight's low has the keys and is in sight.
    function typeLow(): void {
        if (root.narrow)
            list.contentY = Math.min(below.y + below.lowAt - Theme.px(80), list.originY + list.contentHeight + list.bottomMargin - list.height);
        else
            beside.scrollTo(below.lowAt - Theme.px(80));
        below.typeLow();
    }

    /// As many tasks up or down as are in sight.
    function page(by: int): void {
        const row = list.currentItem;
        const tasks = row === null ? 1 : Math.max(1, Math.floor(list.height / row.height));
        root.round.currentRow = Math.max(0, Math.min(root.round.count - 1, root.round.currentRow + by * tasks));
    }

    /// What can be done with the task that has the keys.
    function askActs(): void {
        list.positionViewAtIndex(root.round.currentRow, ListView.Contain);
        const row = list.itemAtIndex(root.round.currentRow) as RoundRow;
        if (row !== null)
            row.actsAsked(row.boxWidth, row.height);
    }

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (rowActs.isAsked(event))
            root.askActs();
        else if (event.key === Qt.Key_Up)
            root.round.currentRow -= 1;
        else if (event.key === Qt.Key_Down)
            root.round.currentRow += 1;
        else if (event.key === Qt.Key_PageUp)
            root.page(-1);
        else if (event.key === Qt.Key_PageDown)
            root.page(1);
        else if (event.key === Qt.Key_Home)
            root.round.currentRow = 0;
        else if (event.key === Qt.Key_End)
            root.round.currentRow = root.round.count - 1;
        else if (event.key === Qt.Key_Space)
            root.round.tick(root.round.currentRow);
        else if (event.key === Qt.Key_P && !control && (event.modifiers & Qt.ShiftModifier))
            later.ask();
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
        else if (event.key === Qt.Key_F6)
            parts.go((event.modifiers & Qt.ShiftModifier) !== 0 ? -1 : 1);
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && !control && root.round.plantOf(root.round.currentRow) !== 0)
            root.plantAsked(root.round.plantOf(root.round.currentRow));
        else if (event.key === Qt.Key_L && control && root.round.plantOf(root.round.currentRow) !== 0)
            root.logAsked(root.round.plantOf(root.round.currentRow));
        else if (event.key === Qt.Key_W && !control)
            root.round.tickWashing();
        else if (event.key === Qt.Key_F5) {
            root.round.reload();
            root.tonight.reload();
        } else
            event.accepted = false;
    }

    PageParts {
        id: parts
        parts: [band, coldList, list, acts, below, weekPlace]
    }
    Heading {
        id: title
        visible: !root.headless
        x: root.side
        y: root.bandEnd + 10
        text: root.round.title
        font.pixelSize: root.narrow ? Math.min(Theme.titleSize, Theme.px(25)) : Theme.titleSize
    }
    Words {
        id: headLine
        visible: !root.headless
        objectName: "headLine"
        x: root.side
        y: title.y + title.height + 2
        width: (root.narrow ? root.taskWidth - root.side : progress.x - 20) - x
        text: root.round.headLine
        quiet: true
    }
    RoundProgress {
        id: progress
        visible: root.round.count > 0 && !root.headless
        round: root.round
        x: root.narrow ? root.side : root.taskWidth - width
        y: root.narrow ? headLine.y + headLine.height + Theme.px(6) : root.bandEnd + Theme.px(26)
    }
    ReadAgain {
        id: failure
        objectName: "failure"
        part: "failureText"
        x: root.side
        y: root.headEnd
        width: root.taskWidth - 2 * root.side
        error: root.round.error
        onAgain: {
            root.round.reload();
            list.forceActiveFocus();
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
    // For how long the chosen task is put off.
    RoundAsk {
        id: later
        objectName: "later"
        visible: later.open && root.round.count > 0
        x: root.side
        y: leaving.y + (leaving.visible ? leaving.height + Theme.px(8) : 0)
        width: root.taskWidth - 2 * root.side
        fieldName: "laterField"
        actName: "laterKeep"
        label: qsTr("For how many days is this task put off, up to 60, or until which date")
        example: qsTr("days, or a date")
        narrowField: true
        act: qsTr("Put it off")
        leaveWords: qsTr("Keep it")
        onDone: {
            root.round.postponeUntil(root.round.currentRow, later.words);
            if (root.round.error === "")
                later.givenUp();
            else
                later.focusField();
        }
        onGivenUp: {
            later.close();
            list.forceActiveFocus();
        }
    }
    // What is sown becomes a tray, what is potted becomes plants.
    RoundAsk {
        id: sowing
        objectName: "sowing"
        x: root.side
        y: later.y + (later.visible ? later.height + Theme.px(8) : 0)
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
    Words {
        id: note
        objectName: "roundNote"
        visible: text !== ""
        x: root.side
        y: sowing.y + (sowing.visible ? sowing.height + Theme.px(8) : 0)
        width: Math.min(root.taskWidth - 2 * root.side, Theme.px(760))
        text: root.round.note
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Column {
        objectName: "roundEmpty"
        visible: root.round.emptySentence !== ""
        x: root.side + Theme.px(24)
        y: root.noteEnd + Theme.px(24) + root.lineHeight
        spacing: Theme.gap2

        EmptyPot {}
        Words {
            width: Math.min(Theme.px(480), root.taskWidth - 2 * root.side - Theme.px(48))
            text: root.round.emptySentence
        }
        SheetButton {
            objectName: "roundEmptyAct"
            text: root.round.hasPlants ? qsTr("Show the year") : qsTr("Add plants")
            reason: root.round.hasPlants ? qsTr("Key 2. What comes next for each plant.") : qsTr("Goes to Plants, with the form for new ones.")
            onClicked: root.round.hasPlants ? root.yearAsked() : root.addAsked()
        }
    }
    Words {
        visible: root.round.working && root.round.count === 0 && root.tonight.late
        x: root.side
        y: root.noteEnd + Theme.px(24)
        text: qsTr("The round is being worked out.")
        quiet: true
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

        ScrollBar.vertical: SheetScrollBar {}
        /// Who had the keys above the tasks before they were read again; null where nobody.
        property Item keeper: null
        onCurrentItemChanged: if (list.keeper !== null && list.currentItem !== null) {
            list.keeper.forceActiveFocus();
            list.keeper = null;
        }
        topMargin: root.lineHeight
        // What stands above the first task comes into sight where the list was at its beginning.
        onTopMarginChanged: if (list.contentY <= list.originY)
            list.contentY = list.originY - list.topMargin
        bottomMargin: (waits.visible ? waits.height + Theme.px(28) : 0) + (root.narrow ? below.height + Theme.px(40) : 0)
        delegate: RoundRow {
            id: task
            width: list.width - 10
            round: root.round
            dose: root.dose
            narrow: root.narrow || width < Theme.px(640)
            chosen: index === root.round.currentRow
            focused: list.activeFocus && index === root.round.currentRow
            onActsAsked: (x, y) => {
                list.forceActiveFocus();
                rowActs.ask(task, root.mapFromItem(task, x, y));
            }
        }
        Connections {
            target: root.round

            function onCurrentRowChanged(): void {
                list.currentIndex = root.round.currentRow;
                list.positionViewAtIndex(list.currentIndex, ListView.Contain);
            }
            // A list that is built anew hands the keys to its current row.
            function onModelAboutToBeReset(): void {
                list.keeper = coldList.holder();
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
            notNow: root.round.cannotPutOff
            onClicked: root.round.postpone(root.round.currentRow, 1)
        }
        SheetButton {
            objectName: "longerButton"
            focusPolicy: Qt.TabFocus
            text: qsTr("Put off longer")
            reason: qsTr("Key Shift and P. Asks for how many days.")
            notNow: root.round.cannotPutOff
            onClicked: later.ask()
        }
        SheetButton {
            objectName: "skipButton"
            focusPolicy: Qt.TabFocus
            text: qsTr("Leave out")
            reason: qsTr("Key S. The chosen task is not done this time; the journal is told why.")
            notNow: root.round.cannotLeaveOut
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
        visible: root.narrow && !root.cold
        y: list.originY - height - Theme.px(6)
        width: list.width - 10
        text: root.narrow ? root.tonight.line : ""
    }
    ColdList {
        id: coldList
        objectName: "coldList"
        parent: list.contentItem
        visible: root.cold
        y: list.originY - height - Theme.px(12)
        width: list.width - 10
        round: root.round
        tonight: root.tonight
        narrow: root.narrow || width < Theme.px(640)
    }
    RoundWaits {
        id: waits
        objectName: "roundWaits"
        parent: list.contentItem
        visible: root.round.waits.count > 0 && root.round.count > 0
        y: list.originY + list.contentHeight + Theme.px(20)
        width: list.width - 10
        waits: root.round.waits
    }
    TonightColumn {
        id: below
        parent: root.narrow ? list.contentItem : beside.contentItem
        y: root.narrow ? list.originY + list.contentHeight + (waits.visible ? waits.height + Theme.px(20) : 0) + Theme.px(root.round.count === 0 ? 150 : 16) : 0
        width: root.narrow ? list.width - 10 : root.tonightWidth - Theme.px(10)
        tonight: root.tonight
        carriesLeft: root.round.carriesLeft
        plantsShown: !root.cold
        asTable: root.asTable
        weekPlace: root.weekBeside ? weekPlace : null
        onTableAsked: root.asTable = !root.asTable
        onLowKept: { // What it means stands with the tasks.
            list.forceActiveFocus();
            if (root.narrow)
                list.contentY = list.originY - list.topMargin;
        }
    }
    // What was done last stays in words until the next change.
    UndoBar {
        id: undoBar
        objectName: "undoBar"
        x: root.side
        y: root.height - height - 4
        width: root.taskWidth - 2 * root.side
        height: implicitHeight
        said: root.round.said
        canUndo: root.round.canUndo
        canRedo: root.round.canRedo
        undoReason: qsTr("Control and Z, or U. Takes back what was done last in this window.")
        onUndo: {
            root.round.undo();
            list.forceActiveFocus();
        }
        onRedo: {
            root.round.redo();
            list.forceActiveFocus();
        }
    }
    ColdBand {
        id: band
        objectName: "coldBand"
        visible: root.round.carriesLeft > 0
        // Its button goes with the last plant, and with it the keys.
        onVisibleChanged: if (!band.visible && root.activeFocus)
            list.forceActiveFocus()
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
    SheetScroll {
        id: beside
        objectName: "tonightSide"
        visible: !root.narrow
        x: root.taskWidth + Theme.px(27)
        y: root.bandEnd + Theme.px(10)
        width: root.weekBeside ? root.tonightWidth : root.width - x - 10
        height: root.height - y - 4
        contentHeight: below.height + Theme.px(16)
    }
    RoundActs {
        id: rowActs
        objectName: "roundActs"
        round: root.round
        hasDose: root.dose !== null
        onLaterAsked: later.ask()
        onLeaveAsked: leaving.ask()
        onPlantAsked: plant => root.plantAsked(plant)
        onLogAsked: plant => root.logAsked(plant)
    }
    Rectangle {
        visible: root.weekBeside
        x: besideWeek.x - Theme.px(14)
        y: root.bandEnd + Theme.px(12)
        width: 1
        height: root.height - y - Theme.px(16)
        color: Theme.rule
    }
    SheetScroll {
        id: besideWeek
        objectName: "weekSide"
        visible: root.weekBeside
        x: beside.x + root.tonightWidth + Theme.px(27)
        y: beside.y
        width: root.width - x - 10
        height: root.height - y - 4
        contentHeight: below.week.height + Theme.px(16)

        Item {
            id: weekPlace
            visible: root.weekBeside
            width: besideWeek.width - Theme.px(10)
            height: below.week.height
        }
    }
}
