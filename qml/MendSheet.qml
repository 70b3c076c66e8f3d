pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Changing the household itself: a second sheet over the page, with one form open.
FocusScope {
    id: root

    required property MendModel mend
    readonly property bool narrow: root.width < 1000 * Theme.textScale
    readonly property real side: Theme.px(root.narrow ? 14 : 28)

    /// Title and acts would leave the form no room: all of it scrolls together.
    readonly property bool together: root.height - 2 * sheet.y - body.y - foot.height - Theme.px(22) < Math.min(Theme.px(110), contents.height)

    signal closed

    visible: root.mend.form !== MendModel.None
    Accessible.role: Accessible.Dialog
    Accessible.name: root.mend.title

    Component.onCompleted: if (root.mend.form !== MendModel.None) root.opened()
    Keys.onEscapePressed: root.mend.leave()
    // Numbers and letters are not for the window while this is open.
    Keys.onShortcutOverride: event => event.accepted = event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter
    Keys.onPressed: event => {
        // Keys of the page below are not for this sheet.
        event.accepted = event.key !== Qt.Key_Tab && event.key !== Qt.Key_Backtab;
    }

    /// A form is there, or none any more.
    function opened(): void {
        body.contentY = 0;
        whole.contentY = 0;
        if (root.mend.form === MendModel.None) {
            root.closed();
            return;
        }
        root.forceActiveFocus();
        root.focusFirst();
    }
    function focusFirst(): void {
        if (root.mend.form === MendModel.AddPlants)
            plants.focusFirst();
        else if (root.mend.form === MendModel.AddSpots || root.mend.form === MendModel.EditSpot)
            spots.focusFirst();
        else if (root.mend.form === MendModel.EditPlace)
            place.focusFirst();
        else if (root.mend.form === MendModel.EditPlant)
            plant.focusFirst();
        else if (root.mend.form === MendModel.AddLot)
            lot.focusFirst();
        else if (root.mend.form === MendModel.PinPlant)
            pin.focusFirst();
    }
    function focusTrouble(): void {
        if (root.mend.form === MendModel.AddPlants)
            plants.focusFirst();
        else if (root.mend.form === MendModel.AddSpots && root.mend.spots.spots.count === 0)
            spots.focusFirst();
        else if (root.mend.form === MendModel.AddSpots || root.mend.form === MendModel.EditSpot)
            spots.focusTrouble();
        else if (root.mend.form === MendModel.EditPlace)
            place.focusTrouble();
        else if (root.mend.form === MendModel.EditPlant)
            plant.focusTrouble();
        else if (root.mend.form === MendModel.AddLot)
            lot.focusTrouble();
        else if (root.mend.form === MendModel.PinPlant)
            pin.focusTrouble();
    }

    Shortcut {
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        enabled: root.visible && !root.mend.plants.looked.open
        onActivated: root.mend.keep()
    }
    Connections {
        target: root.mend
        function onFormChanged(): void {
            root.opened();
        }
        function onWrong(): void {
            root.focusTrouble();
        }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.desk
        opacity: 0.6
    }
    MouseArea { // What lies below is not for the pointer now.
        anchors.fill: parent
        hoverEnabled: true
        onWheel: wheel => wheel.accepted = true
    }
    Rectangle {
        id: sheet
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.narrow ? 8 : 24)
        width: Math.min(root.width - 24, Theme.px(root.mend.form === MendModel.EditSpot || root.mend.form === MendModel.EditPlant || root.mend.form === MendModel.AddLot || root.mend.form === MendModel.PinPlant ? 660 : 960))
        height: Math.min(root.height - 2 * y, head.y + head.height + contents.height + foot.height + Theme.px(64))
        radius: Theme.sheetRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge

        SheetScroll {
            id: whole
            objectName: "mendWhole"
            anchors.fill: parent
            anchors.margins: 1
            contentHeight: root.together ? foot.y + foot.height + Theme.px(16) : height
            interactive: root.together

            Heading {
                id: head
                objectName: "mendTitle"
                x: root.side
                y: Theme.px(18)
                width: sheet.width - 2 * x
                text: root.mend.title
                font.pixelSize: Theme.nameSize
            }
            SheetScroll {
                id: body
                above: Theme.px(30) // Its label stands above it.
                below: 16
                objectName: "mendBody"
                x: root.side - 6
                y: head.y + head.height + Theme.px(12)
                width: sheet.width - x - Theme.px(10)
                height: root.together ? contents.height + Theme.px(8) : foot.y - y - Theme.px(6)
                interactive: !root.together
                contentHeight: contents.height + Theme.px(8)

                Item {
                    id: contents
                    x: 6
                    y: 4
                    width: body.width - x - Theme.px(20)
                    height: root.mend.form === MendModel.AddPlants ? plants.implicitHeight
                          : root.mend.form === MendModel.EditPlace ? (root.narrow ? gives.y + gives.height : Math.max(placeColumn.height, gives.height))
                          : root.mend.form === MendModel.EditPlant ? plant.height
                          : root.mend.form === MendModel.AddLot ? lot.height
                          : root.mend.form === MendModel.PinPlant ? pin.height
                          : spots.implicitHeight

                    PlantsEntry {
                        id: plants
                        visible: root.mend.form === MendModel.AddPlants
                        width: parent.width
                        height: implicitHeight
                        form: root.mend.plants
                        narrow: root.narrow
                    }
                    SpotsEntry {
                        id: spots
                        visible: root.mend.form === MendModel.AddSpots || root.mend.form === MendModel.EditSpot
                        width: parent.width
                        height: implicitHeight
                        form: root.mend.spots
                        narrow: root.narrow
                        single: root.mend.form === MendModel.EditSpot
                    }
                    Column {
                        id: placeColumn
                        visible: root.mend.form === MendModel.EditPlace
                        width: root.narrow ? parent.width : Math.round(parent.width * 0.42)
                        spacing: Theme.px(10)

                        PlaceEntry {
                            id: place
                            width: parent.width
                            form: root.mend.place
                        }
                        LabelledField {
                            objectName: "mendHomeName"
                            width: parent.width
                            label: qsTr("Name of the household")
                            value: root.mend.homeName
                            onEdited: words => root.mend.homeName = words
                        }
                    }
                    PlaceGives {
                        id: gives
                        visible: root.mend.form === MendModel.EditPlace
                        x: root.narrow ? 0 : placeColumn.width + Theme.px(40)
                        y: root.narrow ? placeColumn.height + Theme.px(20) : 0
                        width: parent.width - x
                        form: root.mend.place
                    }
                    PlantEntry {
                        id: plant
                        visible: root.mend.form === MendModel.EditPlant
                        width: parent.width
                        form: root.mend.plant
                    }
                    LotEntry {
                        id: lot
                        visible: root.mend.form === MendModel.AddLot
                        width: parent.width
                        form: root.mend.lot
                        onKept: root.mend.keep()
                    }
                    PinEntry {
                        id: pin
                        visible: root.mend.form === MendModel.PinPlant
                        width: parent.width
                        form: root.mend.pin
                    }
                }
            }
            Column {
                id: foot
                x: root.side
                y: (root.together ? body.y + body.height + height + Theme.px(22) : sheet.height) - height - Theme.px(16)
                width: sheet.width - 2 * x
                spacing: Theme.px(8)

                Rectangle {
                    width: parent.width
                    height: 1
                    color: Theme.rule
                }
                Trouble {
                    objectName: "mendTrouble"
                    width: parent.width
                    words: root.mend.error
                }
                Flow {
                    width: parent.width
                    spacing: Theme.px(8)

                    ActButton {
                        objectName: "mendKeep"
                        text: root.mend.keepWords
                        reason: qsTr("Control and Enter. One line in the journal, which can be taken back.")
                        onClicked: root.mend.keep()
                    }
                    SheetButton {
                        objectName: "mendLeave"
                        text: qsTr("Leave")
                        reason: qsTr("Escape")
                        onClicked: root.mend.leave()
                    }
                    SheetButton {
                        objectName: "mendRemove"
                        visible: root.mend.canRemove
                        text: qsTr("Take this spot off the list")
                        reason: qsTr("Only a spot where nothing stands and of which the journal tells nothing")
                        onClicked: root.mend.removeSpot()
                    }
                    SheetButton {
                        objectName: "mendUnpin"
                        visible: root.mend.form === MendModel.PinPlant && root.mend.pin.kept.length > 0
                        text: qsTr("Take back what keeps it")
                        reason: qsTr("It goes where the plan puts it")
                        onClicked: root.mend.unpin()
                    }
                }
            }
        }
    }
    FormLoader {
        anchors.fill: parent
        focus: open
        open: root.mend.plants.looked.open
        file: "KindSheet.qml"
        given: ({ form: root.mend.plants })
        onClosed: plants.focusKinds()
    }
}
