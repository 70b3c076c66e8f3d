pragma ComponentBehavior: Bound

import QtQuick

// The name of a class of plants over its tasks. One, two or three laths say the class as its words do.
Item {
    id: root

    required property string words
    required property string note
    required property int pestState
    readonly property color ground: root.pestState === 2 ? Theme.caution : root.pestState === 1 ? Theme.warm : Theme.ink

    implicitHeight: Theme.px(36)
    Accessible.role: Accessible.Heading
    Accessible.name: qsTr("%1, %2").arg(root.words).arg(root.note)

    Row {
        id: laths
        x: 2
        anchors.bottom: rule.top
        anchors.bottomMargin: Theme.px(6)
        spacing: 3

        Repeater {
            model: root.pestState + 1

            Rectangle {
                width: Theme.px(4)
                height: Theme.px(14)
                color: root.ground
            }
        }
    }
    Text {
        id: head
        textFormat: Text.PlainText
        anchors.left: laths.right
        anchors.leftMargin: Theme.px(10)
        anchors.bottom: rule.top
        anchors.bottomMargin: 2
        text: root.words
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: Theme.headSize
        Accessible.ignored: true
    }
    Text {
        textFormat: Text.PlainText
        anchors.left: head.right
        anchors.leftMargin: Theme.px(10)
        anchors.baseline: head.baseline
        text: root.note
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Rectangle {
        id: rule
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1.5
        color: root.ground
    }
}
