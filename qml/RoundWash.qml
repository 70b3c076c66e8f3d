pragma ComponentBehavior: Bound

import QtQuick

// What is washed between two classes of plants, behind the laths that part them.
Row {
    id: root

    required property string words
    required property real room

    height: Math.max(Theme.px(30), said.height)
    spacing: Theme.px(12)

    Row {
        id: laths
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.px(3)

        Repeater {
            model: [4, 3, 2.4, 1.7, 1.2]

            Rectangle {
                required property real modelData
                width: modelData * Theme.textScale
                height: Theme.px(14)
                color: Theme.edge
                antialiasing: true
            }
        }
    }
    Text {
        id: said
        textFormat: Text.PlainText
        anchors.verticalCenter: parent.verticalCenter
        width: root.room - laths.width - root.spacing
        text: root.words
        color: Theme.ink
        wrapMode: Text.WordWrap
        font.family: Theme.textFamily
        font.pixelSize: Theme.rowSize
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
}
