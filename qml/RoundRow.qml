pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// One task of the round, with the heading of its class where it is the first; a washing step stands apart.
Item {
    id: root

    required property int index
    required property int classState
    required property string heading
    required property string headingNote
    required property string spot
    required property int spotColour
    required property string plant
    required property string task
    required property string why
    required property string latest
    required property string overdue
    required property bool pinned
    required property string doneAt
    required property int minutes
    required property list<string> cautions
    required property bool isHygiene
    required property bool done
    required property real feedPpm
    required property bool treats
    /// Beyond the sixth of its class, and not asked for yet.
    required property bool folded
    /// How many rows of the class are, and where; at the last one that is shown.
    required property string more
    required property string sentence
    required property RoundModel round
    property DoseModel dose: null
    required property bool narrow
    required property bool chosen
    required property bool focused

    /// What can be done with it is asked there.
    signal actsAsked(x: real, y: real)

    readonly property real boxWidth: Theme.px(44)
    readonly property real nameWidth: Theme.px(176)
    readonly property real endWidth: Theme.px(root.narrow ? 0 : 176)
    /// What stands at the end of the row, in one line.
    readonly property string end: root.done ? root.doneAt : (root.overdue === "" ? "" : root.overdue + "; ") + qsTr("%1 min").arg(root.minutes) + (root.latest === "" ? "" : "; " + root.latest) + (root.pinned ? "; " + qsTr("pinned") : "")
    readonly property real headHeight: root.heading === "" ? 0 : classHead.implicitHeight + Theme.px(8)

    visible: !root.folded
    height: root.folded ? 0 : root.headHeight + body.height + (moreButton.visible ? moreButton.height + Theme.px(8) : 0)
    Accessible.role: Accessible.CheckBox
    Accessible.name: root.sentence
    Accessible.checkable: true
    Accessible.checked: root.done
    Accessible.focusable: true
    Accessible.focused: root.focused
    Accessible.onPressAction: root.round.tick(root.index)
    Accessible.onToggleAction: root.round.tick(root.index)

    SeldomPart {
        id: classHead
        width: root.width
        y: root.headHeight - height
        wanted: root.heading !== ""
        onFirstWanted: setSource("ClassHeading.qml", {
            words: Qt.binding(() => root.heading),
            note: Qt.binding(() => root.headingNote),
            pestState: Qt.binding(() => root.classState)
        })
    }
    SeldomPart {
        id: moreButton
        x: root.boxWidth
        y: root.height - height - Theme.px(4)
        wanted: root.more !== ""
        onFirstWanted: setSource("SheetButton.qml", {
            objectName: "moreButton",
            focusPolicy: Qt.TabFocus, // The arrows and Space stay with the tasks after a click.
            text: Qt.binding(() => root.more),
            reason: qsTr("They can wait. Shows them; the arrows do so too.")
        })

        Connections {
            target: moreButton.item
            ignoreUnknownSignals: true
            function onClicked(): void {
                root.round.unfold(root.index);
            }
        }
    }
    Rectangle {
        id: body
        objectName: "roundBody"
        y: root.headHeight
        width: root.width
        height: Math.max(Theme.px(44), root.isHygiene ? wash.height + Theme.px(14) : Math.max(words.y + words.height, name.y + name.height, ends.y + ends.height) + Theme.px(8))
        color: root.chosen ? Theme.select : pointer.containsMouse || root.isHygiene ? Theme.well : "transparent"
        border.width: root.focused ? 2 : Theme.contrast && (root.chosen || root.isHygiene) ? 1 : 0
        border.color: root.focused ? Theme.focus : Theme.edge

        Rectangle {
            visible: root.chosen && !root.focused
            width: 4
            height: parent.height
            color: Theme.action
        }
        MouseArea {
            id: pointer
            anchors.fill: parent
            hoverEnabled: true
            acceptedButtons: Qt.LeftButton | Qt.RightButton
            onClicked: mouse => {
                root.round.currentRow = root.index;
                if (mouse.button === Qt.RightButton)
                    root.actsAsked(mouse.x, root.headHeight + mouse.y);
            }
            onPressAndHold: mouse => root.actsAsked(mouse.x, root.headHeight + mouse.y)
        }
        TickBox {
            objectName: "tickBox"
            x: Theme.px(12)
            y: Theme.px(root.isHygiene ? 12 : 9)
            ticked: root.done
            Accessible.ignored: true
        }
        MouseArea {
            objectName: "tickTarget"
            width: root.boxWidth
            height: parent.height
            onClicked: {
                root.round.currentRow = root.index;
                root.round.tick(root.index);
            }
        }
        SeldomPart {
            id: wash
            x: root.boxWidth
            y: Theme.px(7)
            wanted: root.isHygiene
            onFirstWanted: setSource("RoundWash.qml", {
                words: Qt.binding(() => qsTr("%1. %2").arg(root.task).arg(root.why.charAt(0).toUpperCase() + root.why.slice(1))),
                room: Qt.binding(() => root.width - root.boxWidth - Theme.px(16))
            })
        }
        Column {
            id: name
            visible: !root.isHygiene
            x: root.boxWidth
            y: Theme.px(5)
            width: root.nameWidth - Theme.px(10)
            spacing: 1

            Text {
                textFormat: Text.PlainText
                width: parent.width
                text: root.plant === "" ? qsTr("Seeds") : root.plant
                color: root.done ? Theme.ink2 : Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.textSize
                font.weight: root.done ? Font.Normal : Font.DemiBold
                Accessible.ignored: true
            }
            Row {
                visible: root.spot !== ""
                spacing: Theme.px(6)

                SpotSwatch {
                    visible: root.spotColour >= 0
                    anchors.verticalCenter: parent.verticalCenter
                    width: Theme.px(18)
                    height: Theme.px(12)
                    theme: Theme
                    scheme: Theme.look
                    colour: root.spotColour
                    Accessible.ignored: true
                }
                Text {
                    textFormat: Text.PlainText
                    text: root.spot
                    color: root.chosen ? Theme.ink : Theme.ink2
                    font.family: Theme.textFamily
                    font.pixelSize: Theme.smallSize
                    Accessible.ignored: true
                }
            }
        }
        Column {
            id: words
            visible: !root.isHygiene
            x: root.boxWidth + (root.narrow ? 0 : root.nameWidth)
            y: root.narrow ? name.y + name.height + Theme.px(4) : Theme.px(5)
            width: root.width - x - root.endWidth - Theme.px(12)
            spacing: 1

            Text {
                textFormat: Text.PlainText
                width: parent.width
                text: root.task
                color: root.done ? Theme.ink2 : Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.textSize
                Accessible.ignored: true
            }
            Text {
                textFormat: Text.PlainText
                width: parent.width
                text: root.narrow && root.end !== "" ? qsTr("%1; %2").arg(root.why).arg(root.end) : root.why
                color: Theme.ink2
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
            SeldomPart {
                wanted: !root.done && (root.treats || root.dose !== null && root.feedPpm > 0)
                width: parent.width
                onFirstWanted: setSource("RoundTreats.qml", {
                    round: root.round,
                    dose: Qt.binding(() => root.dose),
                    row: Qt.binding(() => root.index),
                    ppm: Qt.binding(() => root.feedPpm),
                    treats: Qt.binding(() => root.treats)
                })
            }
            Repeater {
                model: root.cautions

                Item {
                    id: hazard
                    required property string modelData
                    width: words.width
                    height: hazardText.height + 2

                    Rectangle {
                        x: 2
                        y: Theme.px(5)
                        width: 7 * Theme.textScale
                        height: width
                        rotation: 45
                        color: Theme.caution
                        antialiasing: true
                    }
                    Text {
                        id: hazardText
                        textFormat: Text.PlainText
                        objectName: "caution"
                        x: Theme.px(16)
                        width: Math.min(parent.width - x, Theme.px(560))
                        text: hazard.modelData
                        color: root.chosen ? Theme.ink : Theme.caution
                        wrapMode: Text.WordWrap
                        font.family: Theme.textFamily
                        font.pixelSize: Theme.smallSize
                        Accessible.ignored: true
                    }
                }
            }
        }
        Column {
            id: ends
            visible: !root.narrow && !root.isHygiene
            anchors.right: parent.right
            anchors.rightMargin: Theme.px(8)
            y: Theme.px(7)
            width: root.endWidth

            Text {
                textFormat: Text.PlainText
                width: parent.width
                horizontalAlignment: Text.AlignRight
                objectName: "rowEnd"
                text: root.done ? root.doneAt : qsTr("%1 min").arg(root.minutes)
                color: Theme.ink
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
            Text {
                textFormat: Text.PlainText
                objectName: "overdue"
                visible: text !== ""
                width: parent.width
                horizontalAlignment: Text.AlignRight
                text: root.overdue
                color: Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                font.weight: Font.DemiBold
                Accessible.ignored: true
            }
            Text {
                textFormat: Text.PlainText
                visible: !root.done && text !== ""
                width: parent.width
                horizontalAlignment: Text.AlignRight
                text: root.pinned && root.latest !== "" ? qsTr("%1; pinned").arg(root.latest) : root.pinned ? qsTr("pinned") : root.latest
                color: Theme.ink2
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
        }
        Rectangle {
            visible: !root.isHygiene
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
    }
}
