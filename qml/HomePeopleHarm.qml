pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A plant that can hurt who reaches it: what it does, and what to do.
Item {
    id: root

    required property string plant
    required property string spot
    required property int hand
    required property string who
    required property string hazard
    required property string words
    required property string caution
    required property string sentence

    implicitHeight: body.height + Theme.px(10)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence

    Lozenge {
        y: Theme.px(5)
    }
    Column {
        id: body
        x: Theme.px(19)
        width: root.width - x
        spacing: Theme.px(2)

        Flow {
            width: parent.width
            spacing: Theme.px(8)

            Words {
                text: root.plant
                strong: true
                Accessible.ignored: true
            }
            SpotSwatch {
                visible: root.hand >= 0
                y: Theme.px(4)
                width: Theme.px(18)
                height: Theme.px(12)
                theme: Theme
                scheme: Theme.look
                colour: root.hand
                Accessible.ignored: true
            }
            Words {
                text: qsTr("%1, within reach of %2").arg(root.spot).arg(root.who)
                quiet: true
                Accessible.ignored: true
            }
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.hazard
            color: Theme.caution
            strong: true
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.words
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.caution
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
    }
}
