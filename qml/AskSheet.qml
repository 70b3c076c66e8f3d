pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// What a grower asks of a plant: the questions, and beside them what the program says to that.
SheetFrame {
    id: root

    required property AskModel ask
    /// A form without questions has the room for its answer.
    readonly property bool beside: cells.count > 0 && root.room >= Theme.px(760)
    readonly property real questionWidth: root.beside ? Math.round(0.46 * root.room) : root.room
    readonly property bool inTwo: root.questionWidth >= Theme.px(430)
    /// Whether the first question has the keys already.
    property bool begun: false

    signal closed

    part: "ask"
    most: Theme.px(1140)
    title: root.ask.title
    visible: root.ask.open

    Component.onCompleted: root.opened()
    onEscaped: root.ask.leave()

    function opened(): void {
        root.begun = false;
        root.toTop();
        if (!root.ask.open) {
            root.closed();
            return;
        }
        closeButton.forceActiveFocus();
        root.beginFirst();
    }
    function beginFirst(): void {
        for (let at = 0; !root.begun && at < cells.count; ++at) {
            const cell = cells.itemAt(at) as AskCell;
            if (cell !== null && cell.shown) {
                root.begun = true;
                cell.focusIt();
            }
        }
    }

    Shortcut {
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        enabled: root.visible
        onActivated: root.ask.write()
    }
    Connections {
        target: root.ask
        function onOpenChanged(): void {
            root.opened();
        }
        function onAskedChanged(): void {
            root.beginFirst();
        }
        function onWrong(key: int): void {
            for (let at = 0; at < cells.count; ++at) {
                const cell = cells.itemAt(at) as AskCell;
                if (cell.key === key)
                    cell.focusIt();
            }
        }
    }
    lead: [
        Words {
            objectName: "askHeadline"
            width: parent.width
            text: root.ask.headline
            font.family: Theme.titleFamily
            font.pixelSize: Theme.headSize
            Accessible.role: Accessible.AlertMessage
        },
        Item { // It stays in sight however long the questions are.
            visible: root.ask.warning !== ""
            width: parent.width
            height: warning.height + Theme.px(4)

            Lozenge {
                y: warning.y + Theme.px(4)
            }
            Words {
                id: warning
                objectName: "askWarning"
                x: Theme.px(20)
                y: Theme.px(2)
                width: parent.width - x
                text: root.ask.warning
                strong: true
                color: Theme.caution
                font.pixelSize: Theme.rowSize
                Accessible.role: Accessible.AlertMessage
            }
        }
    ]
    Item {
        width: root.room
        height: root.beside ? Math.max(questions.height, answer.height) : answer.y + answer.height

        Flow {
            id: questions
            width: root.questionWidth
            spacing: Theme.px(12)

            Repeater {
                id: cells
                model: root.ask.questions

                AskCell {
                    ask: root.ask
                    width: several || count > 4 || !root.inTwo ? questions.width : Math.floor((questions.width - questions.spacing) / 2)
                }
            }
        }
        Rectangle {
            id: answer
            objectName: "askAnswer"
            visible: lines.count > 0
            x: root.beside ? root.questionWidth + Theme.px(24) : 0
            // It stays in sight beside questions that go on for longer.
            y: !root.beside ? questions.height + (cells.count > 0 ? Theme.px(16) : 0) : Math.max(0, Math.min(root.scrolled, questions.height - height))
            width: root.room - x
            height: said.height + Theme.px(20)
            color: Theme.well
            border.width: Theme.contrast ? 1 : 0
            border.color: Theme.edge

            Column {
                id: said
                x: Theme.px(14)
                y: Theme.px(10)
                width: parent.width - 2 * x
                spacing: Theme.px(5)

                Repeater {
                    id: lines
                    model: root.ask.lines

                    AskLine {
                        width: said.width
                    }
                }
            }
        }
    }
    acts: [
        Words {
            objectName: "askWhyNot"
            visible: text !== ""
            width: parent.width
            text: root.ask.whyNot
            quiet: true
            font.pixelSize: Theme.smallSize
        },
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            ActButton {
                objectName: "askWrite"
                visible: root.ask.canWrite
                text: root.ask.what === AskModel.Spray ? qsTr("Sprayed: write it down") : qsTr("Write it down")
                reason: qsTr("Control and Enter. Into the journal of the plant; Undo takes it back.")
                onClicked: root.ask.write()
            }
            SheetButton {
                id: closeButton
                objectName: "askClose"
                text: qsTr("Close")
                reason: qsTr("Escape")
                onClicked: root.ask.leave()
            }
        }
    ]
}
