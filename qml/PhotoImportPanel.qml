pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Photographs on their way in: how far, Stop, and what was not taken with its reason.
Column {
    id: root

    required property PhotoImportModel coming
    readonly property int laths: 24
    readonly property int filled: root.coming.total === 0 ? 0 : Math.floor(root.laths * root.coming.done / root.coming.total)

    /// Whether there is anything to say of what comes in.
    readonly property bool wanted: root.coming.running && root.coming.late || root.coming.asking || root.coming.refused.count > 0 || root.coming.error !== ""

    /// The question is answered.
    signal answered

    visible: root.wanted
    spacing: Theme.px(6)

    PhotoDateAsked {
        visible: root.coming.asking
        width: parent.width
        coming: root.coming
        onTaken: root.answered()
    }
    Row {
        visible: root.coming.running
        spacing: Theme.px(12)
        Accessible.role: Accessible.ProgressBar
        Accessible.name: root.coming.words

        Row {
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.px(2)

            Repeater {
                model: root.laths

                Rectangle {
                    required property int index
                    width: Theme.px(7)
                    height: Theme.px(18)
                    color: index < root.filled ? Theme.action : "transparent"
                    border.width: 1
                    border.color: index < root.filled ? Theme.action : Theme.rule
                }
            }
        }
        Words {
            objectName: "importWords"
            anchors.verticalCenter: parent.verticalCenter
            text: root.coming.words
            Accessible.ignored: true
        }
        SheetButton {
            objectName: "stopImport"
            text: qsTr("Stop")
            reason: qsTr("What came in stays.")
            onClicked: root.coming.stop()
        }
    }
    Trouble {
        objectName: "importTrouble"
        width: parent.width
        words: root.coming.error
    }
    Repeater {
        model: root.coming.refused

        Words {
            required property int index
            required property string name
            required property string reason
            objectName: "refused" + index
            visible: index < 6
            width: root.width
            textFormat: Text.PlainText
            text: reason.indexOf(name) >= 0 ? qsTr("Not taken: %1").arg(reason) : qsTr("Not taken: %1: %2").arg(name).arg(reason)
            font.pixelSize: Theme.rowSize
        }
    }
    Words {
        visible: root.coming.refused.count > 6
        text: qsTr("and %1 more").arg(root.coming.refused.count - 6)
        quiet: true
        font.pixelSize: Theme.rowSize
    }
    SheetButton {
        objectName: "importSeen"
        visible: !root.coming.running && !root.coming.asking
        text: qsTr("Seen")
        reason: qsTr("Takes these lines away.")
        onClicked: root.coming.clear()
    }
}
