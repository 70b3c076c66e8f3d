import QtQuick
import Lathhouse.Models

// A plant on a shelf, or a free place.
Item {
    id: root
    objectName: "shelfPlant"

    property string name: ""
    property string words: ""
    property string hazard: ""
    property string sentence: ""
    property int habit: -1
    property bool fruit: false
    property int clay: 0
    /// Address of the photo that stands for it.
    property string picture: ""
    property bool marked: false
    property bool chosen: false
    property bool focused: false
    required property real lathY
    readonly property bool free: root.name === ""
    /// For all of its words.
    readonly property real needs: stateText.y + stateText.height + Theme.px(2)

    signal pressed(shift: bool)
    signal opened
    /// What can be done with it is asked there.
    signal actsAsked(x: real, y: real)
    signal carried(x: real, y: real)
    signal letGo

    z: pointer.containsMouse ? 1 : 0 // Its hint lies over the plants beside it.
    Accessible.role: root.free ? Accessible.StaticText : Accessible.ListItem
    Accessible.name: root.free ? qsTr("free place") : root.sentence
    Accessible.ignored: root.free
    Accessible.selected: root.chosen
    Accessible.checkable: !root.free
    Accessible.checked: root.marked
    Accessible.focusable: !root.free
    Accessible.focused: root.focused
    Accessible.onPressAction: root.opened()

    Rectangle {
        visible: root.chosen || root.marked || pointer.containsMouse && !root.free
        anchors.fill: parent
        radius: Theme.controlRadius
        color: root.chosen || root.marked ? Theme.select : Theme.well
        border.width: root.focused ? 2 : root.chosen ? 1 : Theme.contrast ? 1 : 0
        border.color: root.focused ? Theme.focus : root.chosen ? Theme.action : Theme.edge
    }
    Rectangle {
        visible: photo.status === Image.Ready && !root.free
        width: Math.min(parent.width - Theme.px(12), Theme.px(104))
        height: root.lathY - Theme.px(10)
        x: Math.round((parent.width - width) / 2)
        y: Theme.px(8)
        color: Theme.well
        border.width: 1
        border.color: Theme.edge

        Image {
            id: photo
            anchors.fill: parent
            anchors.margins: 1
            source: root.picture
            asynchronous: true
            fillMode: Image.PreserveAspectCrop
            sourceSize.height: 2 * height
        }
    }
    PlantDrawing {
        visible: photo.status !== Image.Ready || root.free
        x: Theme.px(2)
        y: Theme.px(3)
        width: parent.width - 2 * x
        height: root.lathY - y
        theme: Theme
        scheme: Theme.look
        habit: root.free ? -1 : root.habit
        fruit: root.fruit
        clay: root.clay
        Accessible.ignored: true
    }
    // The lath runs through what is chosen.
    Rectangle {
        visible: root.chosen || root.marked
        y: root.lathY
        width: parent.width
        height: Theme.px(5)
        color: Theme.lath
    }
    Text {
        id: nameText
        readonly property bool mayBeCut: true
        textFormat: Text.PlainText
        y: root.lathY + Theme.px(6)
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.horizontalCenterOffset: lozenge.visible ? -Theme.px(8) : 0
        width: Math.min(implicitWidth, root.width - Theme.px(lozenge.visible ? 26 : 8))
        text: root.free ? qsTr("free") : root.name
        color: root.free ? Theme.ink2 : Theme.ink
        elide: Text.ElideRight
        font.family: Theme.textFamily
        font.pixelSize: root.free ? Theme.smallSize : Theme.rowSize
        font.weight: root.free ? Font.Normal : Font.DemiBold
        Accessible.ignored: true
    }
    Lozenge {
        id: lozenge
        visible: root.hazard !== ""
        anchors.left: nameText.right
        anchors.leftMargin: Theme.px(5)
        anchors.verticalCenter: nameText.verticalCenter
        Accessible.ignored: true
    }
    Text {
        id: stateText
        textFormat: Text.PlainText
        anchors.top: nameText.bottom
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(implicitWidth, root.width - Theme.px(6))
        text: root.words
        color: root.chosen || root.marked ? Theme.ink : Theme.ink2
        wrapMode: Text.WordWrap
        horizontalAlignment: Text.AlignHCenter
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    // A mark is a filled box in the corner, not the ground alone.
    MarkBox {
        visible: root.marked
        x: Theme.px(6)
        y: Theme.px(6)
    }
    MouseArea {
        id: pointer
        anchors.fill: parent
        enabled: !root.free
        hoverEnabled: true
        acceptedButtons: Qt.LeftButton | Qt.RightButton
        // The pointer carries a plant to another shelf; a finger moves the shelves. Right, or held for long, it asks for acts.
        property point from
        property bool carrying: false
        property bool asked: false
        onPressed: mouse => {
            pointer.from = Qt.point(mouse.x, mouse.y);
            pointer.preventStealing = mouse.source === Qt.MouseEventNotSynthesized;
            pointer.carrying = false;
            pointer.asked = mouse.button === Qt.RightButton;
        }
        onPositionChanged: mouse => {
            const away = Math.abs(mouse.x - pointer.from.x) + Math.abs(mouse.y - pointer.from.y);
            if (pointer.pressed && !pointer.asked && mouse.source === Qt.MouseEventNotSynthesized && (pointer.carrying || away > Application.styleHints.startDragDistance)) {
                pointer.carrying = true;
                root.carried(mouse.x, mouse.y);
            }
        }
        onReleased: if (pointer.carrying)
            root.letGo()
        onCanceled: pointer.carrying = false
        onClicked: mouse => {
            if (pointer.carrying)
                return;
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
        onPressAndHold: mouse => {
            if (pointer.carrying || pointer.asked)
                return;
            pointer.asked = true;
            root.actsAsked(mouse.x, mouse.y);
        }
    }
    Hint {
        visible: pointer.containsMouse && (root.hazard !== "" || nameText.truncated)
        anchors.horizontalCenter: parent.horizontalCenter
        y: root.lathY - Theme.px(26)
        z: 10
        words: root.hazard === "" ? root.name : qsTr("%1: %2").arg(root.name).arg(root.hazard)
    }
}
