pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Spots to choose from.
Flow {
    id: root

    required property SheetRows spots
    required property int current

    signal chosen(index: int)

    spacing: Theme.px(8)

    Repeater {
        model: root.spots

        Chip {
            required property string name
            required property int hand
            required property int index
            text: name
            reason: qsTr("Up and Down go through the spots")
            spotColour: hand
            on: root.current === index
            onClicked: root.chosen(index)
        }
    }
}
