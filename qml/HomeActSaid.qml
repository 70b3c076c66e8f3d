import QtQuick
import Lathhouse.Models

// Where an act stands: the question before it, how far it has come, what it did, or what is wrong.
Column {
    id: root

    required property HomeDataModel keeping
    /// As HomeDataModel.Act.
    required property int act
    readonly property bool here: root.keeping.about === root.act
    readonly property bool asks: root.keeping.asking === root.act

    /// The question was answered; the focus is to go where the act is asked for.
    signal answered

    spacing: Theme.px(8)

    Rectangle {
        objectName: "question" + root.act
        visible: root.asks
        // Once what stands around it has its place too, so that it is scrolled into sight.
        onVisibleChanged: if (visible) settled.start()
        width: root.width
        height: visible ? question.height + Theme.px(24) : 0
        color: Theme.warmWash
        radius: Theme.controlRadius
        border.width: 1
        border.color: Theme.edge
        Accessible.role: Accessible.AlertMessage
        Accessible.name: root.keeping.leavesWords
        Keys.onEscapePressed: {
            root.answered();
            root.keeping.answer(false);
        }

        Timer {
            id: settled
            interval: 50
            onTriggered: if (root.asks)
                yes.forceActiveFocus()
        }
        Column {
            id: question
            x: Theme.px(12)
            y: Theme.px(12)
            width: parent.width - 2 * x
            spacing: Theme.px(10)

            Words {
                width: parent.width
                text: qsTr("%1 Keep it where you would keep a key, and give it to nobody who need not know where you live.").arg(root.keeping.leavesWords)
            }
            Flow {
                width: parent.width
                spacing: Theme.px(8)

                SheetButton {
                    id: yes
                    objectName: "yesButton" + root.act
                    text: qsTr("Write it")
                    reason: qsTr("Asked once; changed under What may leave the folder")
                    onClicked: {
                        root.answered();
                        root.keeping.answer(true);
                    }
                }
                SheetButton {
                    objectName: "noButton" + root.act
                    text: qsTr("Do not write it")
                    onClicked: {
                        root.answered();
                        root.keeping.answer(false);
                    }
                }
            }
        }
    }
    LathProgress {
        objectName: "progress" + root.act
        visible: root.keeping.running === root.act && root.keeping.late
        width: root.width
        share: root.keeping.share
        words: root.keeping.progress
        stopping: root.keeping.stopping
        onStop: root.keeping.stop()
    }
    Trouble {
        visible: root.here && root.keeping.error !== ""
        width: root.width
        words: root.here ? root.keeping.error : ""
    }
    Words {
        objectName: "said" + root.act
        visible: root.here && text !== ""
        width: root.width
        text: root.keeping.said
        strong: true
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        Accessible.role: Accessible.StatusBar
    }
    SheetButton {
        objectName: "openButton" + root.act
        visible: root.here && root.keeping.brought !== ""
        text: qsTr("Open it in a window of its own")
        reason: qsTr("This window and its household stay as they are")
        onClicked: root.keeping.openBrought()
    }
}
