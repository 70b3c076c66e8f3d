pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Below the plants: the seasons of the lots that can be sown in the year.
Column {
    id: root

    required property YearModel year
    required property real labelWidth
    required property real rowHeight

    visible: root.year.sowings.count > 0
    height: visible ? implicitHeight : 0
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Sowings")

    Item {
        width: root.width
        height: Math.max(Theme.target(26), key.height + Theme.px(10))

        Text {
            textFormat: Text.PlainText
            x: 8
            y: Theme.px(6)
            text: qsTr("Sowings")
            color: Theme.ink
            font.family: Theme.titleFamily
            font.pixelSize: Theme.subheadSize
            Accessible.role: Accessible.Heading
            Accessible.name: text
        }
        Text {
            id: key
            textFormat: Text.PlainText
            x: root.labelWidth + 16
            y: Theme.px(8)
            width: root.width - x
            text: qsTr("ring: sow · bracket: comes up · steps: hardening · slash: first ripe or in flower")
            color: Theme.ink2
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    Repeater {
        model: root.year.sowings

        Item {
            id: sowing
            required property int index
            required property string name
            required property string sentence
            width: root.width
            height: Math.max(root.rowHeight, nameText.implicitHeight + Theme.px(6))
            Accessible.role: Accessible.ListItem
            Accessible.name: sowing.sentence

            Text {
                id: nameText
                textFormat: Text.PlainText
                x: 8
                width: root.labelWidth - Theme.px(14)
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                text: sowing.name
                color: Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
            YearSowingBar {
                x: root.labelWidth + 8
                width: sowing.width - x
                height: sowing.height
                year: root.year
                theme: Theme
                scheme: Theme.look
                row: sowing.index
                Accessible.ignored: true
            }
        }
    }
}
