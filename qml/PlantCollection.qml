pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// All plants: on their shelves, or as a table that sorts.
FocusScope {
    id: root

    readonly property alias parts: pageParts

    required property PlantsModel plants
    required property bool narrow
    required property real side
    readonly property real listWidth: root.width - 2 * root.side
    readonly property real leastHeight: trouble.y + trouble.implicitHeight + Theme.px(170) + foot.height
    readonly property bool anyShown: root.plants.shownCount > 0

    /// Whether plants can be added here.
    property bool canAdd: false

    signal add
    signal log
    signal move
    signal compare
    /// What can be done with a plant is asked there.
    signal actsAsked(shown: int, name: string, marked: bool, at: point)
    signal droppedOn(urls: var, shown: int)

    Accessible.role: Accessible.Pane
    Accessible.name: root.plants.title

    function focusList(): void {
        (root.plants.byTable ? table : shelves).forceActiveFocus();
    }
    function show(byTable: bool): void {
        root.plants.byTable = byTable;
        root.focusList();
    }
    function find(): void {
        findField.forceActiveFocus();
        findField.selectAll();
    }
    function page(lines: int): void {
        if (root.plants.byTable)
            root.plants.current += lines * 4;
        else
            root.plants.current = root.plants.shelves.beside(root.plants.current, lines);
    }
    function scrollTo(): void {
        if (root.plants.current < 0)
            return;
        if (root.plants.byTable)
            table.positionViewAtIndex(root.plants.current, ListView.Contain);
        else
            shelves.positionViewAtIndex(root.plants.shelves.lineOf(root.plants.current), ListView.Contain);
    }
    /// What can be done with the plant that has the keys.
    function askActs(): void {
        if (root.plants.current < 0)
            return;
        root.scrollTo();
        const row = root.plants.byTable ? table.itemAtIndex(root.plants.current) as PlantTableRow : null;
        const line = root.plants.byTable ? null : shelves.itemAtIndex(root.plants.shelves.lineOf(root.plants.current)) as ShelfLine;
        if (row !== null)
            row.actsAsked(Theme.px(60), row.height);
        else if (line !== null)
            line.askActs(root.plants.current);
    }
    function press(shown: int, shift: bool): void {
        root.plants.current = shown;
        if (shift)
            root.plants.mark(shown);
        root.focusList();
    }

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Left && !root.plants.byTable)
            root.plants.current -= 1;
        else if (event.key === Qt.Key_Right && !root.plants.byTable)
            root.plants.current += 1;
        else if (event.key === Qt.Key_Up)
            root.plants.current = root.plants.byTable ? root.plants.current - 1 : root.plants.shelves.beside(root.plants.current, -1);
        else if (event.key === Qt.Key_Down)
            root.plants.current = root.plants.byTable ? root.plants.current + 1 : root.plants.shelves.beside(root.plants.current, 1);
        else if (event.key === Qt.Key_PageUp)
            root.page(-3);
        else if (event.key === Qt.Key_PageDown)
            root.page(3);
        else if (event.key === Qt.Key_Home)
            root.plants.current = 0;
        else if (event.key === Qt.Key_End)
            root.plants.current = root.plants.shownCount - 1;
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && !findField.activeFocus)
            root.plants.open(root.plants.current);
        else if (event.key === Qt.Key_Space)
            root.plants.mark(root.plants.current);
        else if (event.key === Qt.Key_C && !control && root.plants.markedCount === 2)
            root.compare();
        else if (event.key === Qt.Key_T && !control)
            root.show(!root.plants.byTable);
        else if (event.key === Qt.Key_Escape && root.plants.markedCount > 0)
            root.plants.clearMarks();
        else if (event.key === Qt.Key_Escape && root.plants.find !== "")
            findField.clear();
        else if (event.key === Qt.Key_Escape && root.plants.filter !== PlantsModel.All)
            root.plants.filter = PlantsModel.All;
        else
            event.accepted = false;
    }
    Connections {
        target: root.plants
        function onCurrentChanged(): void {
            root.scrollTo();
        }
    }

    // The list gets the keys once Return is done with: it would open a plant.
    Timer {
        id: afterKey
        interval: 0
        onTriggered: root.focusList()
    }
    Flow {
        id: head
        x: root.side
        y: 10
        width: root.listWidth - (acts.onLine ? acts.width + Theme.px(16) : 0)
        spacing: Theme.px(8)

        Heading {
            id: title
            objectName: "plantsTitle"
            height: Theme.target(36)
            width: Math.max(implicitWidth + Theme.px(16), root.narrow ? 0 : Theme.px(160))
            text: root.plants.title
            font.pixelSize: Theme.titleSize
        }
        Repeater {
            model: root.plants.known && root.plants.count > 0 ? root.plants.filters : null

            FilterChip {
                required property int index
                required property int filter
                required property string words
                objectName: "filterChip" + filter
                height: Theme.target(32)
                text: words
                on: root.plants.filter === filter
                lozenge: filter === PlantsModel.Poisonous
                onClicked: {
                    root.plants.filter = filter;
                    root.focusList();
                }
            }
        }
        SheetField {
            id: findField
            objectName: "findField"
            visible: root.plants.count > 1
            width: Theme.px(140)
            label: qsTr("Find a plant by its name")
            placeholderText: qsTr("Find")
            onTextChanged: root.plants.find = text
            onAccepted: afterKey.start()
            Keys.onEscapePressed: {
                clear();
                root.focusList();
            }
            Keys.onDownPressed: root.focusList()
        }
        SheetButton {
            id: addButton
            objectName: "addPlantsButton"
            visible: root.canAdd && root.plants.known
            text: qsTr("Add plants")
            onClicked: root.add()
        }
    }
    Flow {
        id: acts
        readonly property bool onLine: !root.narrow && root.listWidth > Theme.px(1000)
        /// Else it stands behind the last of the head, where that leaves room.
        readonly property real after: addButton.x + addButton.width + Theme.px(8)
        readonly property bool behind: !acts.onLine && addButton.visible && acts.after + acts.inOne <= root.listWidth
        readonly property real inOne: looks.width + moveButton.implicitWidth + (compareButton.visible ? compareButton.implicitWidth + spacing : 0) + logButton.implicitWidth + 2 * spacing + 1
        width: Math.min(acts.inOne, root.listWidth)
        x: acts.onLine ? root.side + root.listWidth - width : root.side + (acts.behind ? acts.after : 0)
        y: acts.onLine ? 12 : head.y + (acts.behind ? addButton.y : head.height + Theme.px(8))
        spacing: Theme.px(8)
        visible: root.plants.count > 0

        Row {
            id: looks
            spacing: -1

            Chip {
                objectName: "shelvesChip"
                height: Theme.target(32)
                text: qsTr("Shelves")
                reason: qsTr("Key T changes to the table and back")
                on: !root.plants.byTable
                onClicked: root.show(false)
            }
            Chip {
                objectName: "tableChip"
                height: Theme.target(32)
                text: qsTr("Table")
                reason: qsTr("Key T changes to the table and back")
                on: root.plants.byTable
                onClicked: root.show(true)
            }
        }
        SheetButton {
            id: moveButton
            objectName: "moveButton"
            text: qsTr("Move")
            reason: qsTr("Key M, then the number of the spot. For the chosen plant or those that are marked.")
            onClicked: root.move()
        }
        SheetButton {
            id: compareButton
            objectName: "compareButton"
            visible: root.plants.markedCount === 2
            text: qsTr("Compare")
            reason: qsTr("Key C. The two marked plants beside each other.")
            onClicked: root.compare()
        }
        ActButton {
            id: logButton
            objectName: "logButton"
            filled: root.enabled // Else the panel over the page has the main act.
            text: root.plants.markedCount > 0 ? qsTr("Log for %1").arg(root.plants.target) : qsTr("Log something")
            reason: qsTr("Control and L. For the chosen plant or those that are marked.")
            onClicked: root.log()
        }
    }
    Trouble {
        id: trouble
        objectName: "plantsTrouble"
        x: root.side
        y: (acts.onLine ? head.y + head.height : acts.y + acts.height) + Theme.px(8)
        width: root.listWidth
        words: root.enabled ? root.plants.error : ""
    }
    SheetButton {
        objectName: "plantsAgain"
        visible: root.plants.error !== "" && !root.plants.known
        x: root.side
        y: trouble.y + trouble.implicitHeight + Theme.px(8)
        text: qsTr("Read again")
        reason: qsTr("Key F5. Reads the household anew.")
        onClicked: root.plants.reload()
    }
    Words {
        visible: !root.plants.known && root.plants.late
        x: root.side
        y: trouble.y + Theme.px(24)
        text: qsTr("The plants are being read.")
        quiet: true
    }
    Column {
        objectName: "plantsEmpty"
        visible: root.plants.known && !root.anyShown
        x: root.side + Theme.px(16)
        y: trouble.y + trouble.implicitHeight + Theme.px(24)
        width: root.listWidth - Theme.px(32)
        spacing: Theme.px(8)

        EmptyPot {}
        Words {
            width: Math.min(parent.width, Theme.px(560))
            text: root.plants.count === 0 ? qsTr("No plant stands here yet. Each will have its page with photographs, growth and needs, and its place on a shelf. Add the first with the button above.") : qsTr("No plant of that name or kind. Escape shows all of them again.")
        }
    }
    ListView {
        id: shelves
        objectName: "shelves"
        visible: root.anyShown && !root.plants.byTable
        x: root.side
        y: trouble.y + trouble.implicitHeight + Theme.px(4)
        width: root.listWidth
        height: foot.y - y - Theme.px(4)
        clip: true
        focus: true
        activeFocusOnTab: true
        keyNavigationEnabled: false
        reuseItems: true
        cacheBuffer: 0 // Lines that wait to be made do not outlive a filter.
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        model: root.plants.shelves
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Shelves")

        Binding {
            target: root.plants
            property: "columns"
            value: Math.max(2, Math.floor((shelves.width - 12 - (root.narrow ? 0 : Theme.px(184))) / Theme.px(root.narrow ? 150 : 160)))
        }
        ScrollBar.vertical: SheetScrollBar {}
        delegate: ShelfLine {
            id: shelfLine
            width: shelves.width - 12
            columns: root.plants.columns
            current: root.plants.current
            hasFocus: shelves.activeFocus
            narrow: root.narrow
            onPressed: (shown, shift) => root.press(shown, shift)
            onOpened: shown => root.plants.open(shown)
            onCarried: (shown, marked, x, y) => held.to(shown, marked, shelves.mapFromItem(shelfLine, x, y))
            onLetGo: held.letGo()
            onActsAsked: (shown, name, marked, x, y) => {
                root.focusList();
                root.actsAsked(shown, name, marked, root.mapFromItem(shelfLine, x, y));
            }
        }
    }
    // What the pointer carries, and where it would stand.
    Hint {
        id: held
        objectName: "carried"

        property int shown: -1
        property int shelf: -1

        function to(shown: int, marked: bool, at: point): void {
            if (held.shown !== shown) {
                if (!marked)
                    root.plants.clearMarks(); // All that are marked go together, but none without the one that is held.
                root.plants.current = shown;
                held.shown = shown;
            }
            const line = shelves.itemAt(at.x, at.y + shelves.contentY) as ShelfLine;
            held.shelf = line === null || at.y < 0 || at.y > shelves.height ? -1 : line.shelf;
            held.x = Math.max(0, Math.min(root.width - held.width, shelves.x + at.x + Theme.px(12)));
            held.y = Math.max(0, Math.min(root.height - held.height, shelves.y + at.y + Theme.px(12)));
        }
        function letGo(): void {
            const to = held.shelf;
            held.shown = -1;
            held.shelf = -1;
            if (to >= 0 && to < root.plants.spots.count)
                root.plants.moveTo(to);
            root.focusList();
        }

        visible: held.shown >= 0
        z: 20
        words: held.shelf < 0 || held.shelf >= root.plants.spots.count ? root.plants.target
             : qsTr("%1 to %2").arg(root.plants.target).arg(root.plants.spots.at(held.shelf, "name"))
    }
    // Files that are let go on a plant are its photographs.
    DropArea {
        id: shelfDrop
        objectName: "shelfDrop"
        anchors.fill: shelves
        enabled: shelves.visible
        keys: ["text/uri-list"]

        function plantAt(x: real, y: real): int {
            const line = shelves.itemAt(x, y + shelves.contentY) as ShelfLine;
            return line === null ? -1 : line.shownAt(x);
        }
        onPositionChanged: drag => {
            const shown = shelfDrop.plantAt(drag.x, drag.y);
            if (shown >= 0)
                root.plants.current = shown;
        }
        onDropped: drop => {
            const shown = shelfDrop.plantAt(drop.x, drop.y);
            if (drop.hasUrls && shown >= 0) {
                drop.accept(Qt.CopyAction);
                root.droppedOn(drop.urls, shown);
            }
        }
    }
    Item {
        id: tableHead
        visible: root.anyShown && root.plants.byTable
        x: root.side
        y: trouble.y + trouble.implicitHeight + Theme.px(4)
        width: root.listWidth - 12
        height: Theme.px(30)
        readonly property PlantTableColumns columns: PlantTableColumns {
            width: tableHead.width
            narrow: root.narrow
        }

        Repeater {
            model: [qsTr("Name"), qsTr("Spot"), qsTr("State"), qsTr("Next move"), qsTr("Hazard")]

            SortHead {
                required property string modelData
                required property int index
                readonly property list<real> places: [tableHead.columns.nameX, tableHead.columns.spotX, tableHead.columns.stateX, tableHead.columns.nextX, tableHead.columns.hazardX]
                objectName: "sortHead" + index
                visible: !root.narrow || index < 3
                x: places[index]
                text: modelData
                on: root.plants.sortedBy === index
                descending: root.plants.descending
                onClicked: root.plants.sortBy(index)
            }
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1.5
            color: Theme.ink
        }
    }
    ListView {
        id: table
        objectName: "plantTable"
        cacheBuffer: 0
        visible: root.anyShown && root.plants.byTable
        x: root.side
        y: tableHead.y + tableHead.height
        width: root.listWidth
        height: foot.y - y - Theme.px(4)
        clip: true
        activeFocusOnTab: true
        keyNavigationEnabled: false
        reuseItems: true
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        model: root.plants.table
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("Plants as a table")

        ScrollBar.vertical: SheetScrollBar {}
        delegate: PlantTableRow {
            id: tableRow
            width: table.width - 12
            columns: tableHead.columns
            chosen: index === root.plants.current
            focused: table.activeFocus && index === root.plants.current
            onPressed: shift => root.press(index, shift)
            onOpened: root.plants.open(index)
            onActsAsked: (x, y) => {
                root.focusList();
                root.actsAsked(index, name, marked, root.mapFromItem(tableRow, x, y));
            }
        }
    }
    Column {
        id: foot
        x: root.side
        y: root.height - height - Theme.px(6)
        width: root.listWidth
        spacing: Theme.px(4)

        Words {
            visible: root.anyShown
            width: parent.width
            text: root.plants.markedCount > 0
                  ? (root.plants.markedCount === 1 ? qsTr("1 plant marked. Escape takes the mark off.") : qsTr("%1 plants marked. Escape takes the marks off.").arg(root.plants.markedCount))
                  : root.plants.note !== "" ? root.plants.note : qsTr("Enter opens a plant, Space marks it, Control and L logs, M moves.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        Flow {
            objectName: "goneLine"
            visible: root.plants.goneCount > 0 && root.plants.filter !== PlantsModel.Gone
            width: parent.width
            spacing: Theme.px(6)

            Words {
                height: Theme.target(28)
                verticalAlignment: Text.AlignVCenter
                text: qsTr("Gone, with all of their past kept:")
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            Repeater {
                model: root.plants.gone

                SheetButton {
                    id: past

                    required property int index
                    required property int plant
                    required property string name
                    required property string words
                    objectName: "gonePlant" + past.index
                    height: Theme.target(28)
                    text: past.name
                    reason: past.words
                    onClicked: root.plants.openId(past.plant)
                }
            }
            SheetButton {
                objectName: "goneMore"
                visible: root.plants.goneCount > root.plants.gone.count
                height: Theme.target(28)
                text: qsTr("All %1").arg(root.plants.goneCount)
                reason: qsTr("Shows those that are gone, the latest first")
                onClicked: root.plants.filter = PlantsModel.Gone
            }
        }
    }
    PageParts {
        id: pageParts
        parts: [head, acts, shelves, table]
    }
}
