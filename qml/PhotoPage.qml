pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A photograph of a plant, or two beside each other with what was measured at both dates.
FocusScope {
    id: root

    required property PlantModel plant
    required property bool narrow
    required property real side
    readonly property PhotosModel album: root.plant.album
    /// What is known of it stands below the photograph.
    readonly property bool stacked: root.narrow || root.width < Theme.px(860)
    readonly property bool two: root.album.view === PhotosModel.Two
    /// The older of two stands first, whichever was looked at before.
    readonly property bool otherOlder: root.album.other < root.album.current
    readonly property real panelWidth: root.stacked ? root.width - 2 * root.side : Theme.px(350)
    readonly property real paneWidth: root.stacked ? root.panelWidth : root.width - 2 * root.side - root.panelWidth - Theme.px(24)
    property bool assigning: false
    property bool dating: false
    property bool writing: false

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Photographs of %1").arg(root.plant.name)

    onVisibleChanged: {
        root.assigning = false;
        root.dating = false;
        root.writing = false;
        if (root.plant !== null) // It is given after the page is made.
            root.plant.leaving.clear();
    }

    Keys.onPressed: event => {
        const shift = (event.modifiers & Qt.ShiftModifier) !== 0;
        const plain = (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) === 0;
        event.accepted = true;
        if (event.key === Qt.Key_Left && plain && shift && root.two)
            root.album.other -= 1;
        else if (event.key === Qt.Key_Right && plain && shift && root.two)
            root.album.other += 1;
        else if (event.key === Qt.Key_Left && plain)
            root.album.current -= 1;
        else if (event.key === Qt.Key_Right && plain)
            root.album.current += 1;
        else if (event.key === Qt.Key_Home)
            root.album.current = 0;
        else if (event.key === Qt.Key_End)
            root.album.current = root.album.count - 1;
        else if (event.key === Qt.Key_B && plain)
            root.two ? root.album.open(0) : root.album.openTwo();
        else if (event.key === Qt.Key_M && plain)
            root.album.openMeasuring();
        else if (event.key === Qt.Key_Escape)
            root.album.close();
        else
            event.accepted = false;
    }

    function keepDate(): void {
        if (root.album.dateAs(taken.text)) {
            root.dating = false;
            taken.text = "";
        } else {
            taken.forceActiveFocus();
        }
    }

    component Shown: Item {
        id: shown
        property alias image: pane.image
        property string words: ""
        Accessible.role: Accessible.Graphic
        Accessible.name: shown.words

        Rectangle {
            width: parent.width
            height: parent.height - caption.height - Theme.px(6)
            color: Theme.well
            border.width: 1
            border.color: Theme.edge

            PhotoPane {
                id: pane
                anchors.fill: parent
                anchors.margins: 1
            }
        }
        Words {
            id: caption
            anchors.bottom: parent.bottom
            width: parent.width
            text: shown.words
            strong: true
            Accessible.ignored: true
        }
    }
    Heading {
        id: title
        objectName: "photoTitle"
        x: root.side
        y: 10
        width: root.paneWidth
        text: root.two ? qsTr("%1, side by side").arg(root.plant.name) : qsTr("%1, %2").arg(root.plant.name).arg(root.album.date)
        font.pixelSize: Theme.titleSize
    }
    Item {
        id: pictures
        x: root.side
        y: title.y + title.height + Theme.px(10)
        width: root.paneWidth
        height: root.stacked ? Math.round(root.height * 0.45) : root.height - y - Theme.px(10)
        activeFocusOnTab: true
        focus: true
        Accessible.role: Accessible.Graphic
        Accessible.name: root.two ? qsTr("Photographs of %1 and of %2").arg(root.otherOlder ? root.album.otherDate : root.album.date).arg(root.otherOlder ? root.album.date : root.album.otherDate) : qsTr("Photograph of %1, %2").arg(root.album.date).arg(root.album.place)

        Shown {
            id: left
            objectName: "otherPhoto"
            visible: root.two
            x: root.otherOlder ? 0 : width + Theme.px(12)
            width: Math.floor((parent.width - Theme.px(12)) / 2)
            height: parent.height
            image: root.album.otherImage
            words: root.album.otherDate
        }
        Shown {
            objectName: "photo"
            x: root.two && root.otherOlder ? left.width + Theme.px(12) : 0
            width: root.two ? left.width : parent.width
            height: parent.height
            image: root.album.image
            words: qsTr("%1, %2").arg(root.album.date).arg(root.album.place)
        }
        FocusRing {
            visible: pictures.activeFocus
        }
        MouseArea { // A press on the left half goes back, on the right half on.
            anchors.fill: parent
            enabled: !root.two
            onClicked: mouse => {
                pictures.forceActiveFocus();
                root.album.current += mouse.x < width / 2 ? -1 : 1;
            }
        }
    }
    SheetScroll {
        id: panel
        below: Theme.px(48) // With what stands below it.
        x: (root.stacked ? root.side : root.side + root.paneWidth + Theme.px(24)) - panel.ringRoom
        y: root.stacked ? pictures.y + pictures.height + Theme.px(10) : 10
        width: root.panelWidth + panel.ringRoom
        height: root.height - y
        contentHeight: column.height + Theme.px(20)

        Column {
            id: column
            x: panel.ringRoom
            width: panel.width - x - 12
            spacing: Theme.px(12)
            onHeightChanged: panel.reveal(panel.focused)

            Flow {
                width: parent.width
                spacing: Theme.px(8)

                SheetButton {
                    objectName: "photoBack"
                    text: qsTr("Back to the plant")
                    reason: qsTr("Escape")
                    onClicked: root.album.close()
                }
                SheetButton {
                    objectName: "olderPhoto"
                    text: qsTr("Older")
                    reason: qsTr("Key Left")
                    onClicked: root.album.current -= 1
                }
                SheetButton {
                    objectName: "newerPhoto"
                    text: qsTr("Newer")
                    reason: qsTr("Key Right")
                    onClicked: root.album.current += 1
                }
                SheetButton {
                    objectName: "sideBySide"
                    text: root.two ? qsTr("One alone") : qsTr("Side by side")
                    reason: qsTr("Key B. With Shift, Left and Right walk the other one.")
                    onClicked: root.two ? root.album.open(0) : root.album.openTwo()
                }
                ActButton {
                    objectName: "measurePhoto"
                    text: qsTr("Measure")
                    reason: qsTr("Key M. Measures in this photograph.")
                    onClicked: root.album.openMeasuring()
                }
            }
            Trouble {
                width: parent.width
                words: root.album.error
            }
            Column {
                objectName: "photoChanges"
                visible: root.two
                width: parent.width
                spacing: Theme.px(4)

                Heading {
                    width: parent.width
                    text: qsTr("%1 to %2").arg(root.album.current < root.album.other ? root.album.date : root.album.otherDate).arg(root.album.current < root.album.other ? root.album.otherDate : root.album.date)
                    font.pixelSize: Theme.subheadSize
                }
                Repeater {
                    model: root.album.changes

                    Item {
                        id: change

                        required property string name
                        required property string before
                        required property string after
                        required property string change
                        required property string sentence
                        width: column.width
                        height: changeName.height + changeValue.height + Theme.px(10)
                        Accessible.role: Accessible.ListItem
                        Accessible.name: change.sentence

                        Words {
                            id: changeName
                            width: parent.width
                            text: change.name
                            Accessible.ignored: true
                        }
                        Words {
                            id: changeValue
                            anchors.top: changeName.bottom
                            width: parent.width
                            textFormat: Text.StyledText
                            text: qsTr("%1 to %2, <b>%3</b>").arg(change.before).arg(change.after).arg(change.change)
                            Accessible.ignored: true
                        }
                        Rectangle {
                            anchors.bottom: parent.bottom
                            width: parent.width
                            height: 1
                            color: Theme.rule
                        }
                    }
                }
                Words {
                    width: parent.width
                    text: root.album.changesNote
                    quiet: true
                    font.pixelSize: Theme.smallSize
                }
            }
            Column {
                objectName: "photoFacts"
                width: parent.width
                spacing: Theme.px(6)

                Repeater {
                    model: root.album.facts

                    Column {
                        id: fact

                        required property string name
                        required property string words
                        width: column.width
                        Accessible.role: Accessible.ListItem
                        Accessible.name: qsTr("%1: %2").arg(fact.name).arg(fact.words)

                        Words {
                            width: parent.width
                            text: fact.name
                            quiet: true
                            font.pixelSize: Theme.smallSize
                            Accessible.ignored: true
                        }
                        Words {
                            width: parent.width
                            textFormat: Text.PlainText
                            text: fact.words
                            Accessible.ignored: true
                        }
                    }
                }
            }
            Flow {
                width: parent.width
                spacing: Theme.px(8)

                SheetButton {
                    objectName: "choosePicture"
                    text: root.album.isPicture ? qsTr("Draw it again") : qsTr("Set as its picture")
                    reason: root.album.isPicture ? qsTr("The drawing stands for the plant again.") : qsTr("This photograph stands for the plant.")
                    onClicked: root.album.isPicture ? root.album.chooseDrawing() : root.album.choosePicture()
                }
                SheetButton {
                    objectName: "takeOffPhoto"
                    text: qsTr("Not this plant")
                    reason: qsTr("The photograph stays, but does not show this plant any more.")
                    onClicked: root.album.takeOff()
                }
                SheetButton {
                    objectName: "withdrawPhoto"
                    text: qsTr("Out of the lists")
                    reason: qsTr("For one that is of no use. Its file stays; Home, Data and backup shows it and brings it back.")
                    onClicked: root.album.withdraw()
                }
                SheetButton {
                    objectName: "assignPhoto"
                    visible: root.album.others.count > 0
                    text: qsTr("Shows another plant too")
                    reason: qsTr("Choose the plant from a list.")
                    onClicked: root.assigning = !root.assigning
                }
                SheetButton {
                    objectName: "datePhoto"
                    text: qsTr("Set its date")
                    reason: qsTr("Where the camera wrote none, or a wrong one. The photograph itself stays as it is.")
                    onClicked: {
                        root.dating = !root.dating;
                        if (root.dating)
                            taken.forceActiveFocus();
                    }
                }
                SheetButton {
                    objectName: "writePhotos"
                    text: qsTr("Write out")
                    reason: qsTr("As files, as a strip over time, or two side by side, for others to see.")
                    onClicked: {
                        root.writing = !root.writing;
                        if (root.writing)
                            form.focusField();
                    }
                }
            }
            Flow {
                visible: root.dating
                width: parent.width
                spacing: Theme.px(8)

                SheetField {
                    id: taken
                    objectName: "takenField"
                    least: Theme.px(220)
                    most: parent.width
                    label: qsTr("When it was taken, the time behind the date where it is known")
                    placeholderText: root.album.date
                    wrong: root.dating && root.album.error !== ""
                    onTextEdited: root.album.forgive()
                    onAccepted: root.keepDate()
                    Keys.onEscapePressed: root.dating = false
                }
                SheetButton {
                    objectName: "keepTaken"
                    text: qsTr("Keep the date")
                    onClicked: root.keepDate()
                }
            }
            PhotoExport {
                id: form
                objectName: "photoExport"
                visible: root.writing
                width: parent.width
                leaving: root.plant.leaving
                two: root.two
            }
            ListView {
                id: others
                objectName: "assignList"
                visible: root.assigning
                width: parent.width
                height: Math.min(contentHeight, Theme.px(220))
                clip: true
                model: root.assigning ? root.album.others : null
                spacing: Theme.px(4)
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Plants")

                delegate: Chip {
                    id: chip

                    required property int index
                    required property int plant
                    required property string name
                    objectName: "assign" + index
                    width: others.width - 12
                    text: chip.name
                    onClicked: {
                        root.assigning = false;
                        root.album.assignTo(chip.plant);
                    }
                }
            }
        }
    }
}
