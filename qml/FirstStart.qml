pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The first start: one sheet, three steps on laths, what the place gives at the right.
FocusScope {
    id: root

    required property FirstStartModel start
    readonly property bool narrow: root.width < 1000 * Theme.textScale
    /// The three steps stand in a row above what is asked.
    readonly property bool inRow: root.narrow && root.width >= Theme.px(400)
    /// What always stays in sight would leave the step no room: all of it scrolls together.
    readonly property bool together: root.narrow && root.height - 24 - body.y - foot.height - Theme.px(18) < Theme.px(110)
    readonly property SheetScroll scroller: root.together ? whole : body
    readonly property real side: Theme.px(root.narrow ? 16 : 40)
    readonly property real bodyX: root.narrow ? root.side : root.side + Theme.px(222)
    readonly property list<string> names: [qsTr("Place"), qsTr("Spots"), qsTr("Plants")]
    readonly property list<string> words: [root.start.placeWords, root.start.spotsWords, root.start.plantsWords]
    readonly property list<string> onwards: [qsTr("On to the spots"), qsTr("On to the plants"), qsTr("Open the year")]

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("First start")

    Component.onCompleted: {
        root.focusStep();
        settled.start();
    }

    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Left && (event.modifiers & Qt.AltModifier) !== 0)
            root.start.back();
        else if (event.key === Qt.Key_PageDown)
            root.scroller.page(1);
        else if (event.key === Qt.Key_PageUp)
            root.scroller.page(-1);
        else
            event.accepted = false;
    }

    function next(): void {
        if (root.start.next())
            return;
        if (root.start.step === 0)
            place.focusTrouble();
        else if (root.start.step === 1)
            spots.focusTrouble();
    }
    function focusStep(): void {
        if (root.start.step === 0)
            place.focusFirst();
        else if (root.start.step === 1)
            spots.focusFirst();
        else
            plants.focusFirst();
    }

    // From its heading on, once all has its place: fields that have not are scrolled to too far.
    Timer {
        id: settled
        interval: 50
        onTriggered: {
            body.contentY = 0;
            whole.contentY = 0;
            root.scroller.reveal(root.scroller.focused);
        }
    }

    Shortcut {
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        enabled: !root.start.plants.looked.open
        onActivated: root.next()
    }
    Connections {
        target: root.start
        function onStepChanged(): void {
            root.focusStep();
            settled.restart();
        }
    }
    Rectangle {
        id: sheet
        anchors.horizontalCenter: parent.horizontalCenter
        y: root.narrow ? 12 : Math.max(12, Math.round((root.height - height) / 2))
        width: Math.min(root.width - 24, Theme.px(1180))
        height: Math.min(root.height - 24, root.narrow ? root.height : Theme.px(760))
        radius: Theme.sheetRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.contrast ? Theme.edge : Theme.rule

        SheetScroll {
            id: whole
            objectName: "startWhole"
            anchors.fill: parent
            anchors.margins: 1
            contentHeight: root.together ? foot.y + foot.height + Theme.px(10) : height
            interactive: root.together

            Mark {
                id: mark
                x: root.side
                y: Theme.px(root.narrow ? 16 : 30)
                scale: 1.4
                transformOrigin: Item.TopLeft
            }
            Heading {
                id: title
                x: root.side + Theme.px(48)
                y: mark.y - Theme.px(4)
                text: "Lathhouse"
                font.pixelSize: Theme.px(30)
            }
            Words {
                id: motto
                visible: !root.narrow || root.height > 700 * Theme.textScale
                x: title.x
                y: title.y + title.height
                width: root.narrow ? sheet.width - x - root.side : example.x - x - Theme.px(16)
                text: qsTr("When your pots go out, when they come in, and whether they liked it.")
                quiet: true
            }
            SheetButton {
                id: example
                objectName: "exampleButton"
                x: root.narrow ? Math.max(root.side, Math.min(title.x, sheet.width - root.side - implicitWidth)) : sheet.width - width - root.side
                width: Math.min(implicitWidth, sheet.width - 2 * root.side)
                y: root.narrow ? (motto.visible ? motto.y + motto.height : title.y + title.height) + Theme.px(8) : mark.y
                text: qsTr("Look at the example household")
                reason: qsTr("An invented household, plainly marked as such; nothing is kept")
                onClicked: root.start.openExample()
            }
            Grid {
                id: laths
                x: root.side
                y: (root.narrow ? example.y + example.height : motto.y + motto.height) + Theme.px(root.narrow ? 14 : 26)
                columns: root.inRow ? 3 : 1
                rowSpacing: Theme.px(root.narrow ? 8 : 24)
                columnSpacing: Theme.px(12)

                Repeater {
                    model: 3

                    StepLath {
                        required property int index
                        objectName: "step" + index
                        width: root.inRow ? Math.floor((sheet.width - 2 * root.side - 2 * laths.columnSpacing) / 3) : root.narrow ? sheet.width - 2 * root.side : Theme.px(196)
                        number: index + 1
                        text: root.names[index]
                        words: root.words[index]
                        open: root.start.step === index
                        onClicked: root.start.step = index
                    }
                }
            }
            Words {
                visible: !root.narrow
                x: root.side
                y: laths.y + laths.height + Theme.px(24)
                width: Theme.px(196)
                text: qsTr("Nothing leaves this computer. Everything can be changed later. The household will lie in %1.").arg(root.start.folder)
                wrapMode: Text.Wrap
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            SheetScroll {
                id: body
                above: Theme.px(30) // Its label stands above it.
                below: root.narrow ? 4 : 16
                objectName: "startBody"
                x: root.bodyX - 6
                y: root.narrow ? laths.y + laths.height + Theme.px(12) : laths.y
                width: sheet.width - x - Theme.px(12)
                height: root.together ? contents.height + Theme.px(12) : foot.y - y - Theme.px(8)
                interactive: !root.together
                contentHeight: contents.height + Theme.px(12)

                Item {
                    id: contents
                    x: 6
                    y: 4
                    width: Math.min(body.width - x - Theme.px(22), foot.width)
                    height: root.start.step === 0 ? (root.narrow ? gives.y + gives.height : Math.max(placeColumn.height, gives.height))
                          : root.start.step === 1 ? spots.implicitHeight : plants.implicitHeight

                    Column {
                        id: placeColumn
                        visible: root.start.step === 0
                        width: root.narrow ? parent.width : Math.round(parent.width * 0.4)
                        spacing: Theme.px(8)

                        Heading {
                            width: parent.width
                            text: qsTr("Where are your pots?")
                            font.pixelSize: Theme.nameSize
                        }
                        Words {
                            width: parent.width
                            text: qsTr("Type the nearest town, or read the place off any map; coordinates of any form can be pasted.")
                            quiet: true
                        }
                        PlaceEntry {
                            id: place
                            objectName: "placeEntry"
                            width: parent.width
                            form: root.start.place
                        }
                        LabelledField {
                            objectName: "homeName"
                            width: parent.width
                            label: qsTr("Name of the household")
                            example: qsTr("Home")
                            value: root.start.homeName
                            onEdited: words => root.start.homeName = words
                        }
                    }
                    Rectangle {
                        visible: root.start.step === 0 && !root.narrow
                        x: gives.x - Theme.px(24)
                        width: 1
                        height: contents.height
                        color: Theme.rule
                    }
                    PlaceGives {
                        id: gives
                        objectName: "placeGives"
                        visible: root.start.step === 0
                        x: root.narrow ? 0 : placeColumn.width + Theme.px(48)
                        y: root.narrow ? placeColumn.height + Theme.px(20) : 0
                        width: parent.width - x
                        form: root.start.place
                    }
                    SpotsEntry {
                        id: spots
                        objectName: "spotsEntry"
                        visible: root.start.step === 1
                        width: parent.width
                        height: implicitHeight
                        form: root.start.spots
                        narrow: root.narrow
                    }
                    PlantsEntry {
                        id: plants
                        objectName: "plantsEntry"
                        visible: root.start.step === 2
                        width: parent.width
                        height: implicitHeight
                        form: root.start.plants
                        narrow: root.narrow
                    }
                }
            }
            Item {
                id: foot
                x: root.bodyX
                y: (root.together ? body.y + body.height + height + Theme.px(18) : sheet.height) - height - Theme.px(root.narrow ? 10 : 20)
                width: sheet.width - x - root.side
                height: Math.max(trouble.height + (trouble.visible ? Theme.px(8) : 0), 0) + buttons.height + Theme.px(14)

                Rectangle {
                    width: parent.width
                    height: 1
                    color: Theme.rule
                }
                Trouble {
                    id: trouble
                    objectName: "startTrouble"
                    y: Theme.px(8)
                    width: parent.width
                    words: root.start.error
                }
                Words {
                    visible: !root.narrow
                    anchors.verticalCenter: buttons.verticalCenter
                    width: buttons.x - Theme.px(12)
                    text: root.start.late ? qsTr("The household is being written.") : qsTr("Step %1 of 3. %2").arg(root.start.step + 1).arg(root.start.leaveWords)
                    quiet: true
                    font.pixelSize: Theme.smallSize
                }
                Flow {
                    id: buttons
                    x: root.narrow ? 0 : parent.width - width
                    width: root.narrow ? parent.width : (backAct.visible ? backAct.implicitWidth + spacing : 0) + outAct.implicitWidth + spacing + onAct.implicitWidth + 1
                    y: parent.height - height
                    spacing: Theme.px(10)

                    SheetButton {
                        id: backAct
                        objectName: "backStep"
                        visible: root.start.step > 0
                        height: Math.max(Theme.target(40), implicitHeight)
                        text: qsTr("Back")
                        reason: qsTr("Alt and Left. What was typed stays.")
                        onClicked: root.start.back()
                    }
                    SheetButton {
                        id: outAct
                        objectName: "leaveOut"
                        height: Math.max(Theme.target(40), implicitHeight)
                        text: qsTr("Leave out for now")
                        reason: root.start.leaveWords
                        onClicked: root.start.leaveOut()
                    }
                    ActButton {
                        id: onAct
                        objectName: "nextStep"
                        height: Math.max(Theme.target(40), implicitHeight)
                        text: root.onwards[root.start.step]
                        reason: qsTr("Control and Enter")
                        onClicked: root.next()
                    }
                }
            }
        }
    }
    FormLoader {
        anchors.fill: parent
        focus: open
        open: root.start.plants.looked.open
        file: "KindSheet.qml"
        given: ({ form: root.start.plants })
        onClosed: plants.focusKinds()
    }
}
