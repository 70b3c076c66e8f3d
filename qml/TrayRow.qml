import QtQuick
import Lathhouse.Models

// A tray of seedlings: how many have come up, with one more and one fewer.
Item {
    id: root

    required property int index
    required property string head
    required property int emerged
    required property int seeds
    required property string expected
    required property bool last
    required property string sentence
    /// Seedlings that are in no pot yet.
    required property int toPot
    required property SeedsModel page
    /// Which cells of the trays were pressed, by head.
    required property var cellsOfTrays

    property bool potting: false
    /// More than that are counted better than pressed.
    readonly property int mostCells: 60

    implicitHeight: counts.y + counts.height + (pots.visible ? pots.height + Theme.px(8) : 0) + Theme.px(14)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence

    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Plus)
            root.page.count(root.index, 1);
        else if (event.key === Qt.Key_Minus)
            root.page.count(root.index, -1);
        else
            event.accepted = false;
    }

    Column {
        id: words
        y: Theme.px(6)
        width: root.width

        Words {
            width: parent.width
            text: root.head
            strong: true
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            text: root.expected
            quiet: true
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    TrayCells {
        id: cells
        objectName: "trayCells"
        visible: root.seeds <= root.mostCells
        y: words.y + words.height + Theme.px(6)
        width: root.width
        head: root.head
        emerged: root.emerged
        seeds: root.seeds <= root.mostCells ? root.seeds : 0
        remembered: root.cellsOfTrays
        onCounted: more => root.page.count(root.index, more)
    }
    Flow {
        id: counts
        y: cells.visible ? cells.y + cells.height + Theme.px(8) : words.y + words.height + Theme.px(6)
        width: root.width
        spacing: Theme.px(8)

        SheetButton {
            objectName: "fewerButton"
            width: Theme.target(40)
            text: "−"
            Accessible.name: qsTr("One fewer in %1").arg(root.head)
            reason: qsTr("Key −")
            onClicked: root.page.count(root.index, -1)
        }
        Words {
            objectName: "countWords"
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            textFormat: Text.StyledText
            text: qsTr("<b>%1</b> of %2 up").arg(root.emerged).arg(root.seeds)
            Accessible.name: qsTr("%1 of %2 up").arg(root.emerged).arg(root.seeds)
        }
        SheetButton {
            objectName: "moreButton"
            width: Theme.target(40)
            text: "+"
            Accessible.name: qsTr("One more in %1").arg(root.head)
            reason: qsTr("Key +")
            onClicked: root.page.count(root.index, 1)
        }
        Chip {
            objectName: "lastChip"
            spokenRole: Accessible.CheckBox
            height: Theme.target(32)
            text: qsTr("no more to come")
            reason: qsTr("The counting is over; only then does the tray change the lot’s share")
            on: root.last
            onClicked: root.page.setLast(root.index, !root.last)
        }
        SheetButton {
            id: potButton
            objectName: "potButton"
            visible: root.toPot > 0 && !root.potting
            text: qsTr("Pot seedlings up")
            reason: qsTr("Seedlings of this tray become plants, each in a pot of its own")
            onClicked: {
                root.potting = true;
                pots.open();
            }
        }
    }
    PotUp {
        id: pots
        visible: root.potting
        y: counts.y + counts.height + Theme.px(8)
        width: root.width
        page: root.page
        tray: root.index
        onClosed: {
            root.potting = false;
            potButton.forceActiveFocus();
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
