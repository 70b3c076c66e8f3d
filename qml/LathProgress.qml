pragma ComponentBehavior: Bound

import QtQuick

// How far long work has come: laths that fill a bar, the same in words, and Stop.
Item {
    id: root

    /// 0..1.
    required property real share
    required property string words
    property bool stopping: false
    readonly property int laths: 24

    signal stop

    implicitHeight: flow.height
    Accessible.role: Accessible.ProgressBar
    Accessible.name: root.words

    Flow {
        id: flow
        width: root.width
        spacing: Theme.px(12)

        Item {
            width: Math.min(root.width, Theme.px(240))
            height: Theme.px(32)
            Accessible.ignored: true

            Row {
                id: bar
                anchors.fill: parent
                anchors.topMargin: Theme.px(5)
                anchors.bottomMargin: Theme.px(5)
                spacing: 2

                Repeater {
                    model: root.laths

                    Rectangle {
                        required property int index
                        readonly property bool filled: index < Math.floor(root.share * root.laths + 1e-9)
                        width: (bar.width - (root.laths - 1) * 2) / root.laths
                        height: bar.height
                        color: filled ? Theme.action : Theme.sheet
                        border.width: filled ? 0 : 1
                        border.color: Theme.edge
                    }
                }
            }
        }
        Words {
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            width: Math.min(implicitWidth, root.width)
            text: root.stopping ? qsTr("Stopping; what was begun is cleared away.") : root.words
            Accessible.ignored: true
        }
        SheetButton {
            objectName: "stopButton"
            visible: !root.stopping
            text: qsTr("Stop")
            reason: qsTr("Nothing half written is left")
            onClicked: root.stop()
        }
    }
}
