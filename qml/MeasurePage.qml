pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Measuring in a photograph: the photograph left, the steps right.
FocusScope {
    id: root

    required property PlantModel plant
    required property bool narrow
    required property real side
    readonly property MeasureModel measure: root.plant.measure
    /// The card that is photographed beside the plant is wanted on paper.
    signal cardAsked
    /// The steps stand below the photograph.
    readonly property bool stacked: root.narrow || root.width < Theme.px(860)
    readonly property bool green: root.measure.mode === MeasureModel.Green
    readonly property real panelWidth: root.stacked ? root.width - 2 * root.side : Theme.px(392)
    readonly property real paneWidth: root.stacked ? root.panelWidth : root.width - 2 * root.side - root.panelWidth - Theme.px(46)

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Measure in a photograph")

    Keys.onEscapePressed: root.plant.album.close()

    function keep(): void {
        if (root.measure.keep(typed.text)) {
            typed.clear();
            root.plant.album.close();
        } else if (typed.text !== "") {
            typed.forceActiveFocus();
        }
    }
    onVisibleChanged: {
        typed.clear();
        if (root.visible)
            picture.forceActiveFocus();
    }

    Flow {
        id: head
        x: root.side
        y: 10
        width: root.paneWidth
        spacing: Theme.px(14)

        Heading {
            id: title
            width: Math.min(implicitWidth, head.width)
            text: qsTr("Measure in a photo")
            font.pixelSize: Theme.titleSize
        }
        Words {
            objectName: "measureAbout"
            width: Math.min(implicitWidth, head.width)
            height: title.height
            verticalAlignment: Text.AlignVCenter
            text: root.measure.about
            quiet: true
        }
    }
    Rectangle {
        id: picture
        objectName: "measurePicture"
        x: root.side
        y: head.y + head.height + Theme.px(8)
        width: root.paneWidth
        height: root.stacked ? Math.round(root.height * 0.5) : root.height - y - foot.height - Theme.px(16)
        color: Theme.well
        border.width: 1
        border.color: Theme.edge
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Photograph with marks, %1").arg(root.measure.chosenWords)
        Accessible.description: foot.text
        /// Also where all else is mirrored.
        readonly property bool keepsSides: true
        readonly property real imageScale: pane.place.width > 0 ? pane.place.width / root.measure.imageWidth : 1

        function toPhoto(x: real, y: real): point {
            return Qt.point((x - pane.x - pane.place.x) / picture.imageScale, (y - pane.y - pane.place.y) / picture.imageScale);
        }

        Keys.onPressed: event => {
            const far = (event.modifiers & Qt.ShiftModifier) !== 0 ? 10 : 1;
            event.accepted = true;
            if (event.key === Qt.Key_Left)
                root.measure.nudge(-far, 0);
            else if (event.key === Qt.Key_Right)
                root.measure.nudge(far, 0);
            else if (event.key === Qt.Key_Up)
                root.measure.nudge(0, -far);
            else if (event.key === Qt.Key_Down)
                root.measure.nudge(0, far);
            else if (event.key === Qt.Key_Backspace)
                root.measure.takeBack();
            else if (event.key === Qt.Key_Tab)
                event.accepted = root.measure.step(1);
            else if (event.key === Qt.Key_Backtab)
                event.accepted = root.measure.step(-1);
            else
                event.accepted = false;
        }

        PhotoPane {
            id: pane
            objectName: "measurePane"
            anchors.fill: parent
            anchors.margins: 1
            image: root.measure.image
        }
        MeasureMarks {
            anchors.fill: pane
            theme: Theme
            scheme: Theme.look
            measure: root.measure
            place: pane.place
        }
        MouseArea {
            id: pointer
            objectName: "measurePointer"
            anchors.fill: parent
            cursorShape: Qt.CrossCursor
            preventStealing: true
            property int held: -1

            onPressed: mouse => {
                picture.forceActiveFocus();
                const there = picture.toPhoto(mouse.x, mouse.y);
                pointer.held = root.measure.place(there.x, there.y, Theme.px(14) / picture.imageScale);
            }
            onPositionChanged: mouse => {
                const there = picture.toPhoto(mouse.x, mouse.y);
                if (pointer.held >= 0)
                    root.measure.move(pointer.held, there.x, there.y);
            }
            onReleased: pointer.held = -1
        }
        // The glass stands in the corner away from the point.
        Item {
            id: glass
            objectName: "glass"
            readonly property point chosenAt: root.measure.marks >= 0 && root.measure.isSet(root.measure.chosen) ? root.measure.at(root.measure.chosen) : Qt.point(-1, -1)
            readonly property bool atLeft: glass.chosenAt.x * picture.imageScale > pane.place.width / 2
            readonly property bool below: glass.chosenAt.y * picture.imageScale < pane.place.height / 2
            visible: glass.chosenAt.x >= 0
            width: Theme.px(150)
            height: width + Theme.px(30)
            x: glass.atLeft ? Theme.px(12) : picture.width - width - Theme.px(12)
            y: glass.below ? picture.height - height - Theme.px(8) : Theme.px(12)

            PhotoPane {
                width: parent.width
                height: width
                image: root.measure.image
                round: true
                magnify: 4 * picture.imageScale
                middle: glass.chosenAt
            }
            Rectangle {
                width: parent.width
                height: width
                radius: width / 2
                color: "transparent"
                border.width: 3
                border.color: Theme.ink
            }
            Rectangle {
                y: Math.round(parent.width / 2)
                width: parent.width
                height: 1
                color: "#9C3810"
            }
            Rectangle {
                x: Math.round(parent.width / 2)
                width: 1
                height: parent.width
                color: "#9C3810"
            }
            Rectangle {
                anchors.bottom: parent.bottom
                anchors.horizontalCenter: parent.horizontalCenter
                width: glassWords.implicitWidth + Theme.px(14)
                height: Theme.px(24)
                radius: Theme.sheetRadius
                color: Theme.sheet

                Words {
                    id: glassWords
                    anchors.centerIn: parent
                    text: qsTr("%1, 4 times").arg(root.measure.chosenWords)
                    font.pixelSize: Theme.rowSize
                    Accessible.ignored: true
                }
            }
        }
        FocusRing {
            visible: picture.activeFocus
        }
    }
    Words {
        id: foot
        x: root.side
        y: picture.y + picture.height + Theme.px(6)
        width: root.paneWidth
        text: qsTr("Press to set a point, drag to correct it. Arrow keys move the chosen point by one pixel, with Shift by ten. Tab goes to the next. Backspace takes a point back.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Rectangle {
        visible: !root.stacked
        x: root.side + root.paneWidth + Theme.px(22)
        y: Theme.px(12)
        width: 1
        height: root.height - 2 * y
        color: Theme.rule
    }
    Flickable {
        id: panel
        x: root.stacked ? root.side : root.side + root.paneWidth + Theme.px(46)
        y: root.stacked ? foot.y + foot.height + Theme.px(10) : Theme.px(12)
        width: root.panelWidth
        height: root.height - y
        contentHeight: steps.height + Theme.px(20)
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        ScrollBar.vertical: ScrollBar {
            policy: panel.contentHeight > panel.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            width: 8
            Accessible.ignored: true
        }
        Column {
            id: steps
            width: parent.width - 12
            spacing: Theme.px(12)

            Row {
                spacing: Theme.px(8)

                Chip {
                    objectName: "modeLength"
                    height: Theme.px(32)
                    text: qsTr("Length")
                    on: !root.green
                    onClicked: root.measure.mode = MeasureModel.Length
                }
                Chip {
                    objectName: "modeGreen"
                    height: Theme.px(32)
                    text: qsTr("Green share")
                    on: root.green
                    onClicked: root.measure.mode = MeasureModel.Green
                }
            }
            Column {
                visible: !root.green
                width: parent.width
                spacing: Theme.px(8)

                Heading {
                    width: parent.width
                    text: qsTr("1. Something of known size")
                }
                Row {
                    spacing: Theme.px(10)

                    Rectangle { // As the line in the photograph: dashed.
                        anchors.verticalCenter: parent.verticalCenter
                        width: Theme.px(34)
                        height: 3
                        color: "#2B4A7F"

                        Rectangle {
                            x: Math.round(parent.width / 3)
                            width: Theme.px(5)
                            height: 3
                            color: Theme.sheet
                        }
                        Rectangle {
                            x: Math.round(2 * parent.width / 3)
                            width: Theme.px(5)
                            height: 3
                            color: Theme.sheet
                        }
                    }
                    Words {
                        anchors.verticalCenter: parent.verticalCenter
                        text: qsTr("A to B is")
                    }
                    SheetField {
                        objectName: "knownSize"
                        label: qsTr("Length from A to B")
                        unit: root.measure.unit
                        text: root.measure.knownSize
                        wrong: root.measure.knownWrong
                        inputMethodHints: Qt.ImhFormattedNumbersOnly
                        onTextEdited: root.measure.knownSize = text
                        onAccepted: picture.forceActiveFocus()
                    }
                }
                Words {
                    width: parent.width
                    text: root.measure.knownWrong ? qsTr("Write a number such as 14.0; between 1 mm and 10 m.") : qsTr("The pot’s rim, a ruler, or the 10 cm of the printed card.")
                    quiet: !root.measure.knownWrong
                    font.pixelSize: Theme.smallSize
                }
                SheetButton {
                    objectName: "cardButton"
                    text: qsTr("A card to print")
                    reason: qsTr("A ruler of 10 cm and a grey patch, to stand beside the plant; print it at 100 %")
                    onClicked: root.cardAsked()
                }
                Heading {
                    width: parent.width
                    text: qsTr("2. The plant")
                }
                Flow {
                    width: parent.width
                    spacing: Theme.px(8)

                    Repeater {
                        model: root.measure.kinds

                        Chip {
                            required property int index
                            objectName: "lengthKind" + index
                            text: root.measure.kinds.at(index, "text")
                            on: root.measure.kind === index
                            onClicked: root.measure.kind = index
                        }
                    }
                }
                Row {
                    spacing: Theme.px(10)

                    Rectangle {
                        anchors.verticalCenter: parent.verticalCenter
                        width: Theme.px(34)
                        height: 3
                        color: "#9C3810"
                    }
                    Words {
                        anchors.verticalCenter: parent.verticalCenter
                        text: qsTr("from 1 to 2")
                    }
                }
                Flow {
                    width: parent.width
                    spacing: Theme.px(6)

                    Repeater {
                        model: 4

                        Chip {
                            id: markChip

                            required property int index
                            readonly property bool there: root.measure.marks >= 0 && root.measure.isSet(markChip.index)
                            objectName: "mark" + index
                            text: markChip.there ? qsTr("%1 set").arg(root.measure.plate(markChip.index)) : qsTr("%1 not set").arg(root.measure.plate(markChip.index))
                            reason: qsTr("Chooses the point; the arrow keys in the photograph move it.")
                            on: root.measure.chosen === markChip.index
                            onClicked: {
                                root.measure.chosen = markChip.index;
                                picture.forceActiveFocus();
                            }
                        }
                    }
                }
            }
            Column {
                visible: root.green
                width: parent.width
                spacing: Theme.px(8)

                Heading {
                    width: parent.width
                    text: qsTr("An outline round the leaves")
                }
                Words {
                    width: parent.width
                    text: root.measure.corners === 0 ? qsTr("No corner set yet.") : qsTr("%1 corners, %2").arg(root.measure.corners).arg(root.measure.chosenWords)
                }
            }
            Column {
                visible: root.measure.result !== ""
                width: parent.width
                spacing: Theme.px(4)

                Text {
                    textFormat: Text.PlainText
                    objectName: "measureResult"
                    text: root.measure.result
                    color: Theme.ink
                    font.family: Theme.titleFamily
                    font.pixelSize: Theme.px(40)
                    Accessible.role: Accessible.StaticText
                    Accessible.name: qsTr("%1, %2").arg(root.measure.result).arg(root.measure.range)
                }
                Words {
                    objectName: "measureRange"
                    width: parent.width
                    text: root.measure.range
                    quiet: true
                    font.pixelSize: Theme.smallSize
                    Accessible.ignored: true
                }
            }
            Column {
                objectName: "measureRows"
                width: parent.width

                Repeater {
                    model: root.measure.rows

                    Item {
                        id: line

                        required property string name
                        required property string value
                        required property string note
                        required property string sentence
                        width: steps.width
                        height: Math.max(nameWords.height, noteWords.height) + Theme.px(12)
                        Accessible.role: Accessible.ListItem
                        Accessible.name: line.sentence

                        Words {
                            id: nameWords
                            anchors.verticalCenter: parent.verticalCenter
                            width: parent.width * 0.46
                            text: line.name
                            Accessible.ignored: true
                        }
                        Words {
                            anchors.verticalCenter: parent.verticalCenter
                            x: parent.width * 0.48
                            width: parent.width * 0.24
                            text: line.value
                            strong: true
                            Accessible.ignored: true
                        }
                        Words {
                            id: noteWords
                            anchors.verticalCenter: parent.verticalCenter
                            x: parent.width * 0.72
                            width: parent.width * 0.28
                            horizontalAlignment: Text.AlignRight
                            text: line.note
                            quiet: true
                            font.pixelSize: Theme.smallSize
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
            }
            Rectangle {
                visible: adviceWords.text !== ""
                width: parent.width
                height: adviceWords.height + Theme.px(20)
                color: Theme.well

                Rectangle {
                    width: 4
                    height: parent.height
                    color: Theme.edge
                }
                Words {
                    id: adviceWords
                    objectName: "measureAdvice"
                    x: Theme.px(14)
                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width - 2 * x
                    text: root.measure.advice
                }
            }
            Words {
                visible: !root.green && root.measure.result === "" // Then what keeps it is in sight.
                width: parent.width
                text: qsTr("Keep what is known and what is measured at the same distance from the camera: at one metre, each 10 cm that the plant stands nearer makes it come out about 10 % too long.")
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            Row {
                spacing: Theme.px(10)

                Words {
                    anchors.verticalCenter: parent.verticalCenter
                    text: qsTr("or type it")
                }
                SheetField {
                    id: typed
                    objectName: "typedValue"
                    label: root.green ? qsTr("Green share, typed instead of drawn") : qsTr("Length, typed instead of marked")
                    unit: root.green ? "%" : root.measure.unit
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    onTextEdited: root.measure.forgive()
                    onAccepted: root.keep()
                }
            }
            Trouble {
                objectName: "measureTrouble"
                width: parent.width
                words: root.measure.error
            }
            Flow {
                width: parent.width
                spacing: Theme.px(10)

                ActButton {
                    objectName: "keepReading"
                    text: qsTr("Keep the reading")
                    onClicked: root.keep()
                }
                SheetButton {
                    objectName: "tryAgain"
                    text: qsTr("Try again")
                    reason: root.green ? qsTr("Takes the outline away.") : qsTr("Keeps this try in mind and has the points set once more.")
                    onClicked: {
                        root.measure.tryAgain();
                        picture.forceActiveFocus();
                    }
                }
                SheetButton {
                    objectName: "leaveMeasuring"
                    text: qsTr("Leave")
                    reason: qsTr("Escape")
                    onClicked: root.plant.album.close()
                }
            }
        }
    }
}
