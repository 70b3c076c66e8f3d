pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Where the household is, the stations that speak for it, and what the place is like.
Item {
    id: root

    required property HomeModel home
    property MendModel mend: null
    required property bool narrow
    property bool asTable: false
    readonly property real mapWidth: root.narrow ? root.width : Math.min(Theme.px(620), Math.round(root.width * 0.46))

    readonly property real upperHeight: root.narrow ? facts.y + facts.height : Math.max(map.height, facts.height)

    implicitHeight: months.y + months.height

    Column {
        id: map
        width: root.mapWidth
        spacing: Theme.px(4)

        Heading {
            objectName: "position"
            width: parent.width
            text: root.home.position
        }
        Words {
            width: parent.width
            text: root.home.mapNote
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        PlaceMapChart {
            objectName: "placeMap"
            visible: !root.asTable
            width: parent.width
            height: Math.min(width, Theme.px(root.narrow ? 440 : 560))
            theme: Theme
            scheme: Theme.look
            home: root.home
            Accessible.role: Accessible.Chart
            Accessible.name: qsTr("Map of the stations round home")
            Accessible.description: qsTr("%1 Key T: the same as a table.").arg(root.home.base)
        }
        Column {
            objectName: "stationTable"
            visible: root.asTable
            width: parent.width
            topPadding: Theme.px(8)
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("Stations round home")

            TwinRow {
                width: parent.width
                head: true
                cells: [qsTr("Station"), qsTr("away, height"), qsTr("weight")]
                sentence: qsTr("Station, away and height, weight")
            }
            Repeater {
                model: root.home.stations

                TwinRow {
                    required property string name
                    required property string away
                    required property string weight
                    width: root.mapWidth
                    cells: [name, away, weight]
                }
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            Chip {
                objectName: "mapTableChip"
                spokenRole: Accessible.CheckBox
                height: Theme.target(32)
                text: qsTr("As a table")
                reason: qsTr("Key T")
                on: root.asTable
                onClicked: root.asTable = !root.asTable
            }
            SheetButton {
                objectName: "changePlaceButton"
                visible: root.mend !== null
                text: qsTr("Change the place")
                onClicked: root.mend.editPlace()
            }
        }
    }
    Column {
        id: facts
        x: root.narrow ? 0 : root.mapWidth + Theme.px(36)
        y: root.narrow ? map.height + Theme.px(20) : 0
        width: root.width - x
        spacing: Theme.px(4)

        Heading {
            text: qsTr("What the place is like")
            width: parent.width
            bottomPadding: Theme.px(6)
        }
        Repeater {
            model: root.home.figures

            FactRow {
                width: Math.min(facts.width, Theme.px(520))
            }
        }
        Words {
            objectName: "homeBase"
            width: Math.min(parent.width, Theme.px(520))
            topPadding: Theme.px(6)
            text: root.home.base
            font.pixelSize: Theme.smallSize
        }
        Words {
            visible: text !== ""
            width: Math.min(parent.width, Theme.px(520))
            text: root.home.warning
            strong: true
            font.pixelSize: Theme.smallSize
        }
        Words {
            width: Math.min(parent.width, Theme.px(520))
            text: root.home.credits
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        HomeNightLine {
            objectName: "nightLineForm"
            width: Math.min(parent.width, Theme.px(620))
            topPadding: Theme.px(14)
            line: root.home.line
            unit: root.home.unit
        }
    }
    Column {
        id: months
        y: root.upperHeight + Theme.px(18)
        width: root.width
        spacing: Theme.px(10)

        SheetButton {
            objectName: "monthsButton"
            text: root.home.months.open ? qsTr("Less") : qsTr("The twelve months, and a pot in them")
            reason: qsTr("Nights, days, frost, rain, light, and what the soil and a pot meet")
            onClicked: root.home.months.open = !root.home.months.open
        }
        FormLoader {
            width: parent.width
            open: root.home.months.open
            file: "HomePlaceMonths.qml"
            given: ({
                    months: root.home.months
                })
        }
    }
    Rectangle {
        visible: !root.narrow
        x: root.mapWidth + Theme.px(17)
        width: 1
        height: root.upperHeight
        color: Theme.rule
    }
}
