import QtQuick
import Lathhouse.Models

// A plant outdoors tonight: its chance, and tonight's range with its damage line on one ruler.
Item {
    id: root

    required property string plant
    required property string spot
    required property int spotColour
    required property string chance
    required property string damageLine
    required property string what
    required property bool carry
    required property real lowAt
    required property real middleAt
    required property real highAt
    required property real lineAt
    required property string sentence
    property real zeroAt: -1

    implicitHeight: name.height + Theme.px(36)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence

    Column {
        id: name
        y: Theme.px(4)
        width: root.width - figure.width - Theme.px(8)

        Words {
            width: parent.width
            text: root.plant
            strong: root.carry
            Accessible.ignored: true
        }
        Row {
            spacing: Theme.px(6)

            SpotSwatch {
                visible: root.spotColour >= 0
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.px(18)
                height: Theme.px(12)
                theme: Theme
                scheme: Theme.look
                colour: root.spotColour
                Accessible.ignored: true
            }
            Words {
                text: qsTr("%1; damage from %2").arg(root.spot).arg(root.damageLine)
                quiet: true
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
        }
    }
    Column {
        id: figure
        anchors.right: parent.right
        y: Theme.px(4)

        Words {
            anchors.right: parent.right
            text: root.chance
            strong: root.carry
            Accessible.ignored: true
        }
        Words {
            anchors.right: parent.right
            text: root.what
            quiet: true
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    NightRuler {
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.px(2)
        width: root.width
        height: Theme.px(24)
        theme: Theme
        scheme: Theme.look
        lowAt: root.lowAt
        middleAt: root.middleAt
        highAt: root.highAt
        lineAt: root.lineAt
        zeroAt: root.zeroAt
        spotColour: root.spotColour
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
