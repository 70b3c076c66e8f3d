pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// One of the household to be kept from harm, and the spots within reach.
Column {
    id: root

    required property int index
    required property string name
    required property string kind
    required property var reaches // A list of flags; QML knows no type for one that comes from a model.
    required property string sentence
    required property SheetRows spots

    signal reached(spot: int, reaches: bool)
    signal removed

    objectName: "member" + root.index
    spacing: Theme.px(6)
    Accessible.role: Accessible.Grouping
    Accessible.name: root.sentence

    Item {
        width: root.width
        height: Math.max(title.height, away.height)

        Words {
            id: title
            anchors.verticalCenter: parent.verticalCenter
            width: away.x - Theme.px(8)
            text: root.name.toLowerCase().endsWith(root.kind) ? root.name : qsTr("%1, %2").arg(root.name).arg(root.kind)
            strong: true
            Accessible.ignored: true
        }
        SheetButton {
            id: away
            objectName: "removeMember" + root.index
            anchors.right: parent.right
            text: qsTr("Take off the list")
            reason: root.name
            onClicked: root.removed()
        }
    }
    Words {
        width: root.width
        text: qsTr("Press the spots within reach.")
        quiet: true
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)

        Repeater {
            model: root.spots

            Chip {
                id: chip
                required property string name
                required property int hand
                required property int index
                objectName: "reach" + root.index + "_" + chip.index
                text: chip.name
                spotColour: chip.hand
                on: root.reaches[chip.index] === true
                reason: chip.on ? qsTr("Within reach of %1").arg(root.name) : qsTr("Out of reach of %1").arg(root.name)
                spokenRole: Accessible.CheckBox
                onClicked: root.reached(chip.index, !chip.on)
            }
        }
    }
    Rectangle {
        width: root.width
        height: 1
        color: Theme.rule
    }
}
