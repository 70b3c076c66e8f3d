pragma ComponentBehavior: Bound

import QtQuick
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
    readonly property bool green: root.measure.mode !== MeasureModel.Length
    readonly property bool grey: root.measure.mode === MeasureModel.Grey
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
    MeasurePicture {
        id: picture
        objectName: "measurePicture"
        x: root.side
        y: head.y + head.height + Theme.px(8)
        width: root.paneWidth
        height: root.stacked ? Math.round(root.height * 0.5) : root.height - y - foot.height - Theme.px(16)
        measure: root.measure
        hint: foot.text
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
    SheetScroll {
        id: panel
        x: (root.stacked ? root.side : root.side + root.paneWidth + Theme.px(46)) - panel.ringRoom
        y: root.stacked ? foot.y + foot.height + Theme.px(10) : Theme.px(12)
        width: root.panelWidth + panel.ringRoom
        height: root.height - y
        contentHeight: steps.height + Theme.px(20)

        Column {
            id: steps
            x: panel.ringRoom
            width: panel.width - x - 12
            spacing: Theme.px(12)

            Flow {
                width: parent.width
                spacing: Theme.px(8)

                Chip {
                    objectName: "modeLength"
                    height: Theme.target(32)
                    text: qsTr("Length")
                    on: !root.green
                    onClicked: root.measure.mode = MeasureModel.Length
                }
                Chip {
                    objectName: "modeGreen"
                    height: Theme.target(32)
                    text: qsTr("Green share")
                    on: root.green && !root.grey
                    onClicked: root.measure.mode = MeasureModel.Green
                }
                Chip {
                    objectName: "modeGrey"
                    height: Theme.target(32)
                    text: qsTr("Grey patch")
                    reason: qsTr("Sets the colours of the green share by something that is grey in truth")
                    on: root.grey
                    onClicked: root.measure.mode = MeasureModel.Grey
                }
            }
            MeasureLength {
                visible: !root.green
                width: parent.width
                measure: root.measure
                onCardAsked: root.cardAsked()
                onPictureWanted: picture.forceActiveFocus()
            }
            Column {
                visible: root.green
                width: parent.width
                spacing: Theme.px(8)

                Heading {
                    width: parent.width
                    text: root.grey ? qsTr("An outline round the grey patch") : qsTr("An outline round the leaves")
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

                    MeasureRow {
                        width: steps.width
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
                objectName: "typedRow"
                visible: !root.grey // A patch has no value of its own.
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
                    visible: !root.grey || root.measure.canKeep
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
