pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The spot whose light is drawn beside that of the chosen one; a second press takes it away.
Flow {
    id: root

    required property HomeModel home

    spacing: Theme.px(8)
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Compare with")

    Words {
        height: Theme.target(28)
        verticalAlignment: Text.AlignVCenter
        text: qsTr("Compare with")
        quiet: true
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Repeater {
        model: root.home.spots

        Chip {
            required property string name
            required property int hand
            required property int index
            objectName: "beside" + index
            visible: index !== root.home.spot
            spokenRole: Accessible.CheckBox
            text: name
            reason: qsTr("Its light in long dashes in the chart and in the table; again: without it")
            spotColour: hand
            on: root.home.beside === index
            onClicked: root.home.beside = on ? -1 : index
        }
    }
}
