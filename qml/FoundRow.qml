import QtQuick
import QtQuick.Templates as T

// A row to choose from: its name, and what is known of it at the end or below.
T.Button {
    id: root

    required property string words
    property string detail: ""
    property string sentence: ""
    property string trouble: ""
    property bool on: false
    property bool slanted: false
    property bool hazard: false
    readonly property real side: Theme.px(10)
    readonly property bool stacked: name.implicitWidth + more.implicitWidth + 3 * root.side + (root.hazard ? Theme.px(18) : 0) > root.width

    implicitHeight: Math.max(Theme.target(32), contents.height + Theme.px(10))
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    text: root.words
    Accessible.role: Accessible.Button
    Accessible.name: root.sentence !== "" ? root.sentence : root.words
    Accessible.description: root.trouble
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        color: root.on ? Theme.select : root.hovered ? Theme.well : "transparent"

        Rectangle {
            visible: root.on
            width: 4
            height: parent.height
            color: Theme.action
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Rectangle {
            anchors.fill: parent
            anchors.margins: 1
            visible: root.visualFocus
            color: "transparent"
            border.width: 2
            border.color: Theme.focus
        }
    }
    Item {
        anchors.fill: parent

        Item {
            id: contents
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            height: (root.stacked ? more.y + more.height : Math.max(name.height, more.height)) + (wrong.visible ? wrong.height + Theme.px(2) : 0)

            Words {
                id: name
                x: root.side
                width: Math.min(implicitWidth, root.width - 2 * root.side - (root.hazard ? Theme.px(18) : 0))
                text: root.words
                strong: root.on
                Accessible.ignored: true
            }
            Lozenge {
                visible: root.hazard
                x: name.x + name.width + Theme.px(6)
                y: name.y + Theme.px(5)
                Accessible.ignored: true
            }
            Words {
                id: more
                x: root.stacked ? root.side : root.width - width - root.side
                y: root.stacked ? name.height : Math.max(0, name.height - height - 1)
                width: Math.min(implicitWidth, root.width - 2 * root.side)
                text: root.detail
                quiet: true
                font.family: root.slanted ? Theme.titleFamily : Theme.textFamily
                font.italic: root.slanted
                font.pixelSize: root.slanted ? Theme.textSize : Theme.smallSize
                Accessible.ignored: true
            }
            Trouble {
                id: wrong
                x: root.side
                y: parent.height - height
                width: root.width - 2 * root.side
                words: root.trouble
            }
        }
    }
}
