import QtQuick
import Lathhouse.Models

// A plant in the table.
Rectangle {
    id: root

    required property int index
    required property string name
    required property string botanical
    required property string spot
    required property int hand
    required property string state
    required property string next
    required property string hazard
    required property bool marked
    required property string sentence
    required property PlantTableColumns columns
    property bool chosen: false
    property bool focused: false

    readonly property real nameRoom: root.columns.spotX - root.columns.nameX - Theme.px(8)
    /// The botanical name stands below the plant's own where it has no room beside it.
    readonly property bool stacked: root.columns.narrow || nameCell.implicitWidth + Theme.px(8) + botanicalText.implicitWidth > root.nameRoom

    signal pressed(shift: bool)
    signal opened
    /// What can be done with it is asked there.
    signal actsAsked(x: real, y: real)

    z: pointer.containsMouse ? 1 : 0 // Its hint lies over the row below.
    implicitHeight: Math.max(Theme.target(root.columns.narrow ? 44 : 32), Math.max(root.stacked ? nameCell.implicitHeight + botanicalText.implicitHeight : 0, spotCell.implicitHeight, stateCell.implicitHeight, root.columns.narrow ? 0 : Math.max(nextCell.implicitHeight, hazardCell.implicitHeight)) + Theme.px(10))
    color: root.chosen || root.marked ? Theme.select : pointer.containsMouse ? Theme.well : "transparent"
    border.width: root.focused ? 2 : Theme.contrast && root.chosen ? 1 : 0
    border.color: root.focused ? Theme.focus : Theme.edge
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence
    Accessible.selected: root.chosen
    Accessible.checkable: true
    Accessible.checked: root.marked
    Accessible.focusable: true
    Accessible.focused: root.focused
    Accessible.onPressAction: root.opened()

    Rectangle {
        visible: root.chosen
        width: 4
        height: parent.height
        color: Theme.action
    }
    MouseArea {
        id: pointer
        anchors.fill: parent
        hoverEnabled: true
        acceptedButtons: Qt.LeftButton | Qt.RightButton
        onClicked: mouse => {
            if (mouse.button === Qt.RightButton) {
                root.actsAsked(mouse.x, mouse.y);
                return;
            }
            root.pressed((mouse.modifiers & (Qt.ControlModifier | Qt.ShiftModifier)) !== 0);
            if (mouse.source !== Qt.MouseEventNotSynthesized) // One tap of a finger is enough.
                root.opened();
        }
        onDoubleClicked: mouse => {
            if (mouse.button === Qt.LeftButton && mouse.source === Qt.MouseEventNotSynthesized)
                root.opened();
        }
        onPressAndHold: mouse => root.actsAsked(mouse.x, mouse.y)
    }
    MarkBox {
        visible: root.marked
        x: Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
    }
    TableCell {
        id: nameCell
        mayBeCut: true
        x: root.columns.nameX
        width: Math.min(implicitWidth, root.nameRoom)
        y: root.stacked ? Math.round((parent.height - nameCell.implicitHeight - botanicalText.implicitHeight) / 2) : 0
        height: root.stacked ? implicitHeight : parent.height
        text: root.name
        strong: true
    }
    Text {
        id: botanicalText
        textFormat: Text.PlainText
        x: root.stacked ? nameCell.x : nameCell.x + nameCell.width + Theme.px(8)
        y: root.stacked ? nameCell.y + nameCell.height : 0
        width: root.stacked ? root.nameRoom : implicitWidth
        height: root.stacked ? implicitHeight : parent.height
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
        text: root.botanical
        color: root.chosen || root.marked ? Theme.ink : Theme.ink2
        font.family: Theme.titleFamily
        font.italic: true
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
    SpotSwatch {
        visible: root.hand >= 0
        x: root.columns.spotX
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.px(18)
        height: Theme.px(12)
        theme: Theme
        scheme: Theme.look
        colour: root.hand
        Accessible.ignored: true
    }
    TableCell {
        id: spotCell
        x: root.columns.spotX + Theme.px(26)
        width: root.columns.stateX - x - Theme.px(8)
        height: parent.height
        text: root.spot
    }
    TableCell {
        id: stateCell
        x: root.columns.stateX
        width: root.columns.nextX - x - Theme.px(8)
        height: parent.height
        text: root.state
    }
    TableCell {
        id: nextCell
        visible: !root.columns.narrow
        x: root.columns.nextX
        width: root.columns.hazardX - x - Theme.px(8)
        height: parent.height
        text: root.next
    }
    Lozenge {
        visible: root.hazard !== ""
        x: root.columns.hazardX
        anchors.verticalCenter: parent.verticalCenter
    }
    TableCell {
        id: hazardCell
        visible: !root.columns.narrow
        x: root.columns.hazardX + Theme.px(18)
        width: root.width - x - Theme.px(6)
        height: parent.height
        text: root.hazard
    }
    Hint {
        visible: pointer.containsMouse && nameCell.truncated
        x: root.columns.nameX
        y: root.height - Theme.px(4)
        z: 10
        words: root.name
    }
    Rectangle {
        anchors.bottom: parent.bottom
        visible: !root.focused
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
