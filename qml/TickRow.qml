import QtQuick
import QtQuick.Templates as T

// Yes or no, with its words.
T.AbstractButton {
    id: root

    property bool on: false
    property string reason: ""

    implicitHeight: Math.max(Theme.px(28), words.height + Theme.px(6))
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.role: Accessible.CheckBox
    Accessible.name: root.text
    Accessible.description: root.reason
    Accessible.checkable: true
    Accessible.checked: root.on
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        color: root.hovered ? Theme.well : "transparent"
        radius: Theme.sheetRadius

        FocusRing {
            visible: root.visualFocus
            away: 0
        }
    }
    Item {
        anchors.fill: parent

        TickBox {
            y: Theme.px(4)
            ticked: root.on
            Accessible.ignored: true
        }
        Words {
            id: words
            x: Theme.px(28)
            y: Theme.px(4)
            width: root.width - x
            text: root.text
            Accessible.ignored: true
        }
    }
}
