import QtQuick

// A line of what comes this week.
Item {
    id: root

    required property string date
    required property string what
    required property string whom
    required property string sentence

    implicitHeight: Math.max(when.height, words.height) + Theme.px(8)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence

    Words {
        id: when
        y: Theme.px(3)
        width: Theme.px(78)
        text: root.date
        quiet: true
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
    Column {
        id: words
        x: Theme.px(82)
        y: Theme.px(3)
        width: root.width - x

        Words {
            width: parent.width
            text: root.what
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
        Words {
            visible: root.whom !== ""
            width: parent.width
            text: root.whom
            quiet: true
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
}
