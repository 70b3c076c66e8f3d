pragma ComponentBehavior: Bound

import QtQuick

// The name of a class of plants over its tasks. One, two or three laths say the class as its words do.
Item {
    id: root

    required property string words
    required property string note
    required property int pestState
    readonly property color ground: root.pestState === 2 ? Theme.caution : root.pestState === 1 ? Theme.warm : Theme.ink

    /// The note stands below the name where it has no room beside it.
    readonly property bool stacked: head.x + head.implicitWidth + Theme.px(10) + noteText.implicitWidth > root.width

    implicitHeight: root.stacked ? Theme.px(20) + head.height + noteText.height : Theme.px(36)
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
        anchors.bottomMargin: 2 + (root.stacked ? noteText.height : 0)
        width: Math.min(implicitWidth, root.width - x)
        text: root.words
        wrapMode: Text.WordWrap
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: Theme.headSize
        Accessible.ignored: true
    }
    Text {
        id: noteText
        textFormat: Text.PlainText
        x: root.stacked ? head.x : head.x + head.width + Theme.px(10)
        y: root.stacked ? rule.y - height : head.y + head.baselineOffset - baselineOffset
        width: root.stacked ? root.width - x : implicitWidth
        text: root.note
        wrapMode: Text.WordWrap
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
