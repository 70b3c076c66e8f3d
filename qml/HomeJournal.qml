pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// All that happened in the household and was measured, newest first, and what happened at a spot or to all of it to be logged.
Item {
    id: root

    required property HomeJournalModel journal
    required property bool narrow
    /// Height that is there for it.
    required property real room
    /// Whom it happened to stands above what it was, where there is no width for both.
    readonly property bool stacked: root.narrow || Theme.wideText
    /// Wide enough for every date that was shown so far: months have names of many lengths.
    property real dateWidth: Theme.px(120)

    implicitHeight: Math.max(root.room, head.height + Theme.px(240))

    signal plantAsked(plant: int)

    function openLog(): void {
        if (root.journal.places.length === 0)
            return;
        log.visible = true;
        log.focusFirst();
    }
    /// The page of the plant that a row is of; nothing where it is of none.
    function openPlant(at: int): void {
        const plant = root.journal.rows.at(at, "plant") ?? 0;
        if (plant !== 0)
            root.plantAsked(plant);
    }
    function focusRows(): void {
        list.forceActiveFocus();
    }

    Column {
        id: head
        width: root.width
        spacing: Theme.px(8)

        Flow {
            width: parent.width
            spacing: Theme.px(12)

            Heading {
                width: Math.min(implicitWidth, parent.width)
                height: Math.max(Theme.target(34), implicitHeight)
                verticalAlignment: Text.AlignVCenter
                text: qsTr("What happened in the household")
            }
            SheetField {
                id: find
                objectName: "journalFind"
                least: Theme.px(260)
                most: root.width
                height: Theme.target(34)
                label: qsTr("Words to look for: a plant, a spot, what, when")
                placeholderText: qsTr("words to look for")
                onTextEdited: root.journal.find = find.text
                Keys.onDownPressed: list.forceActiveFocus()
            }
            SheetButton {
                objectName: "journalLogButton"
                visible: root.journal.places.length > 0
                height: Math.max(Theme.target(34), implicitHeight)
                text: qsTr("Log something without a plant")
                reason: qsTr("Control and L. At a spot, or in the whole household. Of a plant it is logged under Plants.")
                onClicked: root.openLog()
            }
        }
        HomeJournalLog {
            id: log
            objectName: "journalLog"
            visible: false
            width: parent.width
            journal: root.journal
            onClosed: {
                log.visible = false;
                list.forceActiveFocus();
            }
        }
        Words {
            objectName: "journalSaid"
            visible: text !== ""
            width: parent.width
            text: root.journal.said
            strong: true
            Accessible.role: Accessible.StatusBar
        }
        ReadAgain {
            objectName: "journalFailure"
            width: parent.width
            error: root.journal.wrong === HomeJournalModel.Nothing ? root.journal.error : ""
            onAgain: root.journal.reload()
        }
        Words {
            objectName: "journalLine"
            visible: text !== ""
            width: parent.width
            text: !root.journal.known && root.journal.late ? qsTr("The journal is being read.") : root.journal.line
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    ListView {
        id: list
        objectName: "journalRows"
        y: head.height + Theme.px(8)
        width: root.width
        height: root.implicitHeight - y
        clip: true
        model: root.journal.rows
        boundsBehavior: Flickable.StopAtBounds
        activeFocusOnTab: true
        highlightMoveDuration: 0
        cacheBuffer: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Journal")
        onActiveFocusChanged: if (list.activeFocus && list.currentIndex < 0)
            list.currentIndex = 0
        Keys.onReturnPressed: root.openPlant(list.currentIndex)
        Keys.onEnterPressed: root.openPlant(list.currentIndex)
        Keys.onPressed: event => {
            const rows = Math.max(1, Math.floor(list.height / Theme.px(28)) - 1);
            const to = event.key === Qt.Key_PageDown ? list.currentIndex + rows : event.key === Qt.Key_PageUp ? list.currentIndex - rows : event.key === Qt.Key_Home ? 0 : event.key === Qt.Key_End ? list.count - 1 : NaN;
            event.accepted = !isNaN(to);
            if (event.accepted)
                list.currentIndex = Math.max(0, Math.min(list.count - 1, to));
        }

        ScrollBar.vertical: SheetScrollBar {}
        delegate: Item {
            id: row

            required property int index
            required property string date
            required property string who
            required property string what
            required property int plant
            required property string sentence
            readonly property real first: root.dateWidth
            readonly property real second: root.stacked ? 0 : Theme.px(220)

            width: list.width - 12
            height: (root.stacked ? words.y + words.height : Math.max(whom.height, words.height)) + Theme.px(9)
            Accessible.role: Accessible.ListItem
            Accessible.name: row.sentence
            Accessible.description: row.plant !== 0 ? qsTr("Enter or a double click opens the plant’s page.") : ""
            Accessible.onPressAction: root.openPlant(row.index)

            Rectangle { // Chosen by the keys.
                anchors.fill: parent
                visible: list.activeFocus && row.ListView.isCurrentItem
                color: "transparent"
                border.width: 2
                border.color: Theme.focus
            }
            TableCell {
                x: Theme.px(6)
                y: Theme.px(4)
                width: row.first
                text: row.date
                strong: true
                wrapMode: Text.NoWrap
                onImplicitWidthChanged: root.dateWidth = Math.max(root.dateWidth, Math.ceil(implicitWidth) + 1)
            }
            Words {
                id: whom
                x: Theme.px(14) + row.first
                y: Theme.px(4)
                width: root.stacked ? row.width - x - Theme.px(6) : row.second
                height: visible ? implicitHeight : 0
                visible: row.who !== ""
                text: row.who
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
            Words {
                id: words
                x: Theme.px(14) + row.first + (root.stacked ? 0 : row.second + Theme.px(8))
                y: Theme.px(4) + (root.stacked ? whom.height : 0)
                width: row.width - x - Theme.px(6)
                text: row.what
                font.pixelSize: Theme.rowSize
                quiet: root.stacked && row.who !== ""
                Accessible.ignored: true
            }
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: 1
                color: Theme.rule
            }
            TapHandler {
                onTapped: {
                    list.currentIndex = row.index;
                    list.forceActiveFocus();
                }
                onDoubleTapped: root.openPlant(row.index)
            }
        }
    }
}
