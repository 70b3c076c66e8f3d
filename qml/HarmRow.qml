import QtQuick
import Lathhouse.Models

// A plant at the cursor's date: where it stands, and its chance of harm.
Item {
    id: root

    required property string name
    required property int cursorColour
    required property string cursorWords
    required property bool cursorOutdoors

    height: Theme.px(22.5)
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2").arg(root.name).arg(root.cursorWords)

    Text {
        textFormat: Text.PlainText
        anchors.left: parent.left
        anchors.right: swatch.left
        anchors.rightMargin: 6
        anchors.verticalCenter: parent.verticalCenter
        text: root.name
        color: Theme.ink
        elide: Text.ElideRight
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    SpotSwatch {
        id: swatch
        anchors.right: parent.right
        anchors.rightMargin: Math.max(Theme.px(74), number.width + 6)
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.px(20)
        height: Theme.px(14)
        theme: Theme
        scheme: Theme.look
        colour: root.cursorColour
        Accessible.ignored: true
    }
    Text {
        id: number
        textFormat: Text.PlainText
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: root.cursorWords
        color: root.cursorOutdoors ? Theme.ink : Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: root.cursorOutdoors ? Font.DemiBold : Font.Normal
        Accessible.ignored: true
    }
}
