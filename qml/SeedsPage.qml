pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Lots of seed by the date of sowing, and the sowing sheet of the chosen lot or of any crop.
FocusScope {
    id: root

    required property SeedsModel seeds
    /// Changes of the household itself; null where it cannot be changed.
    property MendModel mend: null
    required property bool narrow
    property bool wide: false
    readonly property real side: root.narrow ? 11 : 19
    /// Less than that is scrolled as a whole.
    readonly property real leastHeight: (list.visible ? list.y + key.height : trouble.y + trouble.implicitHeight) + Theme.px(170) + (undoBar.visible ? undoBar.height : 0)
    /// In a narrow window the sheet opens over the list.
    property bool opened: false
    /// What can be sown stands where the sowing sheet does.
    readonly property bool listing: root.seeds.sowingDays > 0
    readonly property bool listShown: !root.narrow || !root.opened
    readonly property bool sheetShown: !root.narrow || root.opened
    /// Between two columns stands a line.
    readonly property real between: Theme.px(34)
    /// In a wide window list, sheet and trays share the page as 720, 560 and 440.
    readonly property real shared: root.width - 2 * root.side - 2 * root.between
    readonly property bool columns: root.wide && !root.narrow
    readonly property real listWidth: root.narrow ? root.width - 2 * root.side : root.columns ? Math.round(root.shared * 0.419) : Math.round((root.width - 2 * root.side) * 0.52)
    /// A crop without a lot has no trays.
    readonly property bool traysBeside: root.columns && root.seeds.hasSheet && !root.listing && root.seeds.currentRow >= 0
    readonly property real trayWidth: root.traysBeside ? Math.round(root.shared * 0.256) : 0

    signal printAsked

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Seeds")

    Connections { // It is shown as soon as it is there.
        target: root.mend
        function onLotAdded(name: string): void {
            root.seeds.chooseLot(name);
        }
    }
    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Up)
            root.seeds.currentRow -= 1;
        else if (event.key === Qt.Key_Down)
            root.seeds.currentRow += 1;
        else if (event.key === Qt.Key_Home)
            root.seeds.currentRow = 0;
        else if (event.key === Qt.Key_End)
            root.seeds.currentRow = root.seeds.lots.count - 1;
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && root.narrow)
            root.opened = true;
        else if (event.key === Qt.Key_Escape && root.narrow && root.opened)
            root.back();
        else if (event.key === Qt.Key_F6)
            parts.go((event.modifiers & Qt.ShiftModifier) !== 0 ? -1 : 1);
        else if (event.key === Qt.Key_Plus && !control)
            root.seeds.count(0, 1);
        else if (event.key === Qt.Key_Minus && !control)
            root.seeds.count(0, -1);
        else if (event.key === Qt.Key_N && !control)
            root.seeds.byName = !root.seeds.byName;
        else if (event.key === Qt.Key_PageDown)
            sheet.page(1);
        else if (event.key === Qt.Key_PageUp)
            sheet.page(-1);
        else if (event.key === Qt.Key_Z && control && (event.modifiers & Qt.ShiftModifier))
            root.seeds.redo();
        else if (event.key === Qt.Key_U || event.key === Qt.Key_Z && control)
            root.seeds.undo();
        else if (event.key === Qt.Key_F5)
            root.seeds.reload();
        else
            event.accepted = false;
    }

    /// A lot is opened, to be sown where that is asked ("sow"); or what can be sown now is shown ("can").
    function show(lot: string, what: string): void {
        root.opened = true;
        root.sowAwaited = what === "sow" ? lot : "";
        root.seeds.sowingDays = what === "can" ? 30 : 0;
        if (what === "can")
            return;
        root.seeds.chooseLot(lot);
        root.sowWhenRead();
    }
    /// The name of the lot whose seeds are to be written down once it is read; empty: none.
    property string sowAwaited: ""
    function sowWhenRead(): void {
        if (root.sowAwaited === "" || root.seeds.currentRow < 0 || root.seeds.name !== root.sowAwaited)
            return;
        root.sowAwaited = "";
        pane.trays.sowNext();
    }
    Connections {
        target: root.seeds
        function onSheetChanged(): void {
            root.sowWhenRead();
        }
    }
    function back(): void {
        root.opened = false;
        list.forceActiveFocus();
    }

    PageParts {
        id: parts
        parts: [head, list, sheet, traySide]
    }
    Flow {
        id: head
        x: root.side
        y: 10
        width: root.listWidth
        spacing: Theme.px(8)

        Heading {
            height: Theme.target(36)
            rightPadding: Theme.px(16)
            text: qsTr("Seeds")
            font.pixelSize: Theme.titleSize
        }
        Chip {
            objectName: "byDateChip"
            visible: root.seeds.lots.count > 1 && root.listShown
            height: Theme.target(32)
            text: qsTr("By sowing date")
            reason: qsTr("Key N changes the order")
            on: !root.seeds.byName
            onClicked: root.seeds.byName = false
        }
        Chip {
            objectName: "byNameChip"
            visible: root.seeds.lots.count > 1 && root.listShown
            height: Theme.target(32)
            text: qsTr("By name")
            reason: qsTr("Key N changes the order")
            on: root.seeds.byName
            onClicked: root.seeds.byName = true
        }
        SheetField {
            id: cropField
            objectName: "cropField"
            visible: root.seeds.known && root.listShown
            least: Theme.px(180)
            label: qsTr("Any crop, for its sowing sheet")
            placeholderText: qsTr("Any crop")
            wrong: root.seeds.error !== "" && activeFocus
            onTextEdited: root.seeds.forgive()
            onAccepted: {
                root.seeds.chooseCrop(cropField.text);
                root.opened = true;
            }
        }
        Chip {
            objectName: "calendarChip"
            visible: root.seeds.known && root.listShown
            spokenRole: Accessible.CheckBox
            height: Theme.target(32)
            text: qsTr("What can be sown now")
            reason: qsTr("Every crop of the tables, for this place")
            on: root.listing
            onClicked: {
                root.seeds.sowingDays = root.listing ? 0 : 30;
                root.opened = root.listing;
            }
        }
        SheetButton {
            objectName: "seedsPrintButton"
            visible: root.seeds.known && root.listShown && root.seeds.lots.count > 0
            text: qsTr("Print sheet")
            reason: qsTr("Control and P. All lots and trays as a PDF.")
            onClicked: root.printAsked()
        }
        SheetButton {
            objectName: "addLotButton"
            visible: root.mend !== null && root.seeds.known && root.listShown
            text: qsTr("Add a lot")
            onClicked: root.mend.addLot(root.seeds.crop)
        }
        SheetButton {
            objectName: "backButton"
            visible: root.narrow && root.opened
            text: qsTr("Back to the lots")
            reason: qsTr("Escape")
            onClicked: root.back()
        }
    }
    Trouble {
        id: trouble
        objectName: "seedTrouble"
        x: root.side
        y: head.y + head.height + Theme.px(8)
        width: root.listWidth
        words: root.seeds.error
    }
    SheetButton {
        objectName: "seedsAgain"
        visible: root.seeds.error !== "" && !root.seeds.known
        x: root.side
        y: trouble.y + trouble.implicitHeight + Theme.px(8)
        text: qsTr("Read again")
        reason: qsTr("Key F5. Reads the household anew.")
        onClicked: root.seeds.reload()
    }
    Words {
        visible: !root.seeds.known && root.seeds.late
        x: root.side
        y: head.y + head.height + Theme.px(24)
        text: qsTr("The lots are being worked out.")
        quiet: true
    }
    Column {
        objectName: "seedsEmpty"
        visible: root.seeds.known && root.seeds.lots.count === 0 && root.listShown
        x: root.side + Theme.px(16)
        y: trouble.y + trouble.implicitHeight + Theme.px(24)
        width: root.listWidth - Theme.px(32)
        spacing: Theme.px(8)

        EmptyPot {}
        Words {
            width: parent.width
            text: qsTr("No lot of seed is known yet. With a packet here its germination is followed by your own counts, and its sowing comes into the round. Add one with the button above.")
        }
        Words {
            width: parent.width
            text: qsTr("Until then write a crop above for its sowing sheet.")
            quiet: true
        }
    }
    Item {
        id: columnHead
        visible: root.seeds.lots.count > 0 && root.listShown
        x: root.side
        y: trouble.y + trouble.implicitHeight + Theme.px(6)
        width: list.width - 10
        // Its longest words may take two lines.
        height: Math.max(Theme.px(26), shareHead.implicitHeight + Theme.px(8))
        readonly property LotColumns columns: LotColumns {
            width: columnHead.width
            narrow: root.narrow
        }

        Words {
            visible: !columnHead.columns.stacked
            x: Theme.px(10)
            text: qsTr("Lot")
            quiet: true
            font.pixelSize: Theme.smallSize
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(7)
        }
        Words {
            visible: columnHead.columns.withYear
            x: columnHead.columns.yearX
            width: columnHead.columns.yearWidth
            horizontalAlignment: Text.AlignRight
            text: qsTr("Year")
            quiet: true
            font.pixelSize: Theme.smallSize
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(7)
        }
        Words {
            x: columnHead.columns.seedsX
            width: columnHead.columns.seedsWidth
            horizontalAlignment: Text.AlignRight
            text: qsTr("Seeds")
            quiet: true
            font.pixelSize: Theme.smallSize
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(7)
        }
        Words {
            id: shareHead
            objectName: "shareHead"
            x: columnHead.columns.shareX
            width: columnHead.columns.nextX - x - Theme.px(6)
            horizontalAlignment: Text.AlignLeft
            text: columnHead.columns.withYear ? qsTr("Of 100, how many come up") : qsTr("Come up")
            quiet: true
            font.pixelSize: Theme.smallSize
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(7)
        }
        Words {
            x: columnHead.columns.nextX
            text: qsTr("Next")
            quiet: true
            font.pixelSize: Theme.smallSize
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(7)
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1.5
            color: Theme.ink
        }
    }
    ListView {
        id: list
        objectName: "lotRows"
        visible: root.seeds.lots.count > 0 && root.listShown
        x: root.side
        y: columnHead.y + columnHead.height
        width: root.listWidth
        height: (undoBar.visible ? undoBar.y : root.height) - y - key.height - Theme.px(10)
        clip: true
        focus: true
        activeFocusOnTab: true
        keyNavigationEnabled: false
        model: root.seeds.lots
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        currentIndex: root.seeds.currentRow
        onCurrentIndexChanged: list.positionViewAtIndex(list.currentIndex, ListView.Contain)
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Lots of seed")

        ScrollBar.vertical: SheetScrollBar {}
        delegate: LotRow {
            width: list.width - 10
            narrow: root.narrow
            chosen: index === root.seeds.currentRow
            focused: list.activeFocus && index === root.seeds.currentRow
            onPressed: {
                root.seeds.currentRow = index;
                list.forceActiveFocus();
                root.opened = true;
            }
        }
    }
    Words {
        id: key
        visible: list.visible
        x: root.side
        y: (undoBar.visible ? undoBar.y : root.height) - height - Theme.px(6)
        width: root.listWidth
        text: qsTr("Filled dot: your own counts. Open dot: packet or kind only. Line: 9 in 10.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    UndoBar {
        id: undoBar
        objectName: "seedsUndoBar"
        x: root.side
        y: root.height - height - 4
        width: root.listWidth
        height: implicitHeight
        said: root.seeds.said
        canUndo: root.seeds.canUndo
        canRedo: root.seeds.canRedo
        undoReason: qsTr("Control and Z, or U. Takes back what was counted last in this window.")
        onUndo: {
            root.seeds.undo();
            list.forceActiveFocus();
        }
        onRedo: {
            root.seeds.redo();
            list.forceActiveFocus();
        }
    }
    Rectangle {
        visible: !root.narrow && root.seeds.known
        x: root.side + root.listWidth + Math.round(root.between / 2) - 1
        y: Theme.px(12)
        width: 1
        height: root.height - y - Theme.px(16)
        color: Theme.rule
    }
    SheetScroll {
        id: sheet
        objectName: "sowingSheet"
        visible: (root.seeds.hasSheet || root.listing) && root.sheetShown
        x: (root.narrow ? root.side : root.side + root.listWidth + root.between) - sheet.ringRoom
        y: root.narrow ? trouble.y + trouble.implicitHeight + Theme.px(8) : 10
        width: root.traysBeside ? besideTrays.x - x : root.width - x - 10
        height: (root.narrow && undoBar.visible ? undoBar.y : root.height) - y - 4
        contentHeight: (root.listing ? sowings.height : pane.height) + Theme.px(16)

        SowingPane {
            id: pane
            objectName: "sowingPane"
            visible: !root.listing
            x: sheet.ringRoom
            width: sheet.width - x - Theme.px(12)
            seeds: root.seeds
            trayPlace: root.traysBeside ? trayPlace : null
        }
        SowingCalendar {
            id: sowings
            objectName: "sowingCalendar"
            visible: root.listing
            x: sheet.ringRoom
            width: sheet.width - x - Theme.px(12)
            seeds: root.seeds
            onChosen: crop => {
                sheet.contentY = 0;
                root.seeds.chooseCrop(crop);
            }
        }
    }
    Rectangle {
        id: besideTrays
        visible: root.traysBeside
        x: traySide.x + traySide.ringRoom - Math.round(root.between / 2)
        y: Theme.px(12)
        width: 1
        height: root.height - y - Theme.px(16)
        color: Theme.rule
    }
    SheetScroll {
        id: traySide
        objectName: "traySide"
        visible: root.traysBeside
        x: root.width - root.side - root.trayWidth - traySide.ringRoom
        y: sheet.y
        width: root.width - x - 10
        height: sheet.height
        contentHeight: pane.trays.height + Theme.px(16)

        Item {
            id: trayPlace
            visible: root.traysBeside
            x: traySide.ringRoom
            width: traySide.width - x - Theme.px(12)
            height: pane.trays.height
        }
    }
}
