import QtQuick

// A line of the read-out.
Item {
    id: root

    required property string label
    required property string value
    required property bool strong

    height: Theme.px(21)
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2").arg(root.label).arg(root.value)

    Text {
        textFormat: Text.PlainText
        anchors.verticalCenter: parent.verticalCenter
        text: root.label
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Text {
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
