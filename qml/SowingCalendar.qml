pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Every crop of the tables that can be sown in the next days.
Column {
    id: root

    required property SeedsModel seeds

    spacing: Theme.px(8)

    /// One is chosen for its sowing sheet.
    signal chosen(crop: string)

    ChoiceChips {
        width: parent.width
        title: qsTr("What can be sown here in the next")
        part: "sowingDays"
        choices: [qsTr("7 days"), qsTr("30 days"), qsTr("90 days")]
        chosen: root.seeds.sowingDays === 7 ? 0 : root.seeds.sowingDays === 30 ? 1 : root.seeds.sowingDays === 90 ? 2 : -1
        note: qsTr("Press a crop for its sowing sheet.")
        onChoose: index => root.seeds.sowingDays = [7, 30, 90][index]
    }
    Words {
        visible: root.seeds.sowings.count === 0 && !root.seeds.working
        width: parent.width
        text: qsTr("Nothing in these days; look farther ahead.")
    }
    Column {
        objectName: "sowingList"
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("What can be sown")

        Repeater {
            model: root.seeds.sowings

            SpokenButton {
                id: row

                required property int index
                required property string crop
                required property string name
                required property string how
                required property string dates
                required property string ready
                required property string sentence
                objectName: "sowing" + row.index
                width: root.width
                implicitHeight: row.contentItem.implicitHeight
                text: row.sentence
                onClicked: root.chosen(row.crop)

                background: Rectangle {
                    color: row.hovered ? Theme.well : "transparent"

                    Rectangle {
                        anchors.bottom: parent.bottom
                        width: parent.width
                        height: 1
                        color: Theme.rule
                    }
                    FocusRing {
                        visible: row.visualFocus
                    }
                }
                contentItem: Column {
                    topPadding: Theme.px(6)
                    bottomPadding: Theme.px(6)

                    Words {
                        width: row.width
                        text: row.name
                        strong: true
                        font.pixelSize: Theme.rowSize
                        Accessible.ignored: true
                    }
                    Words {
                        width: row.width
                        text: row.ready === "" ? qsTr("%1, %2").arg(row.how).arg(row.dates) : qsTr("%1, %2; ready from %3").arg(row.how).arg(row.dates).arg(row.ready)
                        quiet: true
                        font.pixelSize: Theme.smallSize
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
