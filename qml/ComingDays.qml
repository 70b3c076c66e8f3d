pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The tasks of the days to come: of a week, or of more.
Column {
    id: root

    required property TonightModel tonight
    readonly property string title: root.tonight.days === 7 ? qsTr("This week") : qsTr("The next %1 days").arg(root.tonight.days)

    spacing: Theme.px(8)

    Heading {
        text: root.title
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("How many days to come")

        Repeater {
            model: [7, 14, 30, 60]

            Chip {
                required property int modelData
                objectName: "days" + modelData
                text: qsTr("%1 days").arg(modelData)
                reason: qsTr("How many days to come, here and on the printed sheet")
                on: root.tonight.days === modelData
                onClicked: root.tonight.days = modelData
            }
        }
    }
    Words {
        visible: root.tonight.week.count === 0
        width: root.width
        text: root.tonight.days === 7 ? qsTr("Nothing is planned for the next seven days; looks at the water come day by day.") : qsTr("Nothing is planned for the next %1 days; looks at the water come day by day.").arg(root.tonight.days)
        quiet: true
    }
    Column {
        objectName: "week"
        width: root.width
        Accessible.role: Accessible.List
        Accessible.name: root.title

        Repeater {
            model: root.tonight.week

            WeekRow {
                width: root.width
            }
        }
    }
}
