import QtQuick
import Lathhouse.Models

// A plant outdoors on a cold night: where harm begins on tonight's ruler, its chance, where it goes and whether it is in.
Item {
    id: root

    required property int index
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
    required property int plantId
    required property string shelter
    required property string order
    required property real nameWidth
    required property real rulerX
    required property real rulerWidth
    required property real chanceWidth
    required property real whereWidth
    required property real tickWidth
    /// The first that may stay has that written over it.
    required property bool firstToStay
    required property RoundModel round
    required property bool narrow
    required property real zeroAt
    /// 0 it may stay, 1 it must come in, 2 it is in. (What is left tells of every tick.)
    readonly property int inside: root.round.carriesLeft >= 0 ? root.round.carryOf(root.plantId) : 0
    readonly property real stayHeight: root.firstToStay ? stay.height + Theme.px(14) : 0
    /// Up and down go to the next that can be ticked.
    signal walk(step: int)

    implicitHeight: root.stayHeight + body.height
    activeFocusOnTab: root.inside !== 0 || root.activeFocus
    Accessible.role: root.inside !== 0 ? Accessible.CheckBox : Accessible.ListItem
    Accessible.name: root.inside === 0 ? root.sentence : root.inside === 1 ? qsTr("%1 Not yet in.").arg(root.sentence) : qsTr("%1 It is in.").arg(root.sentence)
    Accessible.checkable: root.inside !== 0
    Accessible.checked: root.inside === 2
    Accessible.focusable: root.inside !== 0
    Accessible.onPressAction: root.round.tickCarry(root.plantId)
    Accessible.onToggleAction: root.round.tickCarry(root.plantId)
    Keys.onSpacePressed: root.round.tickCarry(root.plantId)
    Keys.onUpPressed: root.walk(-1)
    Keys.onDownPressed: root.walk(1)

    Words {
        id: stay
        visible: root.stayHeight > 0
        y: Theme.px(10)
        width: root.width
        text: qsTr("May stay; the next look is tomorrow")
        strong: true
        Accessible.ignored: true
    }
    Rectangle {
        id: body
        y: root.stayHeight
        width: root.width
        height: Math.max(Theme.px(50), name.height + Theme.px(10) + (root.narrow ? ruler.height : 0))
        color: pointer.containsMouse && root.inside !== 0 ? Theme.well : "transparent"
        border.width: root.activeFocus ? 2 : 0
        border.color: Theme.focus

        MouseArea {
            id: pointer
            objectName: "coldTick"
            anchors.fill: parent
            enabled: root.inside !== 0
            hoverEnabled: true
            onClicked: root.round.tickCarry(root.plantId)
        }
        Column {
            id: name
            x: Theme.px(8)
            y: Theme.px(5)
            width: root.nameWidth - x

            Words {
                width: parent.width
                text: root.narrow ? qsTr("%1, %2").arg(root.plant).arg(root.chance) : root.plant
                strong: root.carry
                Accessible.ignored: true
            }
            Row {
                width: parent.width
                spacing: Theme.px(6)

                SpotSwatch {
                    id: swatch
                    visible: root.spotColour >= 0
                    y: Theme.px(3)
                    width: Theme.px(18)
                    height: Theme.px(12)
                    theme: Theme
                    scheme: Theme.look
                    colour: root.spotColour
                    Accessible.ignored: true
                }
                Words {
                    width: parent.width - Theme.px(24)
                    text: root.narrow ? qsTr("%1; damage from %2").arg(root.spot).arg(root.damageLine) : root.spot
                    quiet: true
                    font.pixelSize: Theme.smallSize
                    Accessible.ignored: true
                }
            }
            Words {
                visible: text !== ""
                width: parent.width
                text: root.narrow && root.order !== "" ? qsTr("%1; %2").arg(where.text).arg(root.order) : root.narrow ? where.text : root.order
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
        }
        Item {
            id: ruler
            readonly property bool keepsSides: true
            x: root.rulerX
            y: root.narrow ? name.y + name.height : Math.round((body.height - height) / 2) - Theme.px(6)
            width: root.rulerWidth
            height: Theme.px(26)

            NightRuler {
                anchors.fill: parent
                theme: Theme
                scheme: Theme.look
                lowAt: root.lowAt
                middleAt: root.middleAt
                highAt: root.highAt
                lineAt: root.lineAt
                zeroAt: root.zeroAt
                spotColour: root.spotColour
            }
            Words {
                id: line
                readonly property real markX: 2 + (ruler.width - 4) * root.lineAt
                visible: !root.narrow
                x: line.markX + 5 + implicitWidth <= ruler.width ? line.markX + 5 : line.markX - 5 - implicitWidth
                y: ruler.height - Theme.px(4)
                width: implicitWidth
                text: root.damageLine
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
        }
        Words {
            visible: !root.narrow
            x: root.rulerX + root.rulerWidth + Theme.px(8)
            width: root.chanceWidth - Theme.px(8)
            anchors.verticalCenter: parent.verticalCenter
            horizontalAlignment: Text.AlignRight
            text: root.chance
            strong: root.carry
            Accessible.ignored: true
        }
        Words {
            id: where
            visible: !root.narrow
            x: root.width - root.tickWidth - root.whereWidth
            width: root.whereWidth
            anchors.verticalCenter: parent.verticalCenter
            text: root.shelter !== "" ? (root.narrow ? qsTr("to %1").arg(root.shelter) : root.shelter) : root.what
            quiet: !root.carry
            Accessible.ignored: true
        }
        TickBox {
            objectName: "coldTickBox"
            visible: root.inside !== 0
            anchors.right: parent.right
            anchors.rightMargin: Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            ticked: root.inside === 2
            Accessible.ignored: true
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
    }
}
