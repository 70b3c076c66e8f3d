import QtQuick

// A line of the read-out.
Item {
    id: root

    required property string label
    required property string value
    required property bool strong

    height: Math.max(Theme.px(21), words.height + Theme.px(4))
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2").arg(root.label).arg(root.value)

    Text {
        id: words
        textFormat: Text.PlainText
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - number.width - Theme.px(6)
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignLeft
        text: root.label
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Text {
        id: number
        textFormat: Text.PlainText
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: root.value
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: root.strong ? Font.DemiBold : Font.Normal
        Accessible.ignored: true
    }
}
