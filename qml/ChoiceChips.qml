pragma ComponentBehavior: Bound

import QtQuick

// One of a few, in words; its heading before, what it means after.
Column {
    id: root

    required property string title
    required property var choices
    required property int chosen
    property string note: ""
    /// Why the choice has no effect now.
    property string standing: ""
    /// Name of the chips for tests: with the place of each.
    property string part: "choice"

    signal choose(index: int)

    spacing: Theme.px(6)
    Accessible.role: Accessible.Grouping
    Accessible.name: root.title

    Words {
        width: root.width
        text: root.title
        strong: true
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)

        Repeater {
            id: chips
            model: root.choices

            Chip {
                required property string modelData
                required property int index
                objectName: root.part + index
                height: Math.max(Theme.target(32), implicitHeight)
                text: modelData
                reason: root.title
                on: root.chosen === index
                onClicked: root.choose(index)
            }
        }
    }
    Words {
        visible: text !== ""
        width: Math.min(root.width, Theme.px(620))
        text: root.note
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Words {
        objectName: root.part + "Standing"
        visible: text !== ""
        width: Math.min(root.width, Theme.px(620))
        text: root.standing
        strong: true
        font.pixelSize: Theme.smallSize
    }
}
