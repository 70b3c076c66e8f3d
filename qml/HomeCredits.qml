pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Where every figure comes from, as the licences ask it to be said.
Column {
    id: root

    required property HomeDataModel keeping
    property bool all: false

    spacing: Theme.px(6)

    Heading {
        width: root.width
        text: qsTr("Where the figures come from")
    }
    Repeater {
        model: root.keeping.credits

        Column {
            id: credit
            required property string what
            required property string who
            required property string sentence

            width: Math.min(root.width, Theme.px(720))
            bottomPadding: Theme.px(4)
            Accessible.role: Accessible.StaticText
            Accessible.name: credit.sentence

            Words {
                width: parent.width
                text: credit.what
                strong: true
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                text: credit.who
                quiet: true
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
        }
    }
    Chip {
        objectName: "sourcesChip"
        spokenRole: Accessible.CheckBox
        text: root.all ? qsTr("Fewer") : qsTr("All %1 publications").arg(root.keeping.sources.count)
        on: root.all
        onClicked: root.all = !root.all
    }
    Column {
        objectName: "sourceList"
        visible: root.all
        width: Math.min(root.width, Theme.px(900))
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Publications behind the tables of plants, seeds and pests")

        Repeater {
            model: root.all ? root.keeping.sources : null

            Words {
                required property string title
                required property string who
                required property string sentence
                width: root.width
                bottomPadding: Theme.px(3)
                text: who === "" ? title : qsTr("%1. %2").arg(title).arg(who)
                font.pixelSize: Theme.smallSize
                Accessible.role: Accessible.ListItem
                Accessible.name: sentence
            }
        }
    }
}
