pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// A row for each plant: its name, and its year as a bar.
Item {
    id: root

    required property YearModel year
    /// What is to be carried today, by the number of the plant.
    property var carries: ({})
    required property real labelWidth
    required property real rowHeight
    required property real barHeight
    required property bool narrow
    readonly property alias rows: list
    /// Of the line above the rows, in which their order is chosen.
    readonly property real headHeight: Math.max(Theme.px(24), Theme.touch ? 44 : 0, root.orderHeight)
    /// What the words on their order need there.
    property real orderHeight: 0

    /// No plant is there.
    readonly property bool bare: !root.year.planning && list.count === 0

    signal plantAsked(plant: int)
    signal addAsked
    /// What can be done with a plant is asked at that place of it.
    signal actsAsked(row: PlantRow, x: real, y: real)
    /// What can be done with a lot that can be sown is asked at that place of the rows.
    signal sowingActsAsked(sowing: int, x: real, y: real)
    /// The page Seeds is asked for, with that lot.
    signal lotAsked(lot: string)

    function rowAt(y: real): int {
        return list.indexAt(10, y - list.y + list.contentY);
    }

    function askActs(row: int, x: real, y: real): void {
        const plant = list.itemAtIndex(row) as PlantRow;
        if (plant !== null)
            root.actsAsked(plant, x, y);
    }
    /// The sowing whose row lies there; -1: none.
    function sowingAt(y: real): int {
        return sowings.rowAt(y - list.y + list.contentY - sowings.y);
    }
    function askSowingActs(sowing: int, x: real): void {
        sowings.current = sowing;
        sowings.forceActiveFocus();
        root.sowingActsAsked(sowing, x, sowings.mapToItem(root, 0, sowings.bottomOf(sowing)).y);
    }
    function moveBy(down: real): void {
        const end = Math.max(0, list.contentHeight + list.bottomMargin - list.height);
        list.contentY = Math.max(0, Math.min(end, list.contentY + down));
    }

    Text {
        textFormat: Text.PlainText
        height: root.headHeight - 2
        verticalAlignment: Text.AlignVCenter
        text: qsTr("Plants")
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: Theme.subheadSize
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    YearBar {
        visible: root.year.planning || list.count > 0
        x: root.labelWidth - margin
        width: root.width - x
        height: root.height
        year: root.year
        theme: Theme
        scheme: Theme.look
        Accessible.ignored: true
    }
    Column {
        objectName: "noPlants"
        visible: root.bare
        z: 1 // Over the list, which has no row then.
        x: root.labelWidth + Theme.px(24)
        y: Theme.px(34)
        spacing: Theme.gap2

        EmptyPot {}
        Text {
            textFormat: Text.PlainText
            width: Math.min(Theme.px(440), root.width - root.labelWidth - Theme.px(48))
            text: qsTr("No plant stands here yet. Each will have its year as a bar: where it stands, when it may go out, when it must come in. Add the first under Plants.")
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        SheetButton {
            objectName: "yearEmptyAct"
            text: qsTr("Add plants")
            reason: qsTr("Goes to Plants, with the form for new ones.")
            onClicked: root.addAsked()
        }
    }
    ListView {
        id: list
        objectName: "plantRows"
        x: -8 // Room for the mark of the chosen row.
        y: root.headHeight
        width: root.width + 8
        height: root.height - y
        clip: true
        bottomMargin: sowings.height
        model: root.year.plants
        section.property: root.year.plants.rowOrder === 1 ? "group" : ""
        boundsBehavior: Flickable.StopAtBounds
        interactive: true
        keyNavigationEnabled: false // The page moves the current row.
        activeFocusOnTab: true
        currentIndex: root.year.currentRow
        highlightFollowsCurrentItem: true
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Plants")
        onActiveFocusChanged: if (activeFocus && !sowings.activeFocus) positionViewAtIndex(currentIndex, ListView.Contain)

        ScrollBar.vertical: ScrollBar {
            policy: list.contentHeight + list.bottomMargin > list.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            width: 8
            Accessible.ignored: true
        }
        delegate: PlantRow {
            id: plantRow
            width: list.width
            rowHeight: root.rowHeight
            year: root.year
            carries: root.carries
            labelWidth: root.labelWidth
            barHeight: root.barHeight
            chosen: index === root.year.currentRow
            focused: list.activeFocus && index === root.year.currentRow
            onOpened: root.plantAsked(root.year.plants.idAt(index))
            onActsAsked: (x, y) => {
                sowings.focus = false;
                list.forceActiveFocus();
                root.actsAsked(plantRow, x, y);
            }
        }
    }
    // Scrolls with the plants, behind the last of them.
    SowingRows {
        id: sowings
        objectName: "sowingRows"
        parent: list.contentItem
        y: list.originY + list.contentHeight
        width: list.width
        year: root.year
        labelWidth: root.labelWidth
        rowHeight: root.rowHeight
        onCurrentShown: (y, high) => root.moveBy(Math.min(0, sowings.y + y - list.contentY) + Math.max(0, sowings.y + y + high - list.contentY - list.height))
        onOpened: sowing => root.lotAsked(root.year.sowings.at(sowing, "name"))
        onActsAsked: (sowing, x) => root.askSowingActs(sowing, x)
    }
}
