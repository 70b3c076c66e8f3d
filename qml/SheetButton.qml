import QtQuick
import QtQuick.Templates as T

// A quiet button on the sheet: an act in words.
T.Button {
    id: root

    property string reason: ""
    /// Why it cannot be done now; empty where it can. It can still be reached, and says so when it is pressed.
    property string notNow: ""

    /// In a flow or a column it is no wider than that, and its words wrap.
    width: Math.min(root.implicitWidth, root.parent instanceof Flow || root.parent instanceof Column ? root.parent.width : Infinity)
    implicitWidth: Math.max(Math.ceil(root.implicitContentWidth) + Theme.px(26), Theme.target(0))
    implicitHeight: Math.max(Theme.target(32), Math.ceil(root.implicitContentHeight) + Theme.px(8))
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.description: root.notNow !== "" ? root.notNow : root.reason
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.controlRadius
        color: root.down ? Theme.well : root.hovered && root.notNow === "" ? Theme.select : Theme.sheet
        border.width: root.notNow === "" ? 1 : 0
        border.color: root.hovered ? Theme.action : Theme.edge

        Loader {
            anchors.fill: parent
            source: root.notNow === "" ? "" : "DashedEdge.qml"
        }

        FocusRing {
            visible: root.visualFocus
        }
    }
    contentItem: Text {
        textFormat: Text.PlainText
        text: root.text
        color: root.notNow === "" ? Theme.ink : Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        wrapMode: Text.WordWrap
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
