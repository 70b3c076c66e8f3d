import QtQuick
import QtQuick.Templates as T

// A quiet button on the sheet: an act in words.
T.Button {
    id: root

    property string reason: ""

    implicitWidth: Math.max(Math.ceil(root.implicitContentWidth) + Theme.px(26), Theme.target(0))
    implicitHeight: Theme.target(32)
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.description: root.reason
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.controlRadius
        color: root.down ? Theme.well : root.hovered ? Theme.select : Theme.sheet
        border.width: 1
        border.color: root.hovered ? Theme.action : Theme.edge

        FocusRing {
            visible: root.visualFocus
        }
    }
    contentItem: Text {
        textFormat: Text.PlainText
        text: root.text
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
