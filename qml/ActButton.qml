import QtQuick

// The main act of a page: a filled button.
SheetButton {
    id: root

    background: Rectangle {
        radius: Theme.controlRadius
        color: root.down ? Theme.well : root.hovered ? Qt.darker(Theme.action, 1.18) : Theme.action
        border.width: root.down ? 1 : 0
        border.color: Theme.action

        FocusRing {
            visible: root.visualFocus
        }
    }
    contentItem: Text {
        textFormat: Text.PlainText
        text: root.text
        color: root.down ? Theme.ink : Theme.actionInk
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        font.weight: Font.DemiBold
        wrapMode: Text.WordWrap
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
