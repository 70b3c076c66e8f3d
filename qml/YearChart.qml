import QtQuick
import Lathhouse.Models

// The chart: bands on top, a scrolling row for each plant below, and the cursor over both.
FocusScope {
    id: root

    required property YearModel year
    required property bool narrow
    required property bool wide
    /// Time runs from left to right in every language, and the words beside it stand where they belong to it.
    readonly property bool keepsSides: true

    /// In a narrow window the longest name, beside its marks, decides, up to a third of it.
    readonly property real labelWidth: root.narrow ? Math.max(Theme.px(122), Math.min(0.3 * root.width, root.longest + Theme.px(50))) : Theme.px(root.wide ? 220 : 172)
    readonly property real longest: root.widest(root.year.plants.names, root.year.sowings.count)
    readonly property real monthRow: Theme.px(root.wide ? 24 : 20)
    readonly property real skyHeight: (root.wide ? 48 : root.narrow ? 38 : 42) * (1 + Theme.textScale) / 2
    /// Gives way where the window is low, so that some rows stay in sight.
    readonly property real nightsHeight: Math.max(70 * (1 + Theme.textScale) / 2, Math.min(root.wide ? 220 : root.narrow ? 150 : 160, root.height - root.bandsAbove - root.frostHeight - 12 - plants.headHeight - 4 * root.rowHeight))
    /// With that, two rows are in sight.
    readonly property real leastHeight: root.bandsAbove + 70 * (1 + Theme.textScale) / 2 + root.frostHeight + 12 + plants.headHeight + 2 * root.rowHeight
    readonly property real bandsAbove: root.tabHeight + root.monthRow + root.skyHeight
    readonly property real frostHeight: (root.wide ? 44 : root.narrow ? 34 : 36) * (1 + Theme.textScale) / 2
    readonly property real rowHeight: Math.max((root.wide ? 28 : root.narrow ? 27.5 : 25.6) * Theme.textScale, Theme.touch ? 44 : 0)
    readonly property real barHeight: Theme.px(root.wide ? 17 : root.narrow ? 16 : 15)
    readonly property real tabHeight: Theme.px(21)
    readonly property real bandsHeight: root.monthRow + root.skyHeight + root.nightsHeight + root.frostHeight
    readonly property alias bandsItem: bands
    readonly property alias rows: plants.rows
    property real hoverX: -1
    /// What is to be carried today, by the number of the plant.
    property var carries: ({})

    signal plantAsked(plant: int)
    signal addAsked
    /// What can be done with a plant is asked at that place of its row.
    signal actsAsked(row: PlantRow, x: real, y: real)
    /// The same for a lot that can be sown, at that place of the chart.
    signal sowingActsAsked(sowing: int, x: real, y: real)
    signal lotAsked(lot: string)

    /// The next order of the rows.
    function turnOrder(): void {
        orderLine.turn();
    }

    function widest(plants: list<string>, sowings: int): real {
        let most = nameSize.height; // It is asked again where the font changes.
        for (let row = 0; row < plants.length; ++row)
            most = Math.max(most, nameSize.advanceWidth(plants[row]));
        for (let row = 0; row < sowings; ++row)
            most = Math.max(most, nameSize.advanceWidth(root.year.sowings.at(row, "name")));
        return most;
    }

    FontMetrics {
        id: nameSize
        font.family: Theme.textFamily
        font.pixelSize: Theme.rowSize
    }
    onYearChanged: spoken.text = root.year.cursor.sentence
    Component.onCompleted: spoken.text = root.year.cursor.sentence

    YearBands {
        id: bands
        objectName: "bands"
        y: root.tabHeight
        width: root.width
        height: root.bandsHeight + 12
        year: root.year
        theme: Theme
        scheme: Theme.look
        plotLeft: root.labelWidth
        monthRow: root.monthRow
        skyHeight: root.skyHeight
        nightsHeight: root.nightsHeight
        frostHeight: root.frostHeight
        narrow: root.narrow
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Night lows, day length and frost through the year")
        Accessible.description: spoken.text
        Accessible.focusable: true
    }
    // What is read aloud follows the keys after a pause.
    QtObject {
        id: spoken
        property string text
    }
    Timer {
        id: pause
        interval: 300
        onTriggered: spoken.text = root.year.cursor.sentence
    }
    Connections {
        target: root.year.cursor
        function onChanged(): void {
            pause.restart();
        }
    }
    ChartLabel {
        y: bands.y + root.monthRow + 4
        head: qsTr("Day length")
        words: root.narrow ? "" : Theme.contrast ? qsTr("sunrise to sunset") : qsTr("blue short, straw long")
        width: root.labelWidth - Theme.px(40)
    }
    ChartLabel {
        y: bands.y + root.monthRow + root.skyHeight + 8
        head: qsTr("Night lows")
        words: root.narrow ? "" : qsTr("open air, %1\n9 nights in 10 lie in\nthe blue band").arg(root.year.unit)
        width: root.labelWidth - Theme.px(44)
    }
    ChartLabel {
        y: bands.y + root.monthRow + root.skyHeight + root.nightsHeight + 2
        head: root.narrow ? root.year.stripShortHead : root.year.stripHead
        words: ""
        width: root.labelWidth - Theme.px(76) // The axis has words there.
    }
    Rectangle {
        y: bands.y + root.bandsHeight + 11
        width: root.width
        height: 1
        color: Theme.edge
    }
    RowOrderLine {
        id: orderLine
        z: 1 // Above the pointer's ground, before the rows for the keys.
        x: root.labelWidth + 4
        y: plants.y
        width: root.width - x
        height: plants.headHeight
        year: root.year
    }
    PlantList {
        id: plants
        objectName: "plantList"
        y: bands.y + root.bandsHeight + 12
        width: root.width
        height: root.height - y
        year: root.year
        labelWidth: root.labelWidth
        rowHeight: root.rowHeight
        barHeight: root.barHeight
        orderHeight: orderLine.implicitHeight
        narrow: root.narrow
        onPlantAsked: plant => root.plantAsked(plant)
        onAddAsked: root.addAsked()
        onActsAsked: (row, x, y) => root.actsAsked(row, x, y)
        onSowingActsAsked: (sowing, x, y) => root.sowingActsAsked(sowing, x, plants.y + y)
        onLotAsked: lot => root.lotAsked(lot)
        carries: root.carries
    }
    YearLabels {
        objectName: "labels"
        bands: bands
        x: bands.x
        y: bands.y
        width: bands.width
        height: bands.height
    }
    /// What can be done with the plant that has the keys.
    function askActs(): void {
        plants.rows.positionViewAtIndex(root.year.currentRow, ListView.Contain);
        plants.askActs(root.year.currentRow, Theme.px(40), root.rowHeight);
    }
    MouseArea {
        id: pointer
        objectName: "pointer"
        x: root.labelWidth
        width: root.width - x
        height: plants.bare ? plants.y : root.height // There a button takes the place of the rows.
        hoverEnabled: true
        acceptedButtons: Qt.LeftButton | Qt.RightButton
        /// An edge of a bar is held.
        property bool holding: false
        /// Days that a few pixels are.
        readonly property int reach: Math.max(1, Math.ceil((Theme.touch ? 14 : 5) * root.year.view.days / Math.max(1, pointer.width)))
        property bool overEdge: false
        /// A finger on the rows moves them as soon as it goes up or down rather than along: 1 from then on, 0 before, -1 where
        /// none is on them.
        property int swipes: -1
        property point pressedAt

        function swipe(x: real, y: real): bool {
            const reach = Application.styleHints.startDragDistance;
            if (pointer.swipes === 0 && !pointer.holding && Math.abs(x - pointer.pressedAt.x) > reach)
                pointer.swipes = -1; // It scrubs the dates.
            else if (pointer.swipes === 0 && !pointer.holding && Math.abs(y - pointer.pressedAt.y) > reach)
                pointer.swipes = 1;
            if (pointer.swipes === 0 && !pointer.holding)
                return true; // It trembles; where it goes is not known yet.
            if (pointer.swipes !== 1)
                return false;
            plants.moveBy(pointer.pressedAt.y - y);
            pointer.pressedAt = Qt.point(x, y);
            return true;
        }
        /// What can be done with the plant whose bar lies there.
        function askActs(x: real, y: real): void {
            const row = y > plants.y ? plants.rowAt(y - plants.y) : -1;
            if (row >= 0)
                plants.askActs(row, root.labelWidth + x, root.rowHeight);
            else if (y > plants.y && plants.sowingAt(y - plants.y) >= 0)
                plants.askSowingActs(plants.sowingAt(y - plants.y), root.labelWidth + x);
        }
        cursorShape: pointer.holding || pointer.overEdge ? Qt.SplitHCursor : Qt.ArrowCursor
        preventStealing: pointer.holding
        onPositionChanged: mouse => {
            root.hoverX = mouse.x;
            const day = bands.dayAt(root.labelWidth + mouse.x);
            if (pointer.swipe(mouse.x, mouse.y))
                return;
            if (pointer.holding) {
                root.year.edge.move(day);
                root.year.cursorDay = day;
            } else if ((pointer.pressedButtons & Qt.LeftButton) !== 0) {
                root.year.cursorDay = day;
            } else {
                pointer.overEdge = mouse.y > plants.y && root.year.edge.isNear(plants.rowAt(mouse.y - plants.y), day, pointer.reach);
            }
        }
        onReleased: {
            if (pointer.holding)
                root.year.edge.drop();
            pointer.holding = false;
        }
        // A finger that stays; the pointer has its right button, and scrubs as slowly as it likes.
        onPressAndHold: mouse => {
            if (mouse.source !== Qt.MouseEventNotSynthesized && !pointer.holding)
                pointer.askActs(mouse.x, mouse.y);
        }
        onCanceled: {
            root.year.edge.leave();
            pointer.holding = false;
        }
        onExited: root.hoverX = -1
        onPressed: mouse => {
            bands.forceActiveFocus();
            if (mouse.button === Qt.RightButton) {
                pointer.askActs(mouse.x, mouse.y);
                return;
            }
            pointer.swipes = mouse.source !== Qt.MouseEventNotSynthesized && mouse.y > plants.y ? 0 : -1;
            pointer.pressedAt = Qt.point(mouse.x, mouse.y);
            root.year.cursorDay = bands.dayAt(root.labelWidth + mouse.x);
            const row = plants.rowAt(mouse.y - plants.y);
            if (row >= 0) {
                root.year.currentRow = row;
                pointer.holding = root.year.edge.take(row, bands.dayAt(root.labelWidth + mouse.x), pointer.reach);
            }
        }
        onWheel: wheel => {
            if ((wheel.modifiers & Qt.ControlModifier) !== 0)
                root.year.view.zoom(wheel.angleDelta.y > 0 ? 1 : -1, bands.dayAt(root.labelWidth + wheel.x));
            else
                plants.moveBy(-0.4 * wheel.angleDelta.y);
        }
    }
    Rectangle {
        visible: root.hoverX >= 0
        x: root.labelWidth + Math.round(root.hoverX)
        y: bands.y
        width: 1
        height: root.height - y
        color: Theme.ink2
        opacity: 0.6
    }
    YearCursor {
        id: cursor
        objectName: "cursor"
        bands: bands
        year: root.year
        x: 0
        width: root.width
        height: root.height
        chartTop: bands.y
        tabHeight: root.tabHeight
        focused: bands.activeFocus
    }
    // The date tab is held and drawn along, with a target that a finger hits.
    MouseArea {
        id: tabTarget
        objectName: "dateTab"
        /// From the line to where it is held.
        property real held: 0
        width: Math.max(cursor.tabWidth, Theme.touch ? 44 : 0)
        height: Theme.touch ? 44 : root.tabHeight
        x: Math.max(0, Math.min(root.width - width, cursor.at - width / 2))
        preventStealing: true
        cursorShape: Qt.SizeHorCursor
        onPressed: mouse => {
            bands.forceActiveFocus();
            tabTarget.held = tabTarget.x + mouse.x - cursor.at;
        }
        onPositionChanged: mouse => root.year.cursorDay = bands.dayAt(tabTarget.x + mouse.x - tabTarget.held)
    }
}
