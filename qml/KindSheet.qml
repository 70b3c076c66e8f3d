pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// What is known of a kind of plant before it is picked; what it can do and what to do then stays in sight.
SheetFrame {
    id: root

    required property PlantsForm form
    readonly property KindModel kind: root.form.looked

    /// Else they come first in what scrolls: they would leave it no room.
    readonly property bool cautionsStay: root.height >= Theme.px(480)

    signal closed

    part: "kind"
    title: root.kind.name
    most: Theme.px(760)
    visible: root.kind.open

    Component.onCompleted: if (root.kind.open) pick.forceActiveFocus()
    onEscaped: root.kind.close()

    Connections {
        target: root.kind
        function onKindChanged(): void {
            if (root.kind.open)
                pick.forceActiveFocus();
            else
                root.closed();
        }
    }
    lead: [
        Words {
            objectName: "kindBotanical"
            width: parent.width
            text: root.kind.botanical
            font.family: Theme.titleFamily
            font.italic: true
        },
        Item {
            width: 1
            height: Theme.px(6)
        },
        Repeater {
            model: root.kind.hazards

            HazardRow {
                objectName: "kindHazard"
                width: parent.width
            }
        },
        Repeater {
            model: root.cautionsStay ? root.kind.cautions : []

            Words {
                required property string modelData
                width: parent.width
                text: modelData
                font.pixelSize: Theme.rowSize
            }
        }
    ]
    Column {
        visible: !root.cautionsStay
        width: root.room

        Repeater {
            model: root.cautionsStay ? [] : root.kind.cautions

            Words {
                required property string modelData
                width: parent.width
                text: modelData
                font.pixelSize: Theme.rowSize
            }
        }
    }
    Words {
        visible: text !== ""
        width: root.room
        text: root.kind.otherNames
        font.pixelSize: Theme.rowSize
    }
    Column {
        width: root.room
        spacing: Theme.px(4)

        Words {
            width: parent.width
            text: qsTr("low of a night")
            quiet: true
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        KindRuler {
            objectName: "kindRuler"
            width: parent.width
            height: Theme.px(52)
            theme: Theme
            scheme: Theme.look
            kind: root.kind
            Accessible.role: Accessible.Graphic
            Accessible.name: root.kind.needsSpoken
        }
    }
    Column {
        objectName: "kindFigures"
        width: Math.min(root.room, Theme.px(560))

        Repeater {
            model: root.kind.figures

            FactRow {
                width: parent.width
            }
        }
    }
    Column {
        objectName: "kindNotes"
        width: root.room
        spacing: Theme.px(4)

        Repeater {
            model: root.kind.notes

            Words {
                required property string modelData
                width: parent.width
                text: modelData
                quiet: true
                font.pixelSize: Theme.smallSize
            }
        }
    }
    acts: [
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            ActButton {
                id: pick
                objectName: "kindPick"
                text: qsTr("Pick this kind")
                reason: qsTr("One plant of it; it is kept with the form.")
                onClicked: root.form.pickLooked()
            }
            SheetButton {
                objectName: "kindClose"
                text: qsTr("Close")
                reason: qsTr("Escape")
                onClicked: root.kind.close()
            }
        }
    ]
}
