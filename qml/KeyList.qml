pragma ComponentBehavior: Bound

import QtQuick

// Keys of one place and what they do.
Column {
    id: root

    required property string title
    /// Keys and what they do, in turns.
    required property list<string> keys
    readonly property real keyWidth: Math.min(Theme.px(230), Math.round(root.width * 0.42))

    spacing: Theme.px(4)

    Heading {
        width: parent.width
        text: root.title
        font.pixelSize: Theme.textSize
    }
    Repeater {
        model: Math.floor(root.keys.length / 2)

        Item {
            id: row

            required property int index

            width: root.width
            height: Math.max(key.height, deed.height)
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("%1: %2").arg(key.text).arg(deed.text)

            Words {
                id: key
                width: root.keyWidth
                text: root.keys[2 * row.index]
                strong: true
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
            Words {
                id: deed
                x: root.keyWidth + Theme.px(12)
                width: root.width - x
                text: root.keys[2 * row.index + 1]
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
        }
    }
}
