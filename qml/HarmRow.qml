import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// A plant at the cursor's date: where it stands, and its chance of harm.
Item {
    id: root

    required property string name
    required property int cursorColour
    required property string cursorWords
    required property bool cursorOutdoors

    /// The chance stands below the name where there is no room for it beside.
    readonly property bool below: nameText.implicitWidth > root.width - Math.max(Theme.px(74), number.implicitWidth + 6) - swatch.width - 6
    readonly property real line: Theme.px(22.5)

    height: (root.below ? 2 * root.line - Theme.px(6) : root.line) + Math.max(0, number.lineCount - 1) * number.contentHeight / Math.max(1, number.lineCount)
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2").arg(root.name).arg(root.cursorWords)

    Text {
        id: nameText
        objectName: "harmName"
        readonly property bool mayBeCut: true
        textFormat: Text.PlainText
        anchors.left: parent.left
        anchors.right: root.below ? parent.right : swatch.left
        anchors.rightMargin: root.below ? 0 : 6
        y: (root.line - height) / 2
        text: root.name
        color: Theme.ink
        elide: Text.ElideRight
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    HoverHandler {
        id: pointer
    }
    ToolTip {
        visible: pointer.hovered && nameText.truncated
        delay: 400
        text: root.name
        font.family: Theme.textFamily
        font.pixelSize: Theme.rowSize
    }
    SpotSwatch {
        id: swatch
        anchors.right: parent.right
        anchors.rightMargin: Math.max(Theme.px(74), number.width + 6)
        anchors.verticalCenter: number.verticalCenter
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
        y: root.height - height - (root.line - height / Math.max(1, number.lineCount)) / 2
        width: Math.min(number.implicitWidth, root.width - swatch.width - 6)
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignRight
        text: root.cursorWords
        color: root.cursorOutdoors ? Theme.ink : Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: root.cursorOutdoors ? Font.DemiBold : Font.Normal
        Accessible.ignored: true
    }
}
