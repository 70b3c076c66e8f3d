import QtQuick

// Yes or no, with its words.
SpokenButton {
    id: root

    implicitHeight: Math.max(Theme.target(28), words.height + Theme.px(6))
    spokenRole: Accessible.CheckBox

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
