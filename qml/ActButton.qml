import QtQuick

// The main act of a page: a filled button.
SheetButton {
    id: root

    /// One button of a page is filled: while another one is the main act, this one is as quiet as the rest.
    property bool filled: true

    background: Rectangle {
        radius: Theme.controlRadius
        color: root.down ? Theme.well : root.filled ? root.hovered ? Qt.darker(Theme.action, 1.18) : Theme.action : root.hovered ? Theme.select : Theme.sheet
        border.width: root.down || !root.filled ? 1 : 0
        border.color: root.filled || root.hovered ? Theme.action : Theme.edge

        FocusRing {
            visible: root.visualFocus
        }
    }
    contentItem: Text {
        textFormat: Text.PlainText
        text: root.text
        color: root.down || !root.filled ? Theme.ink : Theme.actionInk
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        font.weight: root.filled ? Font.DemiBold : Font.Normal
        wrapMode: Text.WordWrap
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
