pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The photograph that is measured in: marks set by the mouse and moved by keys, with a glass over the chosen one.
Rectangle {
    id: root

    required property MeasureModel measure
    /// How marks are set, to be read aloud.
    required property string hint
    /// Also where all else is mirrored.
    readonly property bool keepsSides: true
    readonly property real imageScale: pane.place.width > 0 ? pane.place.width / root.measure.imageWidth : 1

    color: Theme.well
    border.width: 1
    border.color: Theme.edge
    focus: true
    activeFocusOnTab: true
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Photograph with marks, %1").arg(root.measure.chosenWords)
    Accessible.description: root.hint

    function toPhoto(x: real, y: real): point {
        return Qt.point((x - pane.x - pane.place.x) / root.imageScale, (y - pane.y - pane.place.y) / root.imageScale);
    }

    Keys.onPressed: event => {
        const far = (event.modifiers & Qt.ShiftModifier) !== 0 ? 10 : 1;
        event.accepted = true;
        if (event.key === Qt.Key_Left)
            root.measure.nudge(-far, 0);
        else if (event.key === Qt.Key_Right)
            root.measure.nudge(far, 0);
        else if (event.key === Qt.Key_Up)
            root.measure.nudge(0, -far);
        else if (event.key === Qt.Key_Down)
            root.measure.nudge(0, far);
        else if (event.key === Qt.Key_Backspace)
            root.measure.takeBack();
        else if (event.key === Qt.Key_Tab)
            event.accepted = root.measure.step(1);
        else if (event.key === Qt.Key_Backtab)
            event.accepted = root.measure.step(-1);
        else
            event.accepted = false;
    }

    PhotoPane {
        id: pane
        objectName: "measurePane"
        anchors.fill: parent
        anchors.margins: 1
        image: root.measure.image
    }
    MeasureMarks {
        anchors.fill: pane
        theme: Theme
        scheme: Theme.look
        measure: root.measure
        place: pane.place
    }
    MouseArea {
        id: pointer
        objectName: "measurePointer"
        anchors.fill: parent
        cursorShape: Qt.CrossCursor
        preventStealing: true
        property int held: -1

        onPressed: mouse => {
            root.forceActiveFocus();
            const there = root.toPhoto(mouse.x, mouse.y);
            pointer.held = root.measure.place(there.x, there.y, Math.max(Theme.px(14), Theme.target(0) / 2) / root.imageScale, 1 / root.imageScale);
        }
        onPositionChanged: mouse => {
            const there = root.toPhoto(mouse.x, mouse.y);
            if (pointer.held >= 0)
                root.measure.move(pointer.held, there.x, there.y, 1 / root.imageScale);
        }
        onReleased: pointer.held = -1
    }
    // The glass stands in the corner away from the point.
    Item {
        id: glass
        objectName: "glass"
        readonly property point chosenAt: root.measure.marks >= 0 && root.measure.isSet(root.measure.chosen) ? root.measure.at(root.measure.chosen) : Qt.point(-1, -1)
        readonly property bool atLeft: glass.chosenAt.x * root.imageScale > pane.place.width / 2
        readonly property bool below: glass.chosenAt.y * root.imageScale < pane.place.height / 2
        visible: glass.chosenAt.x >= 0
        width: Theme.px(150)
        height: width + Theme.px(30)
        x: glass.atLeft ? Theme.px(12) : root.width - width - Theme.px(12)
        y: glass.below ? root.height - height - Theme.px(8) : Theme.px(12)

        PhotoPane {
            width: parent.width
            height: width
            image: root.measure.image
            round: true
            magnify: 4 * root.imageScale
            middle: glass.chosenAt
        }
        Rectangle {
            width: parent.width
            height: width
            radius: width / 2
            color: "transparent"
            border.width: 3
            border.color: Theme.ink
        }
        Rectangle {
            y: Math.round(parent.width / 2)
            width: parent.width
            height: 1
            color: "#9C3810"
        }
        Rectangle {
            x: Math.round(parent.width / 2)
            width: 1
            height: parent.width
            color: "#9C3810"
        }
        Rectangle {
            anchors.bottom: parent.bottom
            anchors.horizontalCenter: parent.horizontalCenter
            width: glassWords.implicitWidth + Theme.px(14)
            height: Theme.px(24)
            radius: Theme.sheetRadius
            color: Theme.sheet

            Words {
                id: glassWords
                anchors.centerIn: parent
                text: qsTr("%1, 4 times").arg(root.measure.chosenWords)
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
        }
    }
    FocusRing {
        visible: root.activeFocus
    }
}
