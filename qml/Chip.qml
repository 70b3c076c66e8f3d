import QtQuick
import Lathhouse.Models

// One of several to choose from; the chosen one is bold, on the ground of what is chosen, with the border of acts.
SpokenButton {
    id: root

    /// Hand of a spot; negative: none.
    property int spotColour: -1
    /// Where the words begin; negative: in the middle, or beside the swatch.
    property real textX: -1
    readonly property real textWidth: widest.width

    property real wordsHeight: 0
    readonly property real wordsX: root.textX >= 0 ? root.textX : root.spotColour >= 0 ? Theme.px(32) : 0
    /// In a flow or a column it is no wider than that, and its words wrap.
    width: Math.min(root.implicitWidth, root.parent instanceof Flow || root.parent instanceof Column ? root.parent.width : Infinity)
    implicitWidth: Math.max(Theme.target(0), Math.ceil(widest.width) + Theme.px(20) + (root.spotColour >= 0 ? Theme.px(24) : 0))
    implicitHeight: Math.max(Theme.target(28), root.wordsHeight + Theme.px(6))
    spokenRole: Accessible.RadioButton

    // The chip keeps its width when it is chosen.
    TextMetrics {
        id: widest
        text: root.text
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: Font.DemiBold
    }
    background: Rectangle {
        radius: Theme.sheetRadius
        color: root.on ? Theme.select : root.hovered ? Theme.well : Theme.sheet
        border.width: root.on ? 1.5 : 1
        border.color: root.on ? Theme.action : root.hovered ? Theme.edge : Theme.contrast ? Theme.edge : Theme.rule

        FocusRing {
            visible: root.visualFocus
        }
    }
    contentItem: Item {
        SpotSwatch {
            visible: root.spotColour >= 0
            x: Theme.px(8)
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.px(18)
            height: Theme.px(12)
            theme: Theme
            scheme: Theme.look
            colour: root.spotColour
            Accessible.ignored: true
        }
        Text {
            textFormat: Text.PlainText
            anchors.verticalCenter: parent.verticalCenter
            x: root.wordsX > 0 ? root.wordsX : Math.round((parent.width - width) / 2)
            width: Math.min(implicitWidth, parent.width - root.wordsX - 2)
            wrapMode: Text.WordWrap
            onImplicitHeightChanged: root.wordsHeight = implicitHeight
            text: root.text
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            font.weight: root.on ? Font.DemiBold : Font.Normal
            Accessible.ignored: true
        }
    }
}
