import QtQuick
import Lathhouse.Models

// A fact in a frame; it is no button.
Rectangle {
    id: root
    objectName: "factChip"

    required property string words
    required property int hand
    required property string reason

    implicitWidth: fact.x + fact.implicitWidth + Theme.px(10)
    implicitHeight: Theme.px(26)
    radius: Theme.sheetRadius
    color: "transparent"
    border.width: 1
    border.color: Theme.contrast ? Theme.edge : Theme.rule
    Accessible.role: Accessible.StaticText
    Accessible.name: root.words
    Accessible.description: root.reason

    SpotSwatch {
        visible: root.hand >= 0
        x: Theme.px(9)
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.px(18)
        height: Theme.px(12)
        theme: Theme
        scheme: Theme.look
        colour: root.hand
        Accessible.ignored: true
    }
    Text {
        id: fact
        textFormat: Text.PlainText
        x: root.hand >= 0 ? Theme.px(34) : Theme.px(10)
        anchors.verticalCenter: parent.verticalCenter
        text: root.words
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    HoverHandler {
        id: pointer
    }
    TapHandler { // A finger does not hover: one press shows it, the next takes it away.
        id: finger
        property bool met: false
        onTapped: finger.met = !finger.met
    }
    Hint {
        objectName: "reasonHint"
        visible: (pointer.hovered || finger.met) && root.reason !== ""
        y: root.height + Theme.px(4)
        z: 10
        words: root.reason
    }
}
