pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// The place, the light of its spots, and what their thermometers have taught.
FocusScope {
    id: root

    required property HomeModel home
    required property bool narrow
    readonly property real side: root.narrow ? 11 : 19
    readonly property list<string> sections: [qsTr("Place"), qsTr("Spots"), qsTr("Thermometer")]
    readonly property bool placeShown: root.home.section === 0
    readonly property bool spotsShown: root.home.section === 1
    readonly property bool nightsShown: root.home.section === 2

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Home")

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Right && !control)
            root.home.section += 1;
        else if (event.key === Qt.Key_Left && !control)
            root.home.section -= 1;
        else if (event.key === Qt.Key_T && !control)
            root.turn();
        else if (event.key === Qt.Key_Down && !control)
            root.step(1);
        else if (event.key === Qt.Key_Up && !control)
            root.step(-1);
        else if (event.key === Qt.Key_PageDown)
            root.scroll(0.8);
        else if (event.key === Qt.Key_PageUp)
            root.scroll(-0.8);
        else if (event.key === Qt.Key_L && control && root.nightsShown)
            nights.focusField();
        else if (event.key === Qt.Key_F5)
            root.home.reload();
        else
            event.accepted = false;
    }

    /// Chart or table, where the section has both.
    function turn(): void {
        if (root.placeShown)
            place.asTable = !place.asTable;
        else if (root.spotsShown)
            spots.asTable = !spots.asTable;
        else
            nights.asTable = !nights.asTable;
    }
    /// The next or last spot of the section.
    function step(by: int): void {
        if (root.spotsShown)
            root.home.spot += by;
        else if (root.nightsShown)
            root.home.outdoor += by;
        else
            root.scroll(by * 0.1);
    }
    function scroll(by: real): void {
        const most = Math.max(0, sheet.contentHeight - sheet.height);
        sheet.contentY = Math.max(0, Math.min(most, sheet.contentY + by * sheet.height));
    }

    Flow {
        id: head
        x: root.side
        y: 10
        width: root.width - 2 * root.side
        spacing: Theme.px(8)

        Heading {
            height: Theme.px(36)
            rightPadding: Theme.px(20)
            text: qsTr("Home")
            font.pixelSize: Theme.titleSize
        }
        Repeater {
            model: root.sections

            Chip {
                required property string modelData
                required property int index
                objectName: "section" + index
                height: Theme.px(32)
                text: modelData
                reason: qsTr("Left and Right go through the sections")
                on: root.home.section === index
                onClicked: {
                    root.home.section = index;
                    sheet.contentY = 0;
                }
            }
        }
    }
    Rectangle {
        id: failure
        objectName: "homeFailure"
        visible: root.home.error !== "" && !root.home.known
        x: root.side
        y: head.y + head.height + Theme.px(10)
        width: root.width - 2 * root.side
        height: visible ? Math.max(failureText.height, again.height) + Theme.px(16) : 0
        color: Theme.cautionWash
        border.width: 1
        border.color: Theme.caution
        Accessible.role: Accessible.AlertMessage
        Accessible.name: root.home.error

        Words {
            id: failureText
            x: Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            width: again.x - x - Theme.px(12)
            text: root.home.error
            Accessible.ignored: true
        }
        SheetButton {
            id: again
            anchors.right: parent.right
            anchors.rightMargin: Theme.px(8)
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Read again")
            reason: qsTr("Key F5. Reads the household anew.")
            onClicked: root.home.reload()
        }
    }
    Words {
        visible: !root.home.known && root.home.late
        x: root.side
        y: head.y + head.height + Theme.px(24)
        text: qsTr("The place is being worked out.")
        quiet: true
    }
    Flickable {
        id: sheet
        objectName: "homeSheet"
        visible: root.home.known
        x: root.side
        y: head.y + head.height + Theme.px(10)
        width: root.width - x - 8
        height: root.height - y - 4
        contentHeight: (root.placeShown ? place.height : root.spotsShown ? spots.height : nights.height) + Theme.px(12)
        clip: true
        focus: true
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.Pane
        Accessible.name: root.sections[root.home.section]

        ScrollBar.vertical: ScrollBar {
            policy: sheet.contentHeight > sheet.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            width: 8
            Accessible.ignored: true
        }
        HomePlace {
            id: place
            objectName: "homePlace"
            visible: root.placeShown
            width: sheet.width - 12
            home: root.home
            narrow: root.narrow
        }
        HomeSpots {
            id: spots
            objectName: "homeSpots"
            visible: root.spotsShown
            width: sheet.width - 12
            home: root.home
            narrow: root.narrow
        }
        HomeNights {
            id: nights
            objectName: "homeNights"
            visible: root.nightsShown
            width: sheet.width - 12
            home: root.home
            narrow: root.narrow
        }
    }
    Rectangle {
        anchors.fill: sheet
        anchors.margins: -6
        visible: sheet.activeFocus
        color: "transparent"
        border.width: 2
        border.color: Theme.focus
    }
}
