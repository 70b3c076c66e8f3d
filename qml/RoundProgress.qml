import QtQuick
import Lathhouse.Models

// How much of the round is done, in words and as a bar.
Item {
    id: root

    required property RoundModel round

    visible: root.round.count > 0
    width: Theme.px(200)
    height: Theme.px(30)
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1, %2").arg(root.round.doneLine).arg(root.round.minutesLine)

    Words {
        text: root.round.doneLine
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Words {
        anchors.right: parent.right
        text: root.round.minutesLine
        quiet: true
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.px(8)
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge

        Rectangle {
            width: Math.round(parent.width * root.round.doneShare)
            height: parent.height
            color: Theme.action
        }
    }
}
